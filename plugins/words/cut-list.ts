import {fineRulers, writeLength} from '../build-file/quantities/write-length.ts'
import type {Cuts} from '../plan/stock/cut-list.ts'
import {endAllowanceMm, type Part, type PartCalled} from '../plan/stock/part.ts'
import type {Bought} from '../plan/stock/to-buy.ts'
import type {Unplaced} from '../plan/stock/unplaced-parts.ts'
import type {UnplacedRow} from '../plan/stock/unplaced-rows.ts'
import {inchMm} from '../tables/units.ts'
import type {Ruler} from './lengths.ts'

/** A cut list as it is given to others: why each part has its size, and what it lacks, in words. */
export interface PrintedCuts extends Omit<Cuts, 'parts' | 'unplaced' | 'bought'> {
  parts: (Omit<Part, 'called' | 'why'> & {name: string; why: string})[]
  unplaced: (Omit<Unplaced, 'lacks'> & {lacks: string})[]
  bought: (Omit<Bought, 'nominal'> & {size: string})[]
}

export function printedCuts(cuts: Cuts, ruler: Ruler): PrintedCuts {
  const woods = new Map(cuts.parts.map(({id, wood}) => [id, wood]))
  return {
    ...cuts,
    parts: cuts.parts.map((part) => {
      const {called, ...sizes} = part
      return {name: partName(called), ...sizes, why: partWhy(part, ruler)}
    }),
    unplaced: cuts.unplaced.map((one) => ({...one, lacks: lacksWords(one, woods.get(one.partId)!, ruler)})),
    bought: cuts.bought.map(({nominal, ...board}) => ({size: boardName(nominal, board.widthMm), ...board})),
  }
}

/** Name a board as shops do: `1 × 4, 8 ft` of softwood, `4/4, 6 in wide, 8 ft` of hardwood of that width (mm). */
export const boardName = ({thickness, width, feet}: Bought['nominal'], widthMm: number): string =>
  `${thickness}${width ? ` × ${width}` : `, ${widthMm / inchMm} in wide`}, ${feet} ft`

/** Sizes are only named here, so that a coarse ruler hides nothing of them. */
const finest = ({units, rulerMm}: Ruler): Ruler => ({
  units,
  rulerMm: Math.min(rulerMm, fineRulers[units].rulerMm),
})

const blanks = {
  scarf: 'the whole stick, with what the scarf gains and its saw cut takes',
  'leaning head': 'the whole stick, thick enough to saw the leaning head out of it',
  plain: 'the whole stick',
} as const

/** Say why a part has its size as sawn. */
export function partWhy({why, isSmall}: Pick<Part, 'why' | 'isSmall'>, ruler: Ruler): string {
  if (why === 'listed')
    return `listed, cut as written${isSmall ? '; small, so cut it off its strip last' : ''}`
  const size = (mm: number) => writeLength(mm, finest(ruler))
  const {lengthMm, widthMm, thicknessMm, planeMm, blank} = why
  const length = `${blank ? blanks[blank] : `${size(lengthMm)} long`}, and ${size(endAllowanceMm)} more at each end`
  const planed = `${size(widthMm)} by ${size(thicknessMm)} once ${size(planeMm)} is planed off each face`
  return `${length}; ${planed}${isSmall ? '; small, so plane the strip first and cut this off it last' : ''}`
}

/** Say what the nearest piece lacks for a part of some wood: `4 in of length`. */
function lacksWords(
  {nearest, lacks}: Pick<Unplaced, 'nearest' | 'lacks'>,
  wood: string,
  ruler: Ruler,
): string {
  if (nearest === undefined) return 'no piece is listed'
  const {sizes, isOf} = lacks
  const all = [
    ...sizes.map(({what, mm}) => `${writeLength(mm, finest(ruler), 'up')} of ${what}`),
    ...(isOf ? [`the right wood: it is ${isOf}, not ${wood}`] : []),
  ]
  return all.length > 0 ? all.join(' and ') : 'room beside the other parts'
}

/** Say which parts found no piece, and what is near: `inlay 1 and 2 more like it: K1 comes nearest, and lacks …`. */
export function unplacedWords(row: UnplacedRow, ruler: Ruler): string {
  const {part, more, nearest} = row
  const which = more > 0 ? `${partName(part.called)} and ${more} more like it` : partName(part.called)
  const lacks = lacksWords(row, part.wood, ruler)
  return `${which}: ${nearest ? `${nearest} comes nearest, and lacks ${lacks}` : lacks}`
}

const partNames: Readonly<Record<PartCalled['is'], string>> = {
  neck: 'neck',
  'neck-lamination': 'neck lamination',
  'neck-cap': 'neck cap',
  'head-plate': 'head plate',
  fingerboard: 'fingerboard',
  'end-block': 'end block',
  block: 'block',
  part: 'part',
}

/** Name a part to cut: `neck lamination 2, strip 3`, or as the file calls it. */
export function partName({is, own = partNames[is], number, strip, copy}: PartCalled): string {
  const one = [own, number, copy].filter((said) => said !== undefined).join(' ')
  return strip === undefined ? one : `${one}, strip ${strip}`
}

/** Name parts to cut, each by its id. */
export const partNamesById = (parts: readonly Part[]): ReadonlyMap<string, string> =>
  new Map(parts.map(({id, called}) => [id, partName(called)]))

/** Name several alike by what they share: `neck lamination 2, strip 3` is `neck lamination 2`, `rail 17` is `rail`. */
export const plainName = (name: string): string => name.replace(/(, strip)? \d+$/, '')
