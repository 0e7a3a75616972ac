import {screws as screwRows} from '../../tables/screws.ts'
import {inch} from '../../tables/units.ts'
import type {Settled} from '../settled.ts'
import {woodOf} from '../woods.ts'
import {toMark} from '../would-do.ts'
import {type NeckEnd, screwKeeps} from './screw-edges.ts'
import {screwSize, threadBites, withdrawalN} from './screw-size.ts'

/** Screws from inside the box, along a neck that ends at it, that would carry the strings; mm. */
export interface EndScrews {
  size: number
  lengthMm: number
  atMm: number
  offsMm: number[]
  /** Below the box's top. */
  downMm: number
  through: string[]
}

/** Gauges, lengths and counts that are tried, the least first: common practice, no source. */
const gauges = [8, 10, 12, 14]
const lengths = {in: [1.5, 2, 2.5, 3].map(inch), mm: [40, 50, 60, 70]}
const counts = [2, 3]
/** Screws beside each other stand this many shanks apart: common practice, no source. */
const apart = 4
/** A screw holds as many times its load, and two thirds of it are thread, as screws of the file are judged. */
const margin = 3
const threadPart = 2 / 3

/** What screws along the neck have to hold, and where there is room for them (mm, N·mm). */
export interface EndLoad extends NeckEnd {
  /** The pull times the strings' height over the edge that the neck turns about. */
  momentNmm: number
  /** That edge below the box's top. */
  edgeMm: number
  /** What of the neck's end meets the wall. */
  face: {widthMm: number; heightMm: number}
}

interface Spot {
  atMm: number
  sidesMm: number
  /** Of the block behind the wall, along the neck and across it. */
  block: {lengthMm: number; widthMm: number} | undefined
}

/**
 * Find the fewest and smallest screws through the wall, and through the block or a washer behind it, that hold three
 * times what the strings draw them by, as low in the neck's end as its back lets them be. Undefined where none of those
 * tried would do, or the neck's wood is not known. Statics as endScrewLoads: moment over the sum of their levers.
 */
export function planEndScrews(
  {values: {neck}, rulerMm, units}: Settled,
  joint: EndLoad,
  {atMm, sidesMm, block}: Spot,
): EndScrews | undefined {
  const wood = woodOf(neck?.wood?.value ?? neck?.laminations?.at(-1)?.wood?.value, neck)
  if (!wood) return undefined
  const underHeadMm = sidesMm + (block?.lengthMm ?? 0)
  for (const count of counts)
    for (const size of gauges.filter((gauge) => screwRows.some((row) => row.gauge === gauge))) {
      const {shankMm} = screwSize(size)
      const keepsMm = screwKeeps.edge * shankMm
      const downMm = toMark(joint.middleMm + joint.halfMm - keepsMm, rulerMm, 'down')
      const leverMm = downMm - joint.edgeMm
      const widthMm = Math.min(joint.face.widthMm, block?.widthMm ?? Number.POSITIVE_INFINITY)
      const offMm = toMark(widthMm / 2 - keepsMm, rulerMm, 'down')
      const isCrowded = (2 * offMm) / (count - 1) < apart * shankMm
      if (isCrowded || leverMm <= 0 || downMm < joint.middleMm - joint.halfMm + keepsMm) continue
      const neededN = (margin * joint.momentNmm) / (count * leverMm)
      const lengthMm = lengths[units].find((mm) => {
        const startsMm = Math.max(0, mm * (1 - threadPart) - underHeadMm)
        const endsMm = mm - underHeadMm
        const {bites} = threadBites([{wood, mm: Number.MAX_VALUE}], [startsMm, endsMm])
        const isEnough = endsMm - startsMm >= Math.max(2 * shankMm, inch(1 / 4))
        return isEnough && withdrawalN(shankMm, bites, true) >= neededN
      })
      if (lengthMm === undefined) continue
      const offsMm = count === 2 ? [-offMm, offMm] : [-offMm, 0, offMm]
      return {size, lengthMm, atMm, offsMm, downMm, through: [block ? 'block' : 'washer', 'side']}
    }
  return undefined
}
