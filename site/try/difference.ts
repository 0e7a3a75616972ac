/** A line that is only in the one text, or only in the other. */
export interface ChangedLine {
  is: 'gone' | 'new'
  line: string
}

/** List the lines that differ between two texts of a few hundred lines, in order, by their longest common course. */
export function differenceOf(before: string, after: string): ChangedLine[] {
  const [a, b] = [before.split('\n'), after.split('\n')]
  // How many lines the rests have in common.
  const common = Array.from({length: a.length + 1}, () => new Uint16Array(b.length + 1))
  for (let i = a.length - 1; i >= 0; i -= 1)
    for (let j = b.length - 1; j >= 0; j -= 1)
      common[i]![j] =
        a[i] === b[j] ? common[i + 1]![j + 1]! + 1 : Math.max(common[i + 1]![j]!, common[i]![j + 1]!)
  const lines: ChangedLine[] = []
  let [i, j] = [0, 0]
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      i += 1
      j += 1
    } else if (j >= b.length || (i < a.length && common[i + 1]![j]! >= common[i]![j + 1]!)) {
      lines.push({is: 'gone', line: a[i]!})
      i += 1
    } else {
      lines.push({is: 'new', line: b[j]!})
      j += 1
    }
  }
  return lines
}
