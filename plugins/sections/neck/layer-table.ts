import type {RootContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, lengthAlone, note, table} from '../kit.ts'

/** List what the neck is glued up of, from the playing face down, and when. */
export function layerTable(plan: Plan): RootContent[] {
  const {layup, scarf} = plan.neck ?? {}
  if (!layup) return []
  const isGlued = layup.layers.length > 1
  return [
    table({
      caption: isGlued ? 'The layers, from the playing face down' : 'The stick',
      columns: [
        {head: 'Layer'},
        {head: 'Wood'},
        {head: 'Thick', align: 'right'},
        {head: 'From, to'},
        ...(isGlued && scarf ? [{head: 'Glued'}] : []),
      ],
      rows: layup.layers.map(({of, wood, thicknessMm, fromMm, toMm, beforeScarf, strips}) => [
        layerName(of),
        (wood ?? 'not given yet') + (strips ? `, ${strips} strips` : ''),
        length(thicknessMm, plan),
        along(plan, fromMm, toMm),
        ...(isGlued && scarf ? [beforeScarf ? 'before the scarf' : 'after the scarf'] : []),
      ]),
    }),
    ...planed(plan),
  ]
}

function layerName(of: string): string {
  if (of === 'neck') return 'stick'
  if (of === 'neck.cap') return 'cap'
  return of === 'fingerboard' ? of : `layer ${of.split('.').at(-1)}`
}

function along(plan: Plan, fromMm: number | undefined, toMm: number | undefined): Inline[] {
  if (fromMm === undefined && toMm === undefined) return ['whole length']
  return [
    ...(fromMm === undefined ? ['head end'] : [lengthAlone(fromMm, plan)]),
    ' to ',
    ...(toMm === undefined ? ['tail end'] : [lengthAlone(toMm, plan)]),
  ]
}

function planed(plan: Plan): RootContent[] {
  const {planedMm = 0, stickMm} = plan.neck?.layup ?? {}
  if (planedMm <= 1e-6 || stickMm === undefined) return []
  return [
    note(
      'Glued up they are ',
      lengthAlone(planedMm, plan),
      ' over: plane that off the back, to ',
      lengthAlone(stickMm, plan),
      '.',
    ),
  ]
}
