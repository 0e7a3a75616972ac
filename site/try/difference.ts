/** A line that is only in the one text, or only in the other; or the key that one of them stands under. */
export interface ChangedLine {
  is: 'gone' | 'new' | 'under'
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
  let head = ''
  let [i, j] = [0, 0]
  const tell = (is: 'gone' | 'new', line: string) => {
    if (head && /^\s/.test(line)) lines.push({is: 'under', line: head})
    head = ''
    lines.push({is, line})
  }
  while (i < a.length || j < b.length) {
    if (i < a.length && j < b.length && a[i] === b[j]) {
      if (/^\S/.test(a[i]!)) head = a[i]!
      i += 1
      j += 1
    } else if (j >= b.length || (i < a.length && common[i + 1]![j]! >= common[i]![j + 1]!)) {
      tell('gone', a[i]!)
      i += 1
    } else {
      tell('new', b[j]!)
      j += 1
    }
  }
  return lines
}
