import {headPoint} from '../../plan/neck/head-shape.ts'
import type {HeadOutline, NeckOutline} from '../../plan/outline.ts'
import type {Plan} from '../../plan/plan.ts'
import {radians} from '../../tables/units.ts'
import {box, type Convex, convex, half} from '../solids/convex.ts'
import {minus, plus, unit, type Vec} from '../solids/space.ts'
import type {Piece} from './scene.ts'

/** Steps that are behind, or in hand, by their ids: a part is as far worked as the order has come. */
export type Done = ReadonlySet<string>

/** A plan whose neck is known, as pictures ask for it. */
export interface NeckLook {
  plan: Plan
  neck: NeckOutline
  head: HeadOutline | undefined
  /** Of a plate on the head. */
  plate: {wood: string | undefined; thicknessMm: number} | undefined
  /** Half its width as it comes from the saw, all along (mm). */
  roughMm: number
  /** What the scarf is sawn through (mm). */
  sawnMm: number
}

/** Farther than any neck reaches, and still near enough to compute with (mm). */
const farMm = 5000

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

/** The two sides where the neck is as wide as at its nut, or all along before they are planed. */
function sideHalves({neck, roughMm}: NeckLook, done: Done) {
  const halfMm = done.has('plane-sides') ? neck.nutWidthMm / 2 : roughMm
  return [half([1, 0, 0], [halfMm, 0, 0]), half([-1, 0, 0], [-halfMm, 0, 0])]
}

function taperHalves({neck}: NeckLook) {
  const [nut, tail] = [neck.nutWidthMm / 2, neck.tailWidthMm / 2]
  const lean = (tail - nut) / neck.tailMm
  return [half([1, -lean, 0], [nut, 0, 0]), half([-1, -lean, 0], [-nut, 0, 0])]
}

/** The head's face from where it leaves the neck to its end, and the direction up from it. */
export function headFrame(head: HeadOutline): {face: Vec; end: Vec; up: Vec} {
  const place = (alongMm: number): Vec => {
    const {behindMm, depthMm} = headPoint(head, alongMm, 'foot')
    return [0, -behindMm, -depthMm]
  }
  const lean = radians(head.angleDeg)
  const end = place(head.lengthMm)
  const slopeMm = head.lengthMm - head.ledgeMm
  const way: Vec = [0, Math.cos(lean), Math.sin(lean)]
  return {face: plus(end, way, slopeMm), end, up: [0, -Math.sin(lean), Math.cos(lean)]}
}

/** Place a point of the head by its distance along the face (positive), off the centre line, and above the face. */
export function onHead(head: HeadOutline, alongMm: number, [xMm, upMm]: readonly [number, number]): Vec {
  const {face, end, up} = headFrame(head)
  const way = unit(minus(end, face))
  return plus(plus([xMm, face[1], face[2]], way, alongMm - head.ledgeMm), up, upMm)
}

/** The head as a slab along its face; a scarfed one lies under the neck's back. */
function headSlab(look: NeckLook, done: Done): Convex {
  const {neck, plate, sawnMm} = look
  const head = look.head!
  const {face, end, up} = headFrame(head)
  const isShaped = done.has('shape-head') || head.joint !== 'scarf'
  const thickMm = isShaped ? head.thicknessMm : sawnMm
  const plateMm = plate?.thicknessMm ?? 0
  const isScarf = head.joint === 'scarf'
  return convex([
    half(up, plus(face, up, -plateMm)),
    half([-up[0], -up[1], -up[2]], plus(face, up, -thickMm)),
    half(minus(end, face), end),
    isScarf ? half([0, 0, 1], [0, 0, -neck.thicknessMm]) : half([0, 1, 0], [0, -head.ledgeMm, 0]),
    ...sideHalves(look, done),
  ])
}

/** All that lies above the head's face: sawn off the stick. */
function overHead({head, plate}: NeckLook): Convex {
  const {face, up} = headFrame(head!)
  return convex([
    half([-up[0], -up[1], -up[2]], plus(face, up, -(plate?.thicknessMm ?? 0))),
    half([0, 1, 0], [0, -head!.ledgeMm, 0]),
    half([0, 0, 1], [0, 0, farMm]),
    half([0, -1, 0], [0, -farMm, 0]),
    half([1, 0, 0], [farMm, 0, 0]),
    half([-1, 0, 0], [-farMm, 0, 0]),
  ])
}

/** What of a neck pictures ask for, once it is known. */
export function neckLook(plan: Plan, plateWood: string | undefined): NeckLook | undefined {
  const {neck, head} = plan.outline ?? {}
  const {layup, head: planned} = plan.neck ?? {}
  if (!neck || !layup || layup.layers.length === 0) return undefined
  const plateMm = plan.cuts?.parts.find(({of}) => of === 'head.plate')
  const size = plateMm && plateMm.why !== 'listed' ? plateMm.why.thicknessMm : plateMm?.thicknessMm
  return {
    plan,
    neck,
    head: head && {...head, thicknessMm: planned?.thicknessMm ?? head.thicknessMm},
    plate: size === undefined ? undefined : {wood: plateWood, thicknessMm: size},
    roughMm: Math.max(neck.nutWidthMm, neck.tailWidthMm) / 2,
    sawnMm: plan.neck?.scarf?.thicknessMm ?? neck.thicknessMm,
  }
}

/** A plain box about the centre line: from where to where along it, how wide and between which heights (mm). */
export const bar = (
  [fromMm, toMm]: readonly [number, number],
  wideMm: number,
  [low, high]: readonly [number, number],
) => box([-wideMm / 2, fromMm, low], [wideMm / 2, toMm, high])
