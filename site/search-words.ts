/** Gather every word of a text once, in small letters and without accents, for the search; sorted. */
export function wordsOf(text: string): string {
  const words = plain(text).match(/[\p{L}\p{N}][\p{L}\p{N}/.'-]*/gu) ?? []
  return [...new Set(words.map((word) => word.replaceAll(/[.'-]+$/g, '')))].sort().join(' ')
}

/** Spell a text as the search compares it. */
export function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
}
