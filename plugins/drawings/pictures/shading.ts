import type {Element} from 'hast'
import {s} from 'hastscript'
import {lookOf} from '../../tables/wood-colours.ts'
import type {Edge} from '../solids/faces.ts'
import {type Line, loops} from '../solids/region.ts'
import type {Projection, Vec} from '../solids/space.ts'
import {type SeenFace, seenRegions} from '../solids/visible.ts'
import {at, num} from './picture-notes.ts'
import type {Piece} from './scene.ts'

/** Fill what is seen of each face: one path a wood and the way it is turned, what is made now besides. */
export function fills(seen: readonly SeenFace<Piece>[], {id, view, mmPx}: Drawn): Element[] {
  const groups = new Map<string, {face: SeenFace<Piece>; d: string}>()
  const looks = new Map<Piece, string>()
  let now = ''
  for (const {seen: face, region} of seenRegions(seen)) {
    const d = pathOf(region)
    const look = looks.get(face.of) ?? lookKey(face.of)
    looks.set(face.of, look)
    const key = `${look} ${sideOf(face)}`
    const group = groups.get(key)
    groups.set(key, {face: group?.face ?? face, d: (group?.d ?? '') + d})
    if (face.face.isNow) now += d
  }
  const filled = [...groups.values()].map(({face, d}, i) => ({face, d, pattern: `${id}-w${i}`}))
  return [
    s('defs', [
      ...filled.flatMap(({face, pattern}) => grainPattern(face, {pattern, view, mmPx})),
      ...(now ? [hatch(`${id}-now`, mmPx)] : []),
    ]),
    ...filled.map(({face, d, pattern}) =>
      s('path', {
        d,
        className: ['pic-wood'],
        stroke: 'none',
        fill: hasGrain(face) ? `url(#${pattern})` : shade(face),
      }),
    ),
    ...(now
      ? [s('path', {d: now, className: ['pic-now-face'], stroke: 'none', fill: `url(#${id}-now)`})]
      : []),
  ]
}

const lookKey = ({wood, grain}: Piece) =>
  grain === 'none' ? 'metal' : `${lookOf(wood).colour} ${grain ?? 'along'}`

/** Which way a face is turned: up, to the side, or with its end towards who looks. */
function sideOf({face: {normal}, of}: SeenFace<Piece>): 'up' | 'side' | 'end' {
  const [across, along, up] = normal.map(Math.abs) as [number, number, number]
  const end = of.grain === 'across' ? across : along
  if (end > 0.75) return 'end'
  return up > 0.7 ? 'up' : 'side'
}

const hasGrain = (face: SeenFace<Piece>) => face.of.grain !== 'none' && sideOf(face) !== 'end'

const darker = {up: 1, side: 0.88, end: 0.76} as const

function shade(face: SeenFace<Piece>): string {
  const colour = face.of.grain === 'none' ? '#c9c5ba' : lookOf(face.of.wood).colour
  const by = darker[sideOf(face)]
  const parts = [1, 3, 5].map((i) => Math.round(Number.parseInt(colour.slice(i, i + 2), 16) * by))
  return `#${parts.map((part) => part.toString(16).padStart(2, '0')).join('')}`
}

/** A wood on a face: its colour, and its grain along the piece as parallel projection shows it. */
function grainPattern(
  face: SeenFace<Piece>,
  {pattern, view, mmPx}: {pattern: string; view: Projection; mmPx: number},
): Element[] {
  if (!hasGrain(face)) return []
  const along: Vec = face.of.grain === 'across' ? [1, 0, 0] : [0, 1, 0]
  const up: Vec = sideOf(face) === 'up' ? (face.of.grain === 'across' ? [0, 1, 0] : [1, 0, 0]) : [0, 0, 1]
  const [o, u, v] = [view.page([0, 0, 0]), view.page(along), view.page(up)]
  const matrix = [u[0] - o[0], u[1] - o[1], v[0] - o[0], v[1] - o[1], 0, 0].map((one) =>
    Number(one.toFixed(4)),
  )
  const tile = {width: num(150 * mmPx), height: num(17 * mmPx)}
  const pen = {fine: 0.14, open: 0.3, lined: 0.26}[lookOf(face.of.wood).grain]
  const line = (part: number, bend: number) =>
    `M0 ${num(17 * mmPx * part)}c${num(50 * mmPx)} ${num(bend * mmPx)} ${num(100 * mmPx)} ${num(-bend * mmPx)} ${tile.width} 0`
  return [
    s(
      'pattern',
      {id: pattern, ...tile, patternUnits: 'userSpaceOnUse', patternTransform: `matrix(${matrix.join(' ')})`},
      [
        s('rect', {...tile, className: ['pic-wood'], fill: shade(face), stroke: 'none'}),
        s('path', {
          d: `${line(0.2, 2)}${line(0.55, -2.5)}${line(0.85, 1.5)}`,
          stroke: '#2a1c12',
          strokeOpacity: pen,
          strokeWidth: num(0.7 * mmPx),
        }),
      ],
    ),
  ]
}

const hatch = (id: string, mmPx: number) =>
  s(
    'pattern',
    {
      id,
      width: num(5 * mmPx),
      height: num(5 * mmPx),
      patternUnits: 'userSpaceOnUse',
      patternTransform: 'rotate(45)',
    },
    [s('path', {d: `M0 0V${num(5 * mmPx)}`, className: ['pic-now'], strokeWidth: num(2.4 * mmPx)})],
  )

/** Write loops as a path; corners that lie on a straight line are left out. */
function pathOf(region: readonly Line<Edge>[]): string {
  return loops(region)
    .map((loop) => {
      const points = loop.map(({a}) => a)
      const corners = points.filter((point, i) => {
        const [p, n] = [points.at(i - 1)!, points[(i + 1) % points.length]!]
        return Math.abs((point[0] - p[0]) * (n[1] - p[1]) - (point[1] - p[1]) * (n[0] - p[0])) > 1e-4
      })
      return corners.length > 2 ? `M${corners.map(at).join('L')}Z` : ''
    })
    .join('')
}

export interface Drawn {
  id: string
  view: Projection
  mmPx: number
}
