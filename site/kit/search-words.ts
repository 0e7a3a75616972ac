/** Gather every word of a text once, as the search compares it; sorted. */
export function wordsOf(text: string): string {
  const words = tokensOf(text)
  return [...new Set([...words, ...chordsIn(words)])].sort().join(' ')
}

/** Find what is looked for: words, but `open G` and `three strings` each as one, which alone would find anything. */
export function soughtIn(text: string): string[] {
  const words = tokensOf(text)
  return words.flatMap((word, at) => {
    const before = words[at - 1]
    if (before && joined(before, word)) return []
    return joined(word, words[at + 1] ?? '') ?? word
  })
}

/** Spell a text as the search compares it. */
export function plain(text: string): string {
  return text.normalize('NFD').replaceAll(/\p{M}/gu, '').toLowerCase()
}

/** Part a text into its words; a gauge is spelt without its 0 and dot. */
function tokensOf(text: string): string[] {
  const words = plain(text).match(/[\p{L}\p{N}][\p{L}\p{N}/.'#-]*/gu) ?? []
  return words.map((word) => word.replace(/^0\.(?=\d)/, '').replaceAll(/[.'#-]+$/g, ''))
}

const chordsIn = (words: readonly string[]): string[] =>
  words.flatMap((word, at) => (word === 'open' ? (joined(word, words[at + 1] ?? '') ?? []) : []))

const counts = ['', 'one', 'two', 'three', 'four', 'five', 'six']

function joined(word: string, next: string): string | undefined {
  if (word === 'open' && /^[a-g](?:#|b)?$/.test(next)) return `open-${next}`
  if (next !== 'string' && next !== 'strings') return undefined
  const count = counts.indexOf(word)
  return count > 0 ? `${count}-string` : /^\d+$/.test(word) ? `${word}-string` : undefined
}
