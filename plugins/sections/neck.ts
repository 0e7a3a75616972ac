import type {RootContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {tailNeeds} from '../words/neck.ts'
import {angle} from '../words/quantities.ts'
import {fold, holds, type Inline, note, paragraph} from './kit.ts'
import {table, under} from './kit-table.ts'
import {fromNut, length, lengthAlone, mass} from './measures.ts'
import {bowInWords, neckFigures} from './neck-bow.ts'
import {fretting} from './neck-fretting.ts'
import {movementInWords} from './neck-movement.ts'
import {nutInWords} from './neck-nut.ts'
import {boardRadius} from './neck-radius.ts'
import type {Section} from './section.ts'

/** The stick to start from, what it is glued up of, how it is shaped and fretted, and what the strings do to it. */
export const neck: Section = {
  name: 'neck',
  title: 'Neck',
  needs: ({plan}) => (plan.neck?.layup ? [] : ['scale.length', 'neck']),
  content: ({plan}) => {
    const [stick, ...stickMore] = startFrom(plan)
    const [bow, ...bowMore] = bowInWords(plan)
    const [lengths, layers] = [lengthTable(plan), layerTable(plan)]
    const [shape, moves, frets] = [shapeInWords(plan), movementInWords(plan), fretting(plan)]
    const name = holds(
      ['length', lengths],
      ['layers', layers],
      ['shape and weight', shape],
      ['bow', bowMore],
      ['fretting', frets],
      ['figures', bow ?? []],
    )
    const all = [...bowMore, ...moves].map((said) => paragraph(...said))
    return [
      ...(stick || bow ? [paragraph(...(stick ? [...stick, ' '] : []), ...(bow ?? []))] : []),
      ...fold(name, [
        ...stickMore.map((said) => paragraph(...said)),
        ...lengths,
        ...layers,
        ...shape.map((said) => paragraph(...said)),
        ...all,
        ...boardRadius(plan),
        ...frets,
        ...neckFigures(plan),
      ]),
    ]
  },
}

/** Say how its length is shared. */
function lengthTable(plan: Plan): RootContent[] {
  const {budget} = plan.neck ?? {}
  if (!budget) return []
  const {headMm, scaleMm, tailMm, lengthMm, spareMm = 0} = budget
  const isToBox = plan.scale?.lengthMm !== undefined && scaleMm < plan.scale.lengthMm
  const rows: [string, number][] = [
    ['Head', headMm],
    [isToBox ? 'Nut to box' : 'Scale', scaleMm],
    [`Past the bridge: what ${tailNeeds[budget.needs]}`, tailMm],
    [spareMm < 0 ? 'Short by' : 'Left over', Math.abs(spareMm)],
    ['The finished stick', lengthMm],
  ]
  return [
    table({
      caption: 'How the stick’s length is shared',
      columns: [{head: 'Part'}, {head: 'Length', align: 'right'}],
      rows: rows.filter(([, mm]) => mm > 1e-6).map(([part, mm]) => [part, length(mm, plan)]),
    }),
  ]
}

/** Say how long a stick to start from, and how thick where the head is sawn out of it; then why. */
function startFrom(plan: Plan): Inline[][] {
  const {budget, scarf, head} = plan.neck ?? {}
  if (budget?.blankMm === undefined || !head) return []
  const start: Inline[] = ['Start from a stick ', length(budget.blankMm, plan, 'up'), ' long']
  const square: Inline[] = [lengthAlone(budget.squareMm ?? 0, plan), ' at each end to square']
  if (head.joint === 'scarf' && scarf)
    return [
      [...start, '.'],
      [
        'That is the finished length and ',
        ...square,
        ', ',
        lengthAlone(budget.blankKerfMm ?? 0, plan, 'up'),
        ` for the saw cut at ${angle(scarf.angleDeg)}, less `,
        lengthAlone(budget.blankGainMm ?? 0, plan, 'down'),
        ' that the bend gives back, since the piece sawn off is turned over and glued under the neck’s end.',
      ],
    ]
  const why: Inline[] = ['That is the finished length and ', ...square, '.']
  if (budget.blankThicknessMm === undefined) return [[...start, '.'], why]
  return [
    [...start, ' and ', lengthAlone(budget.blankThicknessMm, plan, 'up'), ' thick.'],
    ['So thick, the head can be sawn out of it as it leans: the length takes in ', ...square, '.'],
  ]
}

/** List what the neck is glued up of, from the playing face down, and when. */
function layerTable(plan: Plan): RootContent[] {
  const {layup, scarf} = plan.neck ?? {}
  if (!layup) return []
  const isGlued = layup.layers.length > 1
  return [
    table({
      caption: isGlued ? 'The layers, from the playing face down' : 'The stick',
      columns: [
        {head: ['Layer', under('Wood')]},
        {head: 'Thick', align: 'right'},
        {head: 'From, to'},
        ...(isGlued && scarf ? [{head: 'Glued'}] : []),
      ],
      rows: layup.layers.map(({of, wood, thicknessMm, fromMm, toMm, beforeScarf, strips}) => [
        [layerName(of), under((wood ?? 'not given yet') + (strips ? `, ${strips} strips` : ''))],
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
    ...(fromMm === undefined ? ['head end'] : fromNut(fromMm, plan)),
    ' to ',
    ...(toMm === undefined ? ['tail end'] : fromNut(toMm, plan)),
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

/** Say how the neck is shaped, how the nut stands on it, and what it weighs. */
function shapeInWords(plan: Plan): Inline[][] {
  return [...rounded(plan), ...nutInWords(plan), ...weighs(plan)]
}

function rounded(plan: Plan): Inline[][] {
  const {roundOver} = plan.neck ?? {}
  if (!roundOver) return []
  const {radiusMm, fromMm, toMm, runInMm, flatMm} = roundOver
  const flat: Inline[] =
    flatMm > 0
      ? ['; ', lengthAlone(flatMm, plan, 'down'), ' of flat side is left for the cutter’s bearing']
      : []
  return [
    [
      'Round the back edges over with a ',
      length(radiusMm, plan),
      ' radius, from ',
      ...place(fromMm, plan),
      ' to ',
      ...place(toMm, plan),
      '. The cutter needs ',
      lengthAlone(runInMm, plan, 'up'),
      ' at each end to come to full depth',
      ...flat,
      '.',
    ],
  ]
}

function place(stationMm: number, plan: Plan): Inline[] {
  const words = stationMm < 0 ? ' behind the nut' : ' from the nut'
  return [lengthAlone(Math.abs(stationMm), plan), words]
}

function weighs(plan: Plan): Inline[][] {
  const {massKg, balanceMm} = plan.neck ?? {}
  if (massKg === undefined || balanceMm === undefined) return []
  const side = balanceMm >= 0 ? ' towards the bridge from the nut.' : ' behind the nut.'
  return [
    [
      'With its head it weighs about ',
      mass(massKg, plan),
      ' bare, and balances ',
      length(Math.abs(balanceMm), plan),
      side,
    ],
  ]
}
