/** Say a few things in a row as a sentence does: `D3, A3 and D4`. */
export function inWords(things: readonly string[]): string {
  return things.length < 2 ? things.join('') : `${things.slice(0, -1).join(', ')} and ${things.at(-1)}`
}
