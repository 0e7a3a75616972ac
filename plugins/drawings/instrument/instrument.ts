import type {BoxSizes} from '../../plan/kit/box-place.ts'
import type {Face, HoleUse} from '../../plan/kit/hole.ts'
import type {HeadOutline, NeckOutline} from '../../plan/layout/outline.ts'
import type {NeckCrossSection} from '../../plan/neck-shape/cut.ts'
import {neckWidthAt} from '../../plan/neck-shape/taper.ts'
import type {Plan} from '../../plan/plan.ts'
import {seenFromFront} from '../../words/sides.ts'
import type {Point} from '../kit/shapes.ts'

/** A place on the instrument, in mm: from the nut line, and off the centre line towards the last string. */
export interface Place {
  stationMm: number
  offMm: number
}

/** A hole that a bit makes, in mm. */
export interface DrilledHole extends Place {
  diameterMm: number
  what: HoleUse
  proposed?: true | undefined
}

/** The box's outside, in mm, once it lies somewhere along the neck. */
type PlacedBox = BoxSizes['outside'] & {atMm: number; tailMm: number}

/** A cut across the neck, and the radius of its back edges there, in mm; 0 where they are left square. */
export interface CrossSection extends NeckCrossSection {
  roundOverMm: number
  /** How deep its upper face lies under the playing face: where it is cut down to run through a box. */
  deepMm: number
  /** What lies over it there: daylight, and the top. */
  under?: {gapMm: number; topMm: number} | undefined
  /** Of a playing face that is round. */
  faceRadiusMm?: number | undefined
}

/**
 * An instrument as every view and template draws it: hanging by its head, strings towards us, mm from the centre line
 * to the right and from the nut line down the page. What its plan does not know is absent.
 */
export interface Instrument {
  plan: Plan
  neck?: NeckOutline | undefined
  head?: HeadOutline | undefined
  box?: PlacedBox | undefined
  /** The player's bass side: −1 to the left of the page. */
  bass: -1 | 1
  /** Across the page, of a distance off the centre line. */
  x: (offMm: number) => number
  /** Half the neck's width at a distance from the nut line; 0 without a neck. */
  halfMm: (stationMm: number) => number
  /** What is drilled through or into the box's top for screws and strings: not the sound holes. */
  topHoles: readonly DrilledHole[]
  /** The cut to show: the one nearest to the middle of the free neck. */
  crossSection?: CrossSection | undefined
  /** The same inside a box that the neck runs through. */
  insideSection?: CrossSection | undefined
}

/**
 * Find once what all drawings of a plan ask for. Seen from its face with the head up, a right-handed instrument has its
 * bass strings at the left; `off` grows towards the last string. With one string, `off` grows to the right as seen from
 * the nut towards the bridge, which is the left of the page. A left-handed one is the mirror image.
 */
export function instrumentOf(plan: Plan): Instrument {
  const {neck, head} = plan.outline ?? {}
  const bass = seenFromFront[plan.handed].bass === 'left' ? -1 : 1
  const towards = plan.strings?.length === 1 ? bass : -bass
  return {
    plan,
    neck,
    head,
    box: placedBox(plan),
    bass,
    x: (offMm) => towards * offMm + 0,
    halfMm: (stationMm) => (neck ? neckWidth(neck, stationMm) / 2 : 0),
    topHoles: drilledIn(plan, ['top', 'top inside']),
    crossSection: shownCrossSection(plan),
    insideSection: insideCrossSection(plan),
  }
}

/** Turn an instrument over: seen from inside its box, left and right change places. */
export const fromInside = (instrument: Instrument): Instrument => ({
  ...instrument,
  bass: instrument.bass === 1 ? -1 : 1,
  x: (offMm) => -instrument.x(offMm) + 0,
})

/** Find a place on the page. */
export const placed = ({x}: Pick<Instrument, 'x'>, {stationMm, offMm}: Place): Point => [x(offMm), stationMm]

/** Say to which side of the page (−1 left) a side of the instrument lies. */
export const outwards = ({bass}: Pick<Instrument, 'bass'>, side: string): -1 | 1 =>
  (side === 'bass') === (bass === 1) ? 1 : -1

/** List what is drilled from these faces besides sound holes: the widest hole where several share a place. */
export function drilledIn({holes = []}: Plan, faces: readonly Face[]): DrilledHole[] {
  const widest = new Map<string, DrilledHole>()
  for (const {face, what, stationMm, offMm, diameterMm, proposed} of holes) {
    if (!faces.includes(face) || what.hole === 'sound') continue
    const key = `${stationMm.toFixed(2)} ${offMm.toFixed(2)}`
    const known = widest.get(key)
    if (!known || known.diameterMm < diameterMm)
      widest.set(key, {stationMm, offMm, diameterMm, what, proposed})
  }
  return [...widest.values()]
}

/** Gather what stands in one row across and is alike (`like` is the same), rows in order down the page. */
export function inRows<One extends Place>(
  things: readonly One[],
  like: (one: One) => string,
): [One, ...One[]][] {
  const rows = new Map<string, [One, ...One[]]>()
  for (const one of things) {
    const key = `${like(one)} ${one.stationMm.toFixed(2)}`
    const row = rows.get(key)
    if (row) row.push(one)
    else rows.set(key, [one])
  }
  return [...rows.values()].sort(([a], [b]) => a.stationMm - b.stationMm)
}

function placedBox({box}: Plan): PlacedBox | undefined {
  if (box?.atMm === undefined || !box.outside) return undefined
  return {...box.outside, atMm: box.atMm, tailMm: box.atMm + box.outside.lengthMm}
}

const neckWidth = ({nutWidthMm, tailWidthMm, tailMm}: NeckOutline, stationMm: number) =>
  neckWidthAt(stationMm, {nutMm: nutWidthMm, tailMm: tailWidthMm, tailStationMm: tailMm}) ?? nutWidthMm

function shownCrossSection({neck, scale, box, outline}: Plan): CrossSection | undefined {
  const middle = (box?.atMm ?? scale?.lengthMm ?? 0) / 2
  const far = ({stationMm}: NeckCrossSection) => Math.abs(stationMm - middle)
  const shown = neck?.sections?.reduce<NeckCrossSection | undefined>(
    (best, one) => (best && far(best) <= far(one) ? best : one),
    undefined,
  )
  if (!shown) return undefined
  const {radiusMm = 0, fromMm = 0, toMm = 0} = outline?.neck?.roundOver ?? {}
  const isRounded = shown.stationMm > fromMm && shown.stationMm < toMm
  const round = neck?.boardRadius
  const board = outline?.neck?.fingerboard
  const isOnBoard = board && shown.stationMm >= board.fromMm && shown.stationMm < board.toMm
  return {
    ...shown,
    deepMm: 0,
    faceRadiusMm: round && round.wouldDoMm === undefined && isOnBoard ? round.radiusMm : undefined,
    roundOverMm: isRounded ? Math.min(radiusMm, shown.thicknessMm, shown.widthMm / 2) : 0,
  }
}

/** The cut in the middle of what a neck keeps inside the box, under the daylight and the top over it. */
function insideCrossSection({neck, box}: Plan): CrossSection | undefined {
  const shown = neck?.sections?.find(({what}) => what?.at === 'inside')
  const {inside} = neck ?? {}
  const {aboveTopMm} = box?.neck ?? {}
  if (!shown || !inside || aboveTopMm === undefined || !box?.outside || shown.thicknessMm <= 0)
    return undefined
  const {topMm} = box.outside
  return {
    ...shown,
    roundOverMm: 0,
    deepMm: inside.surfaceMm,
    under: {topMm, gapMm: inside.surfaceMm - aboveTopMm - topMm},
  }
}
