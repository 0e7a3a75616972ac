import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {length, number, table} from '../kit.ts'
import {fine} from './fine.ts'

/** List where each string would best end by itself, against what it would be off as drawn. */
export function saddleTable(plan: Plan): BlockContent[] {
  const {setbacks = []} = plan.bridge ?? {}
  const ruler = fine(plan)
  return [
    table({
      caption: 'Where each string would best end, saddle alone',
      columns: [
        {head: 'String'},
        {head: 'Set back', align: 'right'},
        {head: 'From the nut line', align: 'right'},
        {head: 'Furthest off then', align: 'right'},
        {head: 'As drawn', align: 'right'},
      ],
      rows: setbacks.map(({name, setbackMm, stationMm, worstCents, plainWorstCents}) => [
        name,
        length(setbackMm, ruler),
        length(stationMm, ruler),
        `${number(worstCents, 1)} cents`,
        `${number(plainWorstCents, 1)} cents`,
      ]),
    }),
  ]
}
