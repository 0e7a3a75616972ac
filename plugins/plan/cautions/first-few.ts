/** Say the first three of several things, and how many more there are: `beech, ash, cherry and 2 more`. */
export function firstFew(things: readonly string[]): string {
  const shown = things.slice(0, 3)
  const more = things.length - shown.length
  if (more > 0) return `${shown.join(', ')} and ${more} more`
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`
}
