/**
 * Say which of several things a text names: each is whole words, or the start of one where `*` ends it (`burn*` is
 * met in `Burning the lines`). Hyphens and other signs part words.
 */
export function named(text: string): (words: readonly string[]) => boolean {
  const plain = ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `
  return (words) =>
    words.some((word) => plain.includes(word.endsWith('*') ? ` ${word.slice(0, -1)}` : ` ${word} `))
}
