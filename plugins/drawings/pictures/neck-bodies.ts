import {box, type Convex, convex, half} from '../solids/convex.ts'
import {minus, plus} from '../solids/space.ts'
import {
  type Done,
  headFrame,
  headSlab,
  type NeckLook,
  overHead,
  sideHalves,
  taperHalves,
} from './neck-look.ts'
import type {Piece} from './scene.ts'

/**
 * Draw up the neck's parts as far as they are worked: its layers one on the other from the playing face at z = 0 down,
 * its head, a plate on it. Before the sides are planed it is as wide as its blank; before the scarf is glued it is
 * straight. What is not glued on yet is left out.
 */
export function neckPieces(look: NeckLook, done: Done): Piece[] {
  const layers = look.plan.neck?.layup?.layers ?? []
  const deep = depths(layers)
  const here = layers.map((layer, i) => ({...layer, ...deep[i]!})).filter((layer) => isThere(layer, done))
  const last = here.findLast(({beforeScarf}) => beforeScarf)
  const isBent = bentFrom(look, done)
  const pieces = here.flatMap(stripsOf(look)).map((layer): Piece => {
    const of = layerBodies(look, layer, done)
    const own = isBent && look.head?.joint !== 'scarf' && layer.of === last?.of ? [headSlab(look, done)] : []
    const less = isBent ? [overHead(look)] : []
    return {of: layer.of, wood: layer.wood, solid: {of: [...of, ...own], less}}
  })
  return [...pieces, ...scarfedHead(look, done), ...platePiece(look, done)]
}

/** The height of the neck's upper face by now: the lowest is under what is not glued on yet. */
export function upperFaceZ({plan}: NeckLook, done: Done): number {
  const layers = plan.neck?.layup?.layers ?? []
  const here = depths(layers).filter((_, i) => isThere(layers[i]!, done))
  return here[0]?.topMm ?? 0
}

/** The head that was turned over and glued on, where there is one by now. */
function scarfedHead(look: NeckLook, done: Done): Piece[] {
  if (look.head?.joint !== 'scarf' || !done.has('glue-head')) return []
  const wood = look.plan.neck?.layup?.layers.findLast(({beforeScarf}) => beforeScarf)?.wood
  return [{of: 'head', wood, solid: {of: [headSlab(look, done)], less: []}}]
}

function platePiece(look: NeckLook, done: Done): Piece[] {
  const {plate, head} = look
  if (!plate || !head || !done.has('glue-up-plate')) return []
  const {face, end, up} = headFrame(head)
  const body = convex([
    half(up, face),
    half([-up[0], -up[1], -up[2]], plus(face, up, -plate.thicknessMm)),
    half(minus(end, face), end),
    half([0, 1, 0], face),
    ...sideHalves(look, done),
  ])
  return [{of: 'head.plate', wood: plate.wood, solid: {of: [body], less: []}}]
}

/** Part a layer into its strips side by side, each of its own wood. */
const stripsOf =
  ({roughMm}: NeckLook) =>
  (layer: Layer): Layer[] => {
    const count = layer.strips ?? 1
    if (count < 2) return [layer]
    const woods = layer.wood?.split(', ') ?? []
    const wideMm = (2 * roughMm) / count
    return Array.from({length: count}, (_, i) => ({
      ...layer,
      wood: woods[i] ?? woods[0],
      acrossMm: [-roughMm + i * wideMm, -roughMm + (i + 1) * wideMm] as const,
    }))
  }

interface Layer {
  of: string
  wood?: string | undefined
  thicknessMm: number
  fromMm?: number | undefined
  toMm?: number | undefined
  beforeScarf: boolean
  topMm: number
  strips?: number | undefined
  /** Of a strip: from where to where across. */
  acrossMm?: readonly [number, number] | undefined
}

function depths(layers: readonly {thicknessMm: number}[]): {topMm: number}[] {
  let topMm = 0
  return layers.map(({thicknessMm}) => {
    topMm -= thicknessMm
    return {topMm: topMm + thicknessMm}
  })
}

/** Is a layer on the neck by now? */
function isThere({of, beforeScarf}: Pick<Layer, 'of' | 'beforeScarf'>, done: Done): boolean {
  if (of === 'fingerboard') return done.has('glue-up-board')
  return beforeScarf || done.has('glue-up-face')
}

/** Does the head lean by now: is the scarf sawn, or the head shaped out of the solid? */
export function bentFrom({head}: NeckLook, done: Done): boolean {
  if (!head) return false
  if (head.joint === 'scarf') return done.has('saw-scarf')
  return done.has('shape-head')
}

function layerBodies(look: NeckLook, layer: Layer, done: Done): Convex[] {
  const {neck, head, plan} = look
  const isBent = bentFrom(look, done)
  const startMm = isBent
    ? head?.joint === 'straight'
      ? -head.lengthMm
      : -Math.max(head?.lengthMm ?? 0, (head?.ledgeMm ?? 0) + (plan.neck?.scarf?.runMm ?? 0) + 1)
    : done.has('plane-sides') || !plan.neck?.budget?.blankMm
      ? -(head?.lengthMm ?? 0)
      : neck.tailMm + (plan.neck.budget.squareMm ?? 0) - plan.neck.budget.blankMm
  const fromMm = layer.of === 'fingerboard' ? Math.max(layer.fromMm ?? 0, 0) : (layer.fromMm ?? startMm)
  const toMm = Math.min(layer.toMm ?? neck.tailMm, neck.tailMm)
  if (toMm <= fromMm) return []
  const bottomMm = layer.topMm - layer.thicknessMm
  const [left, right] = layer.acrossMm ?? [-look.roughMm, look.roughMm]
  const level = [
    half([0, 0, 1], [0, 0, layer.topMm]),
    half([0, 0, -1], [0, 0, bottomMm]),
    ...(left > -look.roughMm ? [half([-1, 0, 0], [left, 0, 0])] : []),
    ...(right < look.roughMm ? [half([1, 0, 0], [right, 0, 0])] : []),
  ]
  const stretch = (a: number, b: number, sides: ReturnType<typeof sideHalves>) =>
    b > a ? [convex([...level, half([0, -1, 0], [0, a, 0]), half([0, 1, 0], [0, b, 0]), ...sides])] : []
  if (!done.has('plane-sides')) return stretch(fromMm, toMm, sideHalves(look, done))
  return [
    ...stretch(fromMm, Math.min(0, toMm), sideHalves(look, done)),
    ...stretch(Math.max(fromMm, 0), toMm, taperHalves(look)),
  ]
}

/** A plain box about the centre line: from where to where along it, how wide and between which heights (mm). */
export const bar = (
  [fromMm, toMm]: readonly [number, number],
  wideMm: number,
  [low, high]: readonly [number, number],
) => box([-wideMm / 2, fromMm, low], [wideMm / 2, toMm, high])
