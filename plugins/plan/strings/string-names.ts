/** Name strings by their notes; a note that comes again is counted: `D4`, `D4-2`. */
export function stringNames(notes: readonly string[]): string[] {
  const seen = new Map<string, number>()
  return notes.map((note) => {
    const count = (seen.get(note) ?? 0) + 1
    seen.set(note, count)
    return count === 1 ? note : `${note}-${count}`
  })
}
