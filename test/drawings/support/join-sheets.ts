import type {ReadSheet} from './read-pdf.ts'

type Point = readonly [number, number]

/** What sheets show once they are laid cross on cross, in mm from the first sheet's upper left corner. */
export interface Joined {
  lines: {from: Point; to: Point; dashed: boolean; widthMm: number}[]
  rings: {centre: Point; radiusMm: number}[]
  /** How far two marks of one name miss each other at most. */
  worstMissMm: number
}

const near = (a: Point, b: Point) => Math.hypot(a[0] - b[0], a[1] - b[1])

const isWithin = (window: NonNullable<ReadSheet['window']>, x: number, y: number) =>
  x >= window.x && x <= window.x + window.width && y >= window.y && y <= window.y + window.height

/** The middle of each cross of two lines 8 mm long, by the name beside it. */
function crosses({lines, texts, window}: ReadSheet): Map<string, Point> {
  const long = lines.filter(({from, to, dashed}) => !dashed && Math.abs(near(from, to) - 8) < 0.001)
  const middle = ({from, to}: {from: Point; to: Point}): Point => [
    (from[0] + to[0]) / 2,
    (from[1] + to[1]) / 2,
  ]
  const middles = long
    .filter((one, i) => long.some((other, k) => k > i && near(middle(one), middle(other)) < 0.001))
    .map(middle)
    .filter(([x, y]) => isWithin(window!, x, y))
  return new Map(
    texts
      .filter(({text}) => /^[A-Z]+[12]$/.test(text))
      .flatMap(({at, text}) => {
        const middle = middles.find((one) => near(one, at) < 4)
        return middle ? [[text, middle] as const] : []
      }),
  )
}

/**
 * Lay the sheets of one template together as a maker does, by the crosses that two of them share. Lines count
 * where both ends, and rings where their centre, lie within a sheet's own window: nothing is taken from elsewhere.
 */
export function joinSheets(sheets: readonly ReadSheet[]): Joined {
  const marks = sheets.map(crosses)
  const shifts: (Point | undefined)[] = sheets.map((_, i) => (i === 0 ? [0, 0] : undefined))
  let worstMissMm = 0
  for (let round = 0; round < sheets.length; round++)
    marks.forEach((own, i) => {
      const shift = shifts[i]
      if (!shift) return
      marks.forEach((others, k) => {
        for (const [name, at] of own) {
          const there = others.get(name)
          if (k === i || !there) continue
          const wanted: Point = [at[0] + shift[0] - there[0], at[1] + shift[1] - there[1]]
          const known = shifts[k]
          if (known) worstMissMm = Math.max(worstMissMm, near(known, wanted))
          else shifts[k] = wanted
        }
      })
    })
  const joined: Joined = {lines: [], rings: [], worstMissMm}
  sheets.forEach(({lines, rings, window}, i) => {
    const shift = shifts[i]
    if (!shift || !window) throw new Error(`Sheet ${i + 1} joins no other`)
    const put = ([x, y]: Point): Point => [x + shift[0], y + shift[1]]
    const shows = ([x, y]: Point) => isWithin(window, x, y)
    for (const line of lines)
      if (shows(line.from) && shows(line.to))
        joined.lines.push({...line, from: put(line.from), to: put(line.to)})
    for (const ring of rings) if (shows(ring.centre)) joined.rings.push({...ring, centre: put(ring.centre)})
  })
  return joined
}
