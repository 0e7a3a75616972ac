import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {fractions, type Inline, length, number, strong} from '../kit.ts'

/** Say what is to be marked, what the ruler does to it at worst, and whether ears would notice. */
export function markingInWords({scale, ...plan}: Plan): Inline[][] {
  const {
    lines = [],
    lengthMm,
    fretted,
    worstMarkErrorCents,
    worstMarkLabel,
    noticeableCents,
    rulerNeeded,
  } = scale ?? {}
  if (lengthMm === undefined || worstMarkErrorCents === undefined || noticeableCents === undefined) return []
  const things = fretted
    ? lines.length === 1
      ? 'fret slot'
      : 'fret slots'
    : lines.length === 1
      ? 'marker line'
      : 'marker lines'
  const ruler = fractions(
    writeLength(plan.rulerMm, {...plan, rulerMm: plan.units === 'in' ? 25.4 / 64 : 0.05}),
  )
  const isFine = worstMarkErrorCents <= noticeableCents
  const finer: Inline[] = rulerNeeded
    ? ['mark to ', strong(...fractions(rulerNeeded.text)), ', which keeps every line within that.']
    : ['no ruler keeps every line within that: mark with dividers or a printed template.']
  return [
    [
      strong(`${lines.length} ${things}`),
      ' on ',
      length(lengthMm, plan),
      ', all measured from the nut line with one rule. Marked to ',
      ...ruler,
      `, line ${worstMarkLabel} is the furthest off, ${number(worstMarkErrorCents, 1)} cents; ears notice about ${number(noticeableCents, 0)}. `,
      ...(isFine ? ['That is fine enough.'] : ['Finer would be heard: ', ...finer]),
    ],
  ]
}
