import {fineRulers, writeLength} from '../build-file/quantities/write-length.ts'
import type {Cuts} from '../plan/cut-list.ts'
import {endAllowanceMm, type Part} from '../plan/design-parts.ts'
import type {Unplaced} from '../plan/unplaced-parts.ts'
import type {WouldDo} from '../plan/would-do.ts'
import type {Ruler} from './lengths.ts'

/** A cut list as it is given to others: why each part has its size, and what it lacks, in words. */
export interface PrintedCuts extends Omit<Cuts, 'parts' | 'unplaced'> {
  parts: (Omit<Part, 'why'> & {why: string})[]
  unplaced: (Omit<Unplaced, 'lacks'> & {lacks: string})[]
}

export function printedCuts(cuts: Cuts, ruler: Ruler): PrintedCuts {
  const woods = new Map(cuts.parts.map(({id, wood}) => [id, wood]))
  return {
    ...cuts,
    parts: cuts.parts.map((part) => ({...part, why: partWhy(part, ruler)})),
    unplaced: cuts.unplaced.map((one) => ({...one, lacks: lacksWords(one, woods.get(one.partId)!, ruler)})),
  }
}

/** Sizes are only named here, so that a coarse ruler hides nothing of them. */
const finest = ({units, rulerMm}: Ruler): Ruler => ({
  units,
  rulerMm: Math.min(rulerMm, fineRulers[units].rulerMm),
})

const blanks = {
  scarf: 'the whole stick, with what the scarf gains and its saw cut takes, and 1/2 in more at each end',
  'leaning head':
    'the whole stick, thick enough to saw the leaning head out of it, and 1/2 in more at each end',
  plain: 'the whole stick, and 1/2 in more at each end',
} as const

/** Say why a part has its size as sawn. */
export function partWhy({why, isSmall}: Pick<Part, 'why' | 'isSmall'>, ruler: Ruler): string {
  if (why === 'listed')
    return `listed, cut as written${isSmall ? '; small, so cut it off its strip last' : ''}`
  const size = (mm: number) => writeLength(mm, finest(ruler))
  const {lengthMm, widthMm, thicknessMm, planeMm, blank} = why
  const length = blank
    ? blanks[blank]
    : `${size(lengthMm)} long, and ${size(endAllowanceMm)} more at each end`
  const planed = `${size(widthMm)} by ${size(thicknessMm)} once ${size(planeMm)} is planed off each face`
  return `${length}; ${planed}${isSmall ? '; small, so plane the strip first and cut this off it last' : ''}`
}

/** Say what the nearest piece lacks for a part of some wood: `4 in of length`. */
function lacksWords({nearest, lacks}: Unplaced, wood: string, ruler: Ruler): string {
  if (nearest === undefined) return 'no piece is listed'
  const {sizes, isOf} = lacks
  const all = [
    ...sizes.map(({what, mm}) => `${writeLength(mm, finest(ruler), 'up')} of ${what}`),
    ...(isOf ? [`the right wood: it is ${isOf}, not ${wood}`] : []),
  ]
  return all.length > 0 ? all.join(' and ') : 'room beside the other parts'
}

/** The parts of one row that found no piece: the row's path, its first such part in words, and what is near it. */
interface UnplacedRow {
  of: string
  /** `inlay 1 and 2 more like it` */
  which: string
  /** `K1 comes nearest, and lacks 4 in of length` */
  near: string
  wouldDo: WouldDo | undefined
}

/** Gather the parts that found no piece by the row of the file, or of the design, that they come from. */
export function unplacedRows({parts, unplaced}: Cuts, ruler: Ruler): UnplacedRow[] {
  const byId = new Map(parts.map((part) => [part.id, part]))
  const rows = new Map<string, Unplaced[]>()
  for (const one of unplaced) {
    const {of} = byId.get(one.partId)!
    rows.set(of, [...(rows.get(of) ?? []), one])
  }
  return [...rows].map(([of, lacking]) => {
    const [first] = lacking as [Unplaced]
    const {name, wood} = byId.get(first.partId)!
    const lacks = lacksWords(first, wood, ruler)
    return {
      of,
      which: lacking.length > 1 ? `${name} and ${lacking.length - 1} more like it` : name,
      near: first.nearest ? `${first.nearest} comes nearest, and lacks ${lacks}` : lacks,
      wouldDo: first.wouldDo,
    }
  })
}
