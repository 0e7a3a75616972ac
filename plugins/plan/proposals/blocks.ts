import {usualGauges} from '../../tables/screws.ts'
import {inch} from '../../tables/units.ts'
import {planBlocks} from '../box/box-blocks.ts'
import {planPickup} from '../box/pickup.ts'
import {areHolesClear} from '../box/sound-holes.ts'
import {screwKeeps} from '../fasteners/screw-edges.ts'
import {screwSize} from '../fasteners/screw-size.ts'
import {markAt, type Texts, withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import type {Around} from './around.ts'

/** A block leaves this much bare beside it, for glue that is squeezed out (mm): common practice, no source. */
const besideMm = inch(1 / 8)
/** How thick a block is (mm), of the height inside no more than a part, and at the least: common practice, no source. */
const thickness = {mm: inch(3 / 8), part: 1 / 3, leastMm: inch(1 / 8)}
/** How wide blocks under a neck are tried, times the neck: common practice, no source. */
const widths = [2, 1.5, 1]

/**
 * Propose two blocks under the top, across the neck and as near the ends of its seat as the walls leave, where the top
 * moves least; one where two would meet. Each is long enough for a screw in its middle, wider than the neck, and clear
 * of the sound holes and the pickup that the file gives. Undefined where there is no room.
 */
export function blocksUnder(settled: Settled, around: Around): Texts[] | undefined {
  for (const times of widths) {
    const both = blocksAsWide(settled, around, times) ?? []
    for (const blocks of both.length > 1 ? [both, both.slice(0, 1), both.slice(1)] : [both])
      if (blocks.length > 0 && isClear(settled, around, blocks)) return blocks
  }
  return undefined
}

function blocksAsWide(
  settled: Settled,
  {place, sizes, taper, neck}: Around,
  times: number,
): Texts[] | undefined {
  const {inside, outside} = sizes ?? {}
  if (!inside || !outside || place?.tailMm === undefined) return undefined
  const {shankMm} = screwSize(usualGauges[0])
  const long = markAt(2 * screwKeeps.end * shankMm, settled, 'up')
  const neckMm = (taper && neckWidthAt(place.atMm, taper)) ?? 0
  const wide = markAt(Math.min(times * neckMm, inside.widthMm - 2 * besideMm), settled, 'down')
  const thick = markAt(Math.min(thickness.mm, inside.heightMm * thickness.part), settled, 'down')
  const seatMm = Math.min(neck?.tailMm ?? place.tailMm, place.tailMm) - place.atMm
  const first = markAt(outside.sidesMm + besideMm + long.mm / 2, settled, 'up')
  const endMm = Math.min(seatMm, outside.lengthMm - outside.sidesMm - besideMm)
  const last = markAt(endMm - long.mm / 2, settled, 'down')
  const isNarrow = wide.mm < 2 * screwKeeps.end * shankMm
  if (thick.mm < thickness.leastMm || isNarrow || last.mm < first.mm - 1e-6) return undefined
  const rows = last.mm - first.mm >= long.mm + besideMm ? [first, last] : [first]
  return rows.map(({text}) => ({
    along: text,
    off: '0',
    length: long.text,
    width: wide.text,
    thickness: thick.text,
    glued: 'under the top',
  }))
}

function isClear(settled: Settled, around: Around, blocks: Texts[]): boolean {
  const {values, rulerMm} = settled
  if (!values.box?.holes?.length && !values.pickup) return true
  const {place, sizes, neck, bridge} = around
  const tried = withTexts(settled, {box: {blocks}}, settled.units)
  const placed = planBlocks(tried, {place, sizes, neck, rulerMm})
  const roomMm = planPickup(tried, {...place, ...sizes, neck, blocks: placed}, bridge)?.largestMm
  const bareMm = planPickup(values, {...place, ...sizes, neck}, bridge)?.largestMm
  const discMm = values.pickup?.diameter?.mm ?? 0
  const isInTheWay = roomMm !== undefined && roomMm < Math.min(discMm, bareMm ?? 0) - 1e-6
  return !isInTheWay && areHolesClear(values, {place, blocks: placed})
}

/** How thick the block behind an end is, times the shank of the screw through it: common practice, no source. */
const behindShanks = 5

/**
 * Propose the block inside the head end that screws through the wall pull against: right under the top, from there to
 * as deep as the neck meets the wall, twice as wide as the neck. Undefined where there is no room.
 */
export function endBlock(settled: Settled, {sizes, neck, neckMm}: Around): Texts | undefined {
  const {inside, outside} = sizes ?? {}
  if (!inside || !outside || !neck) return undefined
  const {shankMm} = screwSize(usualGauges[1])
  const belowTopMm = (neckMm ?? neck.thicknessMm) - neck.aboveTopMm - outside.topMm
  const long = markAt(Math.min(behindShanks * shankMm, inside.lengthMm / 4), settled, 'up')
  const wide = markAt(Math.min(2 * neck.widthMm, inside.widthMm), settled, 'down')
  const deep = markAt(Math.min(belowTopMm, inside.heightMm), settled, 'down')
  if (deep.mm < thickness.leastMm || wide.mm < neck.widthMm || long.mm < thickness.leastMm) return undefined
  return {length: long.text, width: wide.text, thickness: deep.text}
}
