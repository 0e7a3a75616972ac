import {fineRulers, writeLength} from '../build-file/quantities/write-length.ts'
import type {BillItem} from '../plan/stock/needed.ts'
import {inch} from '../tables/units.ts'
import {boardName} from './cut-list.ts'
import type {Units} from './quantities.ts'

/** Fret wire is sold by thousandths of an inch, or hundredths of a millimetre. */
const wireRulers = {in: {units: 'in', rulerMm: inch(0.001)}, mm: {units: 'mm', rulerMm: 0.01}} as const

/** Name something to get as a shop would: `screws, no. 8 × 1 in`, `string .013, steel`. */
export function billItem(item: BillItem, {units}: Units): string {
  if (typeof item === 'string') return item
  const size = (mm: number) => writeLength(mm, fineRulers[units])
  switch (item.is) {
    case 'string':
      return `string ${item.gauge ?? `for ${item.for}`}${item.material ? `, ${item.material}` : ''}`
    case 'screws':
      return `screws, no. ${item.size ?? '?'}${item.lengthMm === undefined ? '' : ` × ${size(item.lengthMm)}`}`
    case 'rod':
    case 'bolt':
    case 'blank':
      return `${item.is} for the ${item.for}${item.diameterMm === undefined ? '' : `, ${size(item.diameterMm)}`}`
    case 'fret wire':
      return [
        'fret wire',
        item.metal,
        item.widthMm && `${writeLength(item.widthMm, wireRulers[units])} wide`,
        `${size(item.mm)} in all`,
      ]
        .filter(Boolean)
        .join(', ')
    case 'pickup':
      return item.kind ? `${item.kind} pickup` : 'pickup'
    case 'wood':
      return `${item.wood}, ${item.id}`
    case 'board':
      return `${item.wood === 'any' ? '' : `${item.wood} `}board, ${boardName(item.nominal, item.widthMm)}`
    default:
      return item.is
  }
}
