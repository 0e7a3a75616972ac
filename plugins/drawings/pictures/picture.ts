import type {Element, Properties} from 'hast'
import {s} from 'hastscript'
import {facesOf} from '../solids/faces.ts'
import type {Flat} from '../solids/region.ts'
import {seenLines, seenParts} from '../solids/seen-lines.ts'
import {type Projection, parallel} from '../solids/space.ts'
import {isTowards, type SeenFace, turnedHere} from '../solids/visible.ts'
import {at, type Frame, notesAround, notesBeside, num} from './picture-notes.ts'
import type {Piece, Scene} from './scene.ts'
import {fills} from './shading.ts'

/** How pictures of the work look at what is in hand: its length to the right, from in front and above. */
export const benchView = parallel(18, 32)

/** The same piece laid on its face: head still to the left. */
const turnedView: Projection = {
  page: (at) => benchView.page([-at[0], at[1], -at[2]]),
  nearness: (at) => benchView.nearness([-at[0], at[1], -at[2]]),
  towards: [-benchView.towards[0], benchView.towards[1], -benchView.towards[2]],
}

export const viewOf = ({isTurned}: Pick<Scene, 'isTurned'>): Projection => (isTurned ? turnedView : benchView)

/** A picture of the work: how wide it asks to be on a screen, and what of it is told to those who don't see it. */
interface Told {
  id: string
  title: string
  says: string
}

const widePx = 340

const tallPx = 250

/**
 * Write a scene as SVG in mm: faces filled by their woods, edges that are seen, what is made now in the accent, numbers
 * above and below, led to their places. `id` starts the ids of what is in it; those of one page must differ.
 */
export function picture(scene: Scene, {id, title, says}: Told): Element {
  const view = viewOf(scene)
  const seen = turnedHere(
    scene.pieces.map((piece) => ({of: piece, faces: facesOf(piece.solid, isTowards(view))})),
    view,
  )
  const frame = around(scene, seen, view)
  const mmPx = Math.max((frame.right - frame.left) / (widePx - 20), (frame.bottom - frame.top) / tallPx)
  const notes = (scene.areNotesBeside ? notesBeside : notesAround)(scene, {view, frame, mmPx})
  const top = frame.top - notes.above * mmPx
  const bottom = frame.bottom + notes.below * mmPx
  const [left, right] = [
    Math.min(frame.left - 6 * mmPx, notes.left),
    Math.max(frame.right + 6 * mmPx, notes.right),
  ]
  const size = {
    className: ['picture'],
    viewBox: [left, top, right - left, bottom - top].map(num).join(' '),
    width: Math.round((right - left) / mmPx),
    height: Math.round((bottom - top) / mmPx),
    role: 'img',
    ariaLabelledBy: [`${id}-title`],
    ariaDescribedBy: [`${id}-desc`],
    fill: 'none',
    stroke: 'currentColor',
    strokeLineJoin: 'round',
    strokeLineCap: 'round',
  }
  return s('svg', size as Properties, [
    s('title', {id: `${id}-title`}, title),
    s('desc', {id: `${id}-desc`}, says),
    ...fills(seen, {id, view, mmPx}),
    ...edges(seen, view, mmPx),
    ...marks(scene, seen, {view, mmPx}),
    ...pushes(scene, view, mmPx),
    ...notes.drawn,
  ])
}

function around(scene: Scene, seen: readonly SeenFace<Piece>[], {page}: Projection): Frame {
  const points: Flat[] = [
    ...seen.flatMap(({lines}) => lines.map(({a}) => a)),
    ...scene.marks.flatMap(({a, b}) => [page(a), page(b)]),
    ...scene.pushes.flatMap(({from, to}) => [page(from), page(to)]),
  ]
  if (points.length === 0) return {left: 0, top: 0, right: 1, bottom: 1}
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)]
  return {
    left: xs.reduce((a, b) => Math.min(a, b)),
    top: ys.reduce((a, b) => Math.min(a, b)),
    right: xs.reduce((a, b) => Math.max(a, b)),
    bottom: ys.reduce((a, b) => Math.max(a, b)),
  }
}

/** Draw the edges that are seen; those of what is made now by themselves, heavier. */
function edges(seen: readonly SeenFace<Piece>[], view: Projection, mmPx: number): Element[] {
  const all = seenLines(seen, view)
  const run = (isNow: boolean) => lineRuns(all.filter((line) => line.isNow === isNow))
  const [plain, now] = [run(false), run(true)]
  return [
    ...(plain ? [s('path', {d: plain, className: ['pic-edge'], strokeWidth: num(0.9 * mmPx)})] : []),
    ...(now ? [s('path', {d: now, className: ['pic-now'], strokeWidth: num(2 * mmPx)})] : []),
  ]
}

/** Join lines that follow each other, so that a path is short. */
function lineRuns(lines: readonly {a: Flat; b: Flat}[]): string {
  let d = ''
  let last = ''
  for (const {a, b} of lines) {
    const [from, to] = [at(a), at(b)]
    if (from === to) continue
    d += from === last ? `L${to}` : `M${from}L${to}`
    last = to
  }
  return d
}

/** Draw lines on faces where nothing hides them. */
function marks(
  scene: Scene,
  seen: readonly SeenFace<Piece>[],
  {view, mmPx}: {view: Projection; mmPx: number},
): Element[] {
  const runs = [false, true].map((isNow) =>
    scene.marks
      .filter((mark) => mark.isNow === isNow)
      .flatMap(({a, b}) => {
        const [from, to] = [view.page(a), view.page(b)]
        const near = [view.nearness(a) + 0.02, view.nearness(b) + 0.02] as const
        return seenParts({a: from, b: to, near}, seen).map(
          ([t, u]) =>
            `M${at([from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])])}L${at([from[0] + u * (to[0] - from[0]), from[1] + u * (to[1] - from[1])])}`,
        )
      })
      .join(''),
  )
  return runs.flatMap((d, i) =>
    d
      ? [s('path', {d, className: [i ? 'pic-now' : 'pic-mark'], strokeWidth: num((i ? 1.8 : 0.8) * mmPx)})]
      : [],
  )
}

/** Arrows say which way something is pushed or pressed. */
function pushes({pushes: all}: Scene, {page}: Projection, mmPx: number): Element[] {
  if (all.length === 0) return []
  const d = all.map(({from, to}) => {
    const [a, b] = [page(from), page(to)]
    const long = Math.hypot(b[0] - a[0], b[1] - a[1])
    if (long < 1e-6) return ''
    const [ux, uy] = [(b[0] - a[0]) / long, (b[1] - a[1]) / long]
    const barb = (side: number): Flat => [
      b[0] - 9 * mmPx * ux - side * 5 * mmPx * uy,
      b[1] - 9 * mmPx * uy + side * 5 * mmPx * ux,
    ]
    return `M${at(a)}L${at(b)}M${at(barb(1))}L${at(b)}L${at(barb(-1))}`
  })
  return [s('path', {d: d.join(''), className: ['pic-push'], strokeWidth: num(2.6 * mmPx)})]
}
