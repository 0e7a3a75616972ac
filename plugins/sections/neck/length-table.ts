import type {RootContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {angle, type Inline, length, lengthAlone, paragraph, table} from '../kit.ts'

/** Say how long a stick to start from and why, and how its length is shared. */
export function lengthTable(plan: Plan): RootContent[] {
  const {budget, head} = plan.neck ?? {}
  if (!budget) return []
  const {headMm, scaleMm, tailMm, lengthMm, spareMm = 0} = budget
  const isToBox = plan.scale?.lengthMm !== undefined && scaleMm < plan.scale.lengthMm
  const rows: [string, number][] = [
    ['Head', headMm],
    [isToBox ? 'Nut to box' : 'Scale', scaleMm],
    [`Past the bridge: what ${budget.needs}`, tailMm],
    [spareMm < 0 ? 'Short by' : 'Left over', Math.abs(spareMm)],
    ['The finished stick', lengthMm],
  ]
  return [
    ...(budget.blankMm === undefined || !head
      ? []
      : [paragraph(...startFrom(plan, budget.blankMm, head.joint))]),
    table({
      caption: 'How the stick’s length is shared',
      columns: [{head: 'Part'}, {head: 'Length', align: 'right'}],
      rows: rows.filter(([, mm]) => mm > 1e-6).map(([part, mm]) => [part, length(mm, plan)]),
    }),
  ]
}

function startFrom(plan: Plan, blankMm: number, joint: string): Inline[] {
  const {budget, scarf} = plan.neck!
  const start: Inline[] = ['Start from a stick ', length(blankMm, plan, 'up'), ' long']
  const square: Inline[] = [lengthAlone(budget!.squareMm ?? 0, plan), ' at each end to square']
  if (joint === 'scarf' && scarf)
    return [
      ...start,
      ': the finished length and ',
      ...square,
      ', ',
      lengthAlone(budget!.blankKerfMm ?? 0, plan, 'up'),
      ` for the saw cut at ${angle(scarf.angleDeg)}, less `,
      lengthAlone(budget!.blankGainMm ?? 0, plan, 'down'),
      ' that the bend gives back, since the piece sawn off is turned over and glued under the neck’s end.',
    ]
  if (budget!.blankThicknessMm === undefined) return [...start, ': the finished length and ', ...square, '.']
  return [
    ...start,
    ' and ',
    length(budget!.blankThicknessMm, plan, 'up'),
    ' thick, so that the head can be sawn out of it as it leans: the length takes in ',
    ...square,
    '.',
  ]
}
