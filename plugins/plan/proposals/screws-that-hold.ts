import {screwLengths, usualGauges} from '../../tables/screws.ts'
import type {Box} from '../box/box.ts'
import {planEndJoint} from '../fasteners/end-joint.ts'
import type {Fastener} from '../fasteners/fastener.ts'
import {planFasteners} from '../fasteners/fasteners.ts'
import {screwKeeps} from '../fasteners/screw-edges.ts'
import {planScrewPlaces} from '../fasteners/screw-places.ts'
import {screwSize} from '../fasteners/screw-size.ts'
import type {JointPull} from '../joint/joint-pull.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import {markAt, sizeOf, type Texts, withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import type {NeckTaper} from '../neck-shape/taper.ts'

/** What screws are to hold, and in what. */
export interface Held {
  settled: Settled
  box: Box
  place: BoxPlace | undefined
  taper: NeckTaper | undefined
  pull: JointPull | undefined
}

/** Write a row of so many screws beside each other, of a gauge and a length; undefined where there is no room for it. */
type Row = (size: string, length: string, count: number) => {readonly [key: string]: Texts} | undefined

/** A row as the file would have it, and the screws that it comes to. */
export interface Found {
  texts: Texts
  screws: Fastener[]
}

/**
 * Find the first row in which every screw holds: few before more, thin before thick. Up into the neck the longest that
 * stays in the wood costs nothing; along it, where the hole is deep, the shortest does.
 */
export function screwsThatHold(held: Held, counts: readonly number[], row: Row): Found | undefined {
  const lengths = screwLengths[held.settled.units]
  for (const count of counts)
    for (const gauge of usualGauges) {
      const tries = (length: string) => {
        const texts = row(String(gauge), length, count)
        return texts && {texts, ...tryScrews(held, texts)}
      }
      const longest = tries(lengths.at(-1)!)
      if (!longest) continue
      const mostMm = Math.min(...longest.screws.map(({longestMm = Number.POSITIVE_INFINITY}) => longestMm))
      const leastMm = Math.max(...longest.screws.map(({shortestMm}) => shortestMm))
      const fitting = lengths.filter((length) => {
        const {mm: longMm} = sizeOf(length, length, held.settled)
        return longMm >= leastMm - slackMm && longMm <= mostMm + slackMm
      })
      const isEndless = mostMm === Number.POSITIVE_INFINITY
      const best = fitting.length ? tries(fitting.at(-1)!) : undefined
      if (!best?.hold) continue
      return isEndless ? fitting.map(tries).find((one) => one?.hold) : best
    }
  return undefined
}

/** Work a row of screws out as the plan would, and tell whether all of them hold. */
function tryScrews({settled, box, place, taper, pull}: Held, row: Texts) {
  const {screws: _, ...others} = settled.values
  const values = withTexts({...settled, values: others}, {screws: [row]}, settled.units)
  const tried = {...settled, values}
  const end = planEndJoint(tried, {box, pull})
  const places = planScrewPlaces(values, place)
  const {fasteners: screws = [], conflicts} = planFasteners(tried, places, {box, taper}, {pull, end})
  return {screws, hold: screws.length > 0 && conflicts.length === 0 && screws.every(holds)}
}

const slackMm = 1e-6

/** Tell whether a screw stays in the wood, bites enough, has enough under its head, and bears its load. */
function holds(screw: Fastener): boolean {
  const {lengthMm, longestMm = lengthMm, shortestMm, overN, astray, offBox, loadN} = screw
  const isInWood = lengthMm <= longestMm + slackMm && lengthMm >= shortestMm - slackMm
  return isInWood && screw.hasPad && overN === undefined && loadN !== undefined && !astray && !offBox
}

/** Two places, one on each side of the centre line. */
export function offsAt(mm: number, settled: Settled): string[] {
  const {text} = markAt(mm, settled, 'down')
  return [`-${text}`, text]
}

/** Three screws beside each other stand at least this many shanks apart: common practice, no source. */
const apart = 4

/**
 * Find the screws through the wall of the box's end, and through the block or a washer behind it, that hold a neck
 * which ends there: two, or three, as low in the neck's end as its back lets them be.
 */
export function screwsIntoEnd(held: Held, {middleMm, halfMm}: {middleMm: number; halfMm: number}) {
  const {settled, box} = held
  const neckMm = box.neck?.widthMm ?? 0
  const hasBlock = box.blocks?.some(({of, glued}) => of === 'box.end-block' || glued === 'at the ends')
  const [along, through] = [['0'], [hasBlock ? 'block' : 'washer', 'side']]
  return screwsThatHold(held, [2, 3], (size, length, count) => {
    const {shankMm} = screwSize(Number(size))
    const keepsMm = screwKeeps.edge * shankMm
    const down = [markAt(middleMm + halfMm - keepsMm, settled, 'down').text]
    const outMm = count === 2 ? neckMm / 4 : neckMm / 2 - keepsMm
    if (count > 2 && outMm < apart * shankMm) return undefined
    const [left, right] = offsAt(outMm, settled)
    const off = count === 2 ? [left!, right!] : [left!, '0', right!]
    return {size, length, along, off, down, through, into: 'neck'}
  })
}
