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
  for (const candidate of candidates) {
    // A difference in length is at least as much in distance; most candidates end here.
    if (Math.abs(candidate.length - said.length) > least) continue
    const steps = distance(said, candidate.toLowerCase()).steps
    if (steps < least || (steps === least && best === undefined)) {
      best = candidate
      least = steps
    }
  }
  return best
}
