import type {BlockContent} from 'mdast'
import {centsPlot} from '../../drawings/plots/cents-plot.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {figure, inWords, number} from '../kit.ts'

/** Plot the cents over the lines, as drawn and with each string set back; its table follows it. */
export function centsPlotted({intonation = [], scale, bridge}: Plan): BlockContent[] {
  const {lines = [], noticeableCents} = scale ?? {}
  if (lines.length < 2 || noticeableCents === undefined) return []
  const worst = (bridge?.setbacks ?? []).map(
    ({name, plainWorstCents, worstCents}) =>
      `${name} from ${number(plainWorstCents, 1)} to ${number(worstCents, 1)}`,
  )
  const says = `Setting the saddle back brings the furthest of the first twelve lines, in cents, ${inWords(worst)}.`
  const strings = intonation.map(({name, plainCents, compensatedCents}) => ({
    name,
    beforeCents: plainCents,
    afterCents: compensatedCents,
  }))
  return [
    figure(
      centsPlot(strings, {
        id: 'cents-plot',
        says,
        lines,
        noticeableCents,
        before: 'saddle as drawn',
        after: 'saddle set back',
      }),
      {
        alt: says,
        caption: [
          'Cents off at each line, each at its place along the neck; within the band ears notice nothing.',
        ],
      },
    ),
  ]
}
