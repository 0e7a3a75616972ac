import {nearestMarkMm} from '../../build-file/quantities/nearest-mark.ts'
import {noticeableCents, rulerMarks} from '../../tables/hearing.ts'
import type {PlanPart} from '../part.ts'
import type {Line} from '../shape/scale.ts'

/**
 * Try the marks that rulers have on every line of the scale: the worst that each does, in cents, and the coarsest one
 * that keeps all lines within what ears notice; and how far each line lies off the equal semitone. Absent without lines.
 */
export const marking: PlanPart = ({units}, {scale}) => {
  const lengthMm = scale?.lengthMm
  if (!scale?.lines?.length || lengthMm === undefined) return {}
  const {lines} = scale
  const rulers = rulerMarks[units].map(({mm, text}) => ({mm, text, ...worstWith(mm, lines, lengthMm, units)}))
  const enough = rulers.find(({worstCents}) => worstCents <= noticeableCents)
  const byError = [...lines].sort((a, b) => Math.abs(b.markErrorCents) - Math.abs(a.markErrorCents))
  return {
    scale: {
      ...scale,
      lines: lines.map((line) => ({...line, offEqualCents: line.cents - 100 * line.semitones})),
      worstMarkLabel: byError[0]!.label,
      noticeableCents,
      rulers,
      ...(enough && {rulerNeeded: {mm: enough.mm, text: enough.text}}),
    },
  }
}

function worstWith(rulerMm: number, lines: readonly Line[], lengthMm: number, units: 'in' | 'mm') {
  const errors = lines.map(({label, fromNutMm}) => {
    const mm = nearestMarkMm(Math.min(fromNutMm, lengthMm - rulerMm), {units, rulerMm})
    return {
      worstLabel: label,
      worstCents: Math.abs(1200 * Math.log2((lengthMm - fromNutMm) / (lengthMm - mm))),
    }
  })
  return errors.reduce((worst, one) => (one.worstCents > worst.worstCents ? one : worst))
}
