import {arrow, circle, label, type Point, path, type Shape, type Text} from './shapes.ts'

/** Words beside a drawing, led to what they are about: a name in smaller type, a figure below it, or only one. */
export interface Note {
  /** What the leader starts at. */
  at: Point
  name?: string | undefined
  figure?: string | undefined
  /** How the leader ends there: an arrow on an edge, a dot within an outline (ISO 128), nothing as a continued line. */
  end?: 'arrow' | 'dot'
}

interface Column {
  /** Where the leaders leave the drawing, across the page. */
  base: number
  /** Which way the column lies: 1 right, −1 left. */
  out: 1 | -1
  textMm: number
  /** The stretch down the page that the words keep to where they can. */
  range?: readonly [number, number]
}

const nameSize = 0.84

const heightOf = ({name, figure}: Note) => (name && figure ? 2.35 : 1.35)

/**
 * Set notes in one column, each as near to the height of what it is about as its neighbours allow, with leaders that
 * run level to the column's base and slant from there, so that none crosses another. In mm.
 */
export function notesColumn(notes: readonly Note[], column: Column): Shape[] {
  const sorted = notes.map((note, i) => ({note, i})).sort((a, b) => a.note.at[1] - b.note.at[1] || a.i - b.i)
  const middles = spread(
    sorted.map(({note}) => ({target: note.at[1], size: heightOf(note) * column.textMm})),
    column.range,
  )
  return sorted.flatMap(({note}, i) => [
    ...leader(note, column, middles[i]!),
    ...words(note, column, middles[i]!),
  ])
}

function leader({at, end}: Note, {base, out, textMm}: Column, y: number): Shape[] {
  const points: Point[] = [at, [base, at[1]], [base + out * 1.4 * textMm, y]]
  const mark =
    end === 'arrow'
      ? [arrow(at, out > 0 ? 180 : 0, 0.7 * textMm)]
      : end === 'dot'
        ? [circle('dot', at, 0.16 * textMm)]
        : []
  return [path('dimension', ...points), ...mark]
}

function words({name, figure}: Note, {base, out, textMm}: Column, y: number): Text[] {
  const anchor = out > 0 ? 'start' : 'end'
  const both = name && figure
  const at = (dy: number): Point => [base + out * 1.8 * textMm, y + dy * textMm]
  return [
    ...(name ? [label(name, at(both ? -0.57 : 0), nameSize * textMm, {ink: 'name', anchor})] : []),
    ...(figure ? [label(figure, at(both ? 0.53 : 0), textMm, {anchor})] : []),
  ]
}

interface Wish {
  /** Where its middle would best be. */
  target: number
  size: number
}

/**
 * Place things along a line so that none overlaps its neighbour and each is as near its wish as that allows
 * (least squares; blocks of touching things pool at their mean). Order is that of the wishes, which rise.
 * Where `range` has room for all of them they stay within it. Returns the middles.
 * Example: two labels 10 high that both wish to be at 0 are placed at −5 and 5.
 */
export function spread(wishes: readonly Wish[], range?: readonly [number, number]): number[] {
  const before: number[] = []
  let total = 0
  for (const {size} of wishes) {
    before.push(total + size / 2)
    total += size
  }
  const blocks: {mean: number; count: number}[] = []
  wishes.forEach(({target}, i) => {
    let block = {mean: target - before[i]!, count: 1}
    for (let last = blocks.at(-1); last && last.mean > block.mean; last = blocks.at(-1)) {
      blocks.pop()
      const count = last.count + block.count
      block = {mean: (last.mean * last.count + block.mean * block.count) / count, count}
    }
    blocks.push(block)
  })
  const fits = range && range[1] - range[0] >= total
  const held = (mean: number) => (fits ? Math.min(Math.max(mean, range[0]), range[1] - total) : mean)
  return blocks
    .flatMap(({mean, count}) => Array<number>(count).fill(held(mean)))
    .map((m, i) => m + before[i]!)
}
