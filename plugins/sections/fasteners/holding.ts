import type {BlockContent} from 'mdast'
import type {Fastener} from '../../plan/shape/holes.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {screwSources} from '../../tables/screws.ts'
import {figures, force, note, number, source, table} from '../kit.ts'
import {screwName} from './screw-name.ts'

/** Fold away each row's diameters, both roots among them, and what a screw of it holds and is asked for. */
export function holding(rows: readonly Fastener[][], plan: Plan): BlockContent {
  return figures('Figures: what each screw holds', [holdingTable(rows, plan), ...sources()])
}

function holdingTable(rows: readonly Fastener[][], plan: Plan): BlockContent {
  const mm = (value: number) => `${number(value, 2)} mm`
  return table({
    caption: 'Diameters and holding power of one screw',
    columns: [
      {head: 'Screws'},
      {head: 'Shank', align: 'right'},
      {head: 'Root, tapered screw', align: 'right'},
      {head: 'Root, design tables', align: 'right'},
      {head: 'Pilot', align: 'right'},
      {head: 'Draws out at', align: 'right'},
      {head: 'Asked of it', align: 'right'},
    ],
    rows: rows.flatMap(([screw]) =>
      screw
        ? [
            [
              screwName(screw),
              mm(screw.shankMm),
              mm(screw.rootMm),
              screw.rootDesignMm === undefined ? 'not listed' : mm(screw.rootDesignMm),
              mm(screw.pilotMm),
              force(screw.withdrawalN, plan),
              screw.loadN === undefined ? 'open' : force(screw.loadN, plan),
            ],
          ]
        : [],
    ),
  })
}

function sources(): BlockContent[] {
  return [
    note(
      'A third of the holding power is the most to ask of a screw that stays under load: common practice, no source. Of a wood known by a loose name the lightest is taken.',
    ),
    source(
      `${screwSources.withdrawal}; pilots: ${screwSources.pilot}; shank: ${screwSources.shank}; root: ${screwSources.root}.`,
    ),
  ]
}
