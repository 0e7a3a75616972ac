import {nearestMark, nearestMarkMm} from '../build-file/quantities/write-length.ts'
import {noticeableCents, rulerMarks} from '../tables/hearing.ts'
import {justIntervals} from '../tables/intervals.ts'
import type {PlanPart} from './part.ts'
import type {Line} from './scale.ts'

/**
 * Try the marks that rulers have on every line of the scale: the worst that each does, in cents, and the coarsest one
 * that keeps all lines within what ears notice. Absent without lines.
 */
export const marking: PlanPart = ({units}, {scale}) => {
  const lengthMm = scale?.lengthMm
  if (!scale?.lines?.length || lengthMm === undefined) return {}
  const {lines} = scale
  const rulers = rulerMarks[units].map(({mm, text}) => ({mm, text, ...worstWith(mm, lines, lengthMm, units)}))
  const enough = rulers.find(({worstCents}) => worstCents <= noticeableCents)
  const worst = lines.reduce((most, line) => (errorOf(line) > errorOf(most) ? line : most))
  return {
    scale: {
      ...scale,
      worstMarkLabel: worst.label,
      noticeableCents,
      rulers,
      ...(enough && {rulerNeeded: {mm: enough.mm, text: enough.text}}),
    },
  }
}

const errorOf = ({markErrorCents}: Line) => Math.abs(markErrorCents)

function worstWith(rulerMm: number, lines: readonly Line[], lengthMm: number, units: 'in' | 'mm') {
  const ruler = {units, rulerMm}
  let worstLabel = ''
  let worstCents = -1
  for (const {label, fromNutMm} of lines) {
    const mm = nearestMarkMm(Math.min(fromNutMm, lengthMm - rulerMm), ruler)
    const cents = Math.abs(1200 * Math.log2((lengthMm - fromNutMm) / (lengthMm - mm)))
    if (!(cents > worstCents)) continue
    worstLabel = label
    worstCents = cents
  }
  return {worstLabel, worstCents}
}

/**
 * Place the pure intervals of the first octave on the side of a fretless neck: mm from the nut, the nearest mark of the
 * ruler, and the cents above the open string. Absent where the build is fretted, since frets say where notes are.
 */
export const justMarks: PlanPart = ({units, rulerMm}, {scale}) => {
  const lengthMm = scale?.lengthMm
  if (!scale || scale.fretted || lengthMm === undefined || !scale.lines?.length) return {}
  return {
    scale: {
      ...scale,
      justMarks: justIntervals.map(({name, over, under}) => {
        const fromNutMm = lengthMm * (1 - under / over)
        const mark = nearestMark(fromNutMm, {units, rulerMm})
        return {
          name,
          ratio: `${over}/${under}`,
          cents: 1200 * Math.log2(over / under),
          fromNutMm,
          mark: mark.text,
        }
      }),
    },
  }
}
