import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch, radians} from '../../tables/units.ts'
import {type BoxPlace, stationOf} from '../kit/box-place.ts'
import {headPoint} from './head-shape.ts'
import type {NeckModel} from './model.ts'

/** How the stick's length is shared out, in mm. */
export interface Budget extends Partial<Blank> {
  headMm: number
  /** The scale length, or as much of it as a neck that ends at the box spans. */
  scaleMm: number
  /** What anchors and box need past the bridge line. */
  tailMm: number
  /** What the anchors need. */
  anchorsMm?: number | undefined
  /** What the box needs. */
  boxMm?: number | undefined
  lengthMm: number
  /** Head, scale and tail together. */
  neededMm: number
  /** What it is that needs the tail. */
  needs: 'anchors' | 'box'
  /** Long enough for the anchors, whatever the box needs. */
  holdsAnchors?: boolean | undefined
  /** What neck.length leaves over; negative: too short. */
  spareMm?: number | undefined
}

/** The stick to start from, in mm. */
export interface Blank {
  /** How long it is. */
  blankMm: number
  /** Of it, what is squared off at each end. */
  squareMm: number
  /** How thick a stick a head sawn out of the solid takes. */
  blankThicknessMm?: number | undefined
  /** What the stick gains by the bend of a scarf. */
  blankGainMm?: number | undefined
  /** What the scarf’s saw cut takes. */
  blankKerfMm?: number | undefined
}

/**
 * Share out the stick's length (mm): the head, the scale, what anchors and box need past the bridge line, and what
 * `neck.length` leaves over. A neck that ends at the box spans the scale only so far, and needs nothing past it.
 * Absent until head, scale and what lies past the bridge are known.
 */
export function planBudget(values: BuildValues, place: BoxPlace | undefined): Budget | undefined {
  const headMm = values.head?.length?.mm
  const scaleMm = values.scale?.length?.mm
  if (!values.neck || headMm === undefined || scaleMm === undefined) return undefined
  const isToBox = values.neck.joins?.value === 'end'
  const shares = isToBox ? toBox(scaleMm, place) : pastBridge(scaleMm, tailNeed(values, scaleMm, place))
  if (!shares) return undefined
  const neededMm = headMm + shares.scaleMm + shares.tailMm
  const lengthMm = values.neck.length?.mm ?? neededMm
  const {anchorsMm, boxMm = 0} = shares
  return {
    headMm,
    ...shares,
    lengthMm,
    neededMm,
    spareMm: lengthMm - neededMm,
    needs: anchorsMm !== undefined && anchorsMm >= boxMm ? 'anchors' : 'box',
    holdsAnchors:
      anchorsMm === undefined ? undefined : lengthMm >= headMm + shares.scaleMm + anchorsMm - 1e-6,
  }
}

type Shares = Pick<Budget, 'scaleMm' | 'tailMm' | 'anchorsMm' | 'boxMm'>

function toBox(scaleMm: number, place: BoxPlace | undefined): Shares | undefined {
  return place && {scaleMm: Math.max(Math.min(place.atMm, scaleMm), 0), tailMm: 0}
}

function pastBridge(scaleMm: number, need: TailNeed): Shares | undefined {
  const both = [need.anchorsMm, need.boxMm].filter((mm) => mm !== undefined)
  return both.length === 0 ? undefined : {scaleMm, tailMm: Math.max(...both, 0), ...need}
}

/** Wood left behind an anchor's body, to the neck's end (mm): common practice, no source. */
export const behindAnchorMm = inch(1 / 4)

/** What lies past the bridge line and needs the neck under it, in mm from that line. */
interface TailNeed {
  anchorsMm: number | undefined
  boxMm: number | undefined
}

/**
 * Say how far past the bridge line the neck must reach (mm): for anchors in the neck to their far side and 1/4 in of
 * wood behind it (a tailpiece hooks over the end); along the box to its tail edge, or run through to its tail wall.
 * Anchors on the box behind a neck that runs through need nothing.
 */
function tailNeed(values: BuildValues, scaleMm: number, place: BoxPlace | undefined): TailNeed {
  const {anchors, bridge} = values
  const isThrough = values.neck?.joins?.value === 'through'
  const boxTailMm = place?.tailMm
  const stationMm = stationOf(anchors ?? {}, place)
  const isOnBox = isThrough && stationMm !== undefined && stationMm <= (boxTailMm ?? 0)
  const bodyMm = anchors?.body?.mm ?? anchors?.['string-hole']?.mm ?? 0
  const behindMm = anchors?.kind?.value === 'tailpiece' ? 0 : bodyMm / 2 + behindAnchorMm
  const footMm = (bridge?.foot?.mm ?? 0) / 2
  const wallMm = isThrough ? (values.box?.sides?.mm ?? 0) : 0
  return {
    anchorsMm:
      stationMm === undefined || isOnBox ? undefined : Math.max(stationMm + behindMm - scaleMm, footMm),
    boxMm: boxTailMm === undefined ? undefined : Math.max(boxTailMm - wallMm - scaleMm, 0),
  }
}

/** Squared off at each end of the stick (mm): common practice, no source. */
const squareMm = inch(1 / 2)

/**
 * Say how long (mm) a stick to start from, 1/2 in more at each end included.
 * A scarf: the piece sawn off is turned over and glued under the neck's end, so that the sawn slope of the neck is the
 * first of the head's face. The stick is bent, not lengthened: along the face it gains t·tan(θ/2), which is
 * t/sin θ − t/tan θ, and the saw takes kerf/sin θ. A head sawn out of the solid leans, so it takes its length times
 * cos θ, and a stick as thick as it reaches down; a straight one takes the length as it is.
 */
export function planBlank({head, layup}: NeckModel, lengthMm: number, sawMm: number): Blank | undefined {
  if (!head) return undefined
  const leanRad = radians(head.angleDeg)
  const ends = 2 * squareMm
  if (head.joint === 'straight') return {squareMm, blankMm: lengthMm + ends}
  const end = headPoint(head, head.lengthMm)
  if (head.joint === 'solid') {
    const blankMm = lengthMm - head.lengthMm + end.behindMm + ends
    // What ends before the head is glued on later.
    const reachesMm = end.depthMm - head.stepMm + head.thicknessMm * Math.cos(leanRad)
    return {squareMm, blankMm, blankThicknessMm: Math.max(reachesMm, layup.stickMm)}
  }
  const gainMm = head.sawnMm * Math.tan(leanRad / 2)
  const kerfMm = sawMm / Math.sin(leanRad)
  return {
    squareMm,
    blankMm: lengthMm - gainMm + kerfMm + ends,
    blankGainMm: gainMm,
    blankKerfMm: kerfMm,
  }
}
