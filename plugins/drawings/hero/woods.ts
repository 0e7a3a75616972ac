import type {Element} from 'hast'
import {s} from 'hastscript'
import {lookOf} from '../../tables/wood-colours.ts'

// The woods of a drawing as patterns that its shapes are filled with: a colour and its grain, which runs down the page.

/** Name the pattern of a wood. */
export const woodId = (wood: string | undefined): string =>
  `wood-${(wood ?? 'unknown').toLowerCase().replaceAll(/[^a-z]+/g, '-')}`

const tile = {width: 36, height: 130}

/** Draw the pattern of each wood once: its colour, and a few lines of grain darker than that. Sizes in px. */
export function woodPatterns(woods: readonly (string | undefined)[]): Element[] {
  const named = new Map(woods.map((wood) => [woodId(wood), wood]))
  return [...named].map(([id, wood]) => {
    const {colour, grain} = lookOf(wood)
    const pen = {
      fine: {strokeWidth: 0.5, strokeOpacity: 0.22},
      open: {strokeWidth: 0.8, strokeOpacity: 0.34, strokeDashArray: '7 5 3 6'},
      lined: {strokeWidth: 0.9, strokeOpacity: 0.3},
    }[grain]
    const size = {...tile, patternUnits: 'userSpaceOnUse'}
    return s('pattern', {id, ...size}, [
      s('rect', {...tile, fill: colour, stroke: 'none'}),
      s('path', {d: lines(id, grain === 'lined' ? 5 : 4), stroke: '#2a1c12', ...pen}),
    ])
  })
}

/** Grain that meets itself where the tile is repeated; each wood has its own, the same every time. */
function lines(id: string, count: number): string {
  let seed = [...id].reduce((sum, letter) => (sum * 31 + letter.charCodeAt(0)) % 65521, 7)
  const next = () => {
    seed = (seed * 1103 + 12345) % 65521
    return seed / 65521
  }
  const {width, height} = tile
  return Array.from({length: count}, (_, at) => {
    const x = ((at + 0.2 + 0.6 * next()) * width) / count
    const [a, b] = [3 * (next() - 0.5), 3 * (next() - 0.5)]
    const num = (value: number) => Number(value.toFixed(1))
    return `M${num(x)} 0c${num(a)} ${num(height / 3)} ${num(b)} ${num((height * 2) / 3)} 0 ${height}`
  }).join('')
}
