import type {BlockContent} from 'mdast'
import type {Fastener} from '../../plan/shape/holes.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {bitWords} from '../drilling/bit-words.ts'
import {type Cell, lengthAlone, table} from '../kit.ts'
import {screwName} from './screw-name.ts'

/** Set out the bits and depths of each row of screws, the worst of its tips. */
export function bitsTable(rows: readonly Fastener[][], plan: Plan): BlockContent {
  const at = (mm: number) => lengthAlone(mm, plan)
  return table({
    caption: 'Bits and depths, a row of screws each',
    columns: [
      {head: 'Screws'},
      {head: 'Clearance hole'},
      {head: 'Pilot hole'},
      {head: 'Wood'},
      {head: 'Under the head', align: 'right'},
      {head: 'Thread that bites', align: 'right'},
      {head: 'Tip to far face', align: 'right'},
      {head: 'Longest that fits', align: 'right'},
    ],
    rows: rows.map((row): Cell[] => {
      const screw = row.reduce((worst, one) =>
        (one.tipToFaceMm ?? 0) < (worst.tipToFaceMm ?? 0) ? one : worst,
      )
      const {tipToFaceMm: tip, longestMm} = screw
      return [
        `${row.length} × ${screwName(screw)}`,
        bitWords(screw.clearanceBit),
        bitWords(screw.pilotBit),
        screw.wood ? `${screw.wood}, bored as ${screw.hardness}wood` : `${screw.hardness}wood`,
        at(screw.underHeadMm),
        at(screw.threadMm),
        tip === undefined ? 'no face ahead' : tip < 0 ? ['comes out by ', at(-tip)] : at(tip),
        longestMm === undefined ? '' : lengthAlone(longestMm, plan, 'down'),
      ]
    }),
    note: 'Screws differ between makers: measure the core of yours, and bore 90 % of it in hardwood, 70 % in softwood.',
  })
}
