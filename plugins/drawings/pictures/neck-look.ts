import type {HeadOutline, NeckOutline} from '../../plan/layout/outline.ts'
import {headPoint} from '../../plan/neck-shape/head-shape.ts'
import type {Plan} from '../../plan/plan.ts'
import {radians} from '../../tables/units.ts'
import {type Convex, convex, half} from '../solids/convex.ts'
import {minus, plus, unit, type Vec} from '../solids/space.ts'

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

/** The two sides where the neck is as wide as at its nut, or all along before they are planed. */
export function sideHalves({neck, roughMm}: NeckLook, done: Done) {
  const halfMm = done.has('plane-sides') ? neck.nutWidthMm / 2 : roughMm
  return [half([1, 0, 0], [halfMm, 0, 0]), half([-1, 0, 0], [-halfMm, 0, 0])]
}

export function taperHalves({neck}: NeckLook) {
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
export function headSlab(look: NeckLook, done: Done): Convex {
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
export function overHead({head, plate}: NeckLook): Convex {
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
