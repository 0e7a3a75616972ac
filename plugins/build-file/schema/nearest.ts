import distance from 'damerau-levenshtein'

/**
 * Name the candidate nearest to a misspelt word, or nothing where none is near.
 * Near: at most a third of the letters (two at least for words over four) differ, a swap of neighbours counting one.
 * The distance is Damerau–Levenshtein's, restricted (optimal string alignment).
 */
export function nearest(word: string, candidates: Iterable<string>): string | undefined {
  const said = word.toLowerCase()
  let best: string | undefined
  let least = said.length <= 4 ? 1 : Math.max(2, Math.floor(said.length / 3))
  const apart = lettersApart(said)
  for (const candidate of candidates) {
    // A difference in length is at least as much in distance; most candidates end here.
    if (Math.abs(candidate.length - said.length) > least) continue
    const other = candidate.toLowerCase()
    if (apart(other) > least) continue
    const steps = distance(said, other).steps
    if (steps < least || (steps === least && best === undefined)) {
      best = candidate
      least = steps
    }
  }
  return best
}

/**
 * Count the letters that a word and another do not share, whatever their order: no way from one to the other is shorter
 * than that, and it is told far sooner. Some letters share a place, which only lowers the count.
 */
function lettersApart(word: string): (other: string) => number {
  const left = new Int16Array(128)
  for (let at = 0; at < word.length; at++) left[word.charCodeAt(at) % 128]!++
  return (other) => {
    let shared = 0
    for (let at = 0; at < other.length; at++) if (left[other.charCodeAt(at) % 128]!-- > 0) shared++
    for (let at = 0; at < other.length; at++) left[other.charCodeAt(at) % 128]!++
    return Math.max(word.length, other.length) - shared
  }
}

/** Say whether two words differ by no more than a slip of the hand or two; that of neighbours is taken for one. */
export const isSlip = (word: string, other: string, most = 2): boolean =>
  distance(word.toLowerCase(), other.toLowerCase()).steps <= most
