import {nearestMark, nearestMarkMm, type Ruler} from '../../build-file/quantities/write-length.ts'
import {noticeableCents, rulerMarks} from '../../tables/hearing.ts'
import {justIntervals} from '../../tables/intervals.ts'
import {centsOf} from '../../tables/units.ts'
import type {Line} from './lines.ts'

/** What rulers make of the lines, in cents. */
export interface Marking {
  /** The largest error, of either sign, that the ruler’s rounding makes. */
  worstMarkErrorCents: number
  /** The line that has it. */
  worstMarkLabel: string
  /** The least difference of pitch that ears notice. */
  noticeableCents: number
  /** What other rulers’ marks would do at worst, coarsest first. */
  rulers: {mm: number; text: string; worstCents: number; worstLabel: string}[]
  /** The coarsest mark that keeps every line within what ears notice. */
  rulerNeeded?: {mm: number; text: string} | undefined
}

/** A pure interval along a fretless neck. */
export interface JustMark {
  name: string
  ratio: string
  /** Above the open string. */
  cents: number
  fromNutMm: number
  /** The nearest mark of the maker's ruler, as a text. */
  mark: string
}

/** Try the marks that rulers have on the lines of a scale, of which there is at least one. */
export function planMarking(lines: readonly Line[], lengthMm: number, units: 'in' | 'mm'): Marking {
  const rulers = rulerMarks[units].map(({mm, text}) => ({mm, text, ...worstWith(mm, lines, lengthMm, units)}))
  const enough = rulers.find(({worstCents}) => worstCents <= noticeableCents)
  const worst = lines.reduce((most, line) => (errorOf(line) > errorOf(most) ? line : most))
  return {
    worstMarkErrorCents: errorOf(worst),
    worstMarkLabel: worst.label,
    noticeableCents,
    rulers,
    rulerNeeded: enough && {mm: enough.mm, text: enough.text},
  }
}

const errorOf = ({markErrorCents}: Line) => Math.abs(markErrorCents)

function worstWith(rulerMm: number, lines: readonly Line[], lengthMm: number, units: 'in' | 'mm') {
  const ruler = {units, rulerMm}
  let worstLabel = ''
  let worstCents = -1
  for (const {label, fromNutMm} of lines) {
    const mm = nearestMarkMm(Math.min(fromNutMm, lengthMm - rulerMm), ruler)
    const cents = Math.abs(centsOf((lengthMm - fromNutMm) / (lengthMm - mm)))
    if (!(cents > worstCents)) continue
    worstLabel = label
    worstCents = cents
  }
  return {worstLabel, worstCents}
}

/** Place the pure intervals of the first octave on the side of a fretless neck, to the marks of a ruler. */
export function justMarks(lengthMm: number, ruler: Ruler): JustMark[] {
  return justIntervals.map(({name, over, under}) => {
    const fromNutMm = lengthMm * (1 - under / over)
    const mark = nearestMark(fromNutMm, ruler).text
    return {name, ratio: `${over}/${under}`, cents: centsOf(over / under), fromNutMm, mark}
  })
}
