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
    const distance = distanceWithin(said, candidate.toLowerCase())
    if (distance < least || (distance === least && best === undefined)) {
      best = candidate
      least = distance
    }
  }
  return best
}

function distanceWithin(a: string, b: string): number {
  let before: number[] = []
  let last = Array.from({length: b.length + 1}, (_, j) => j)
  for (let i = 1; i <= a.length; i++) {
    const row = [i]
    for (let j = 1; j <= b.length; j++) {
      const change = a[i - 1] === b[j - 1] ? 0 : 1
      let least = Math.min(row[j - 1]! + 1, last[j]! + 1, last[j - 1]! + change)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        least = Math.min(least, before[j - 2]! + 1)
      row.push(least)
    }
    before = last
    last = row
  }
  return last[b.length]!
}
