import type {BlockContent} from 'mdast'
import {pullPlot} from '../../drawings/plots/pull-plot.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {figure, forceAlone} from '../kit.ts'

/** Plot each string's pull against its limits; its table is that of the strings to buy. */
export function pullsPlotted(plan: Plan): BlockContent[] {
  const rows = (plan.strings ?? []).flatMap(({name, gauge, tensionN, pullLimits: limits, pull}) =>
    tensionN === undefined || !limits
      ? []
      : [
          {
            label: gauge ? `${name} ${gauge}` : name,
            tensionN,
            says: forceAlone(tensionN, plan),
            limits,
            pull,
          },
        ],
  )
  if (rows.length === 0) return []
  const says = `${rows.map(({label, says: pulls, pull}) => `${label} pulls ${pulls}, ${pull}`).join('; ')}.`
  return [
    figure(pullPlot(rows, {id: 'pull-plot', says}), {
      alt: says,
      caption: ['Pull of each string; the band runs from slack to stiff (common practice, no source).'],
    }),
  ]
}
