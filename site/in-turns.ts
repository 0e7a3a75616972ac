/** How many wait for one another's files or workers at a time. */
const together = 8

/** Do something for each of a list, a few at a time, and answer the results in the list's order. */
export async function inTurns<T, R>(list: readonly T[], work: (one: T) => Promise<R>): Promise<R[]> {
  const results: R[] = []
  let next = 0
  const worker = async () => {
    while (next < list.length) {
      const at = next++
      results[at] = await work(list[at]!)
    }
  }
  await Promise.all(Array.from({length: Math.min(together, list.length)}, worker))
  return results
}
