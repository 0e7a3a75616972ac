import type {Nut} from '../plan/action/nut.ts'
import type {Plan} from '../plan/plan.ts'
import {fineBoth} from '../words/lengths.ts'
import type {Inline} from './kit.ts'
import {length, lengthAlone, measure} from './measures.ts'

/** Say how high the nut stands and what makes it so, and what it leaves of the neck under it. */
export function nutInWords(plan: Plan): Inline[][] {
  const {nut} = plan
  const stands =
    nut?.kind === 'zero-fret' ? zeroFret(nut, plan) : nut?.diameterMm === undefined ? [] : rod(nut, plan)
  return [...stands, ...underNut(plan)]
}

function rod({kind, diameterMm = 0, grooveMm, isGrooveProposed, crownMm}: Nut, plan: Plan): Inline[][] {
  if (grooveMm === undefined) return []
  const [thick, deep] = [lengthAlone(diameterMm, plan), lengthAlone(grooveMm, plan)]
  const standsMm = diameterMm - grooveMm
  const over: Inline[] =
    crownMm > 0
      ? [' above the fingerboard, ', lengthAlone(standsMm - crownMm, plan), ' above the frets’ crowns']
      : [' above the playing face']
  return [
    isGrooveProposed
      ? [
          'The nut’s groove is not given. Proposed: ',
          length(grooveMm, plan),
          ` deep, so that a ${kind} of `,
          thick,
          ' stands ',
          lengthAlone(standsMm, plan),
          ...over,
          ', which is where the strings are drawn.',
        ]
      : [
          `The nut’s ${kind}, `,
          thick,
          ' thick in a groove ',
          deep,
          ' deep, stands ',
          length(standsMm, plan),
          ...over,
          '.',
        ],
  ]
}

function zeroFret({comesToMm, crownMm}: Nut, {units, scale}: Plan): Inline[][] {
  const crown: Inline[] =
    comesToMm === undefined ? [] : [', ', measure(...fineBoth(comesToMm, {units}, 3)), ' high']
  const stands: Inline[] =
    scale?.fretted || crownMm > 0
      ? ['. An open string sounds like a stopped one']
      : ['. Its crown is the strings’ height at the nut']
  return [
    [
      'The nut is a zero fret: a piece of fret wire in a slot on the nut line',
      ...crown,
      ...stands,
      '. It does not space the strings: behind it they run through a guide, its slots lower than that crown.',
    ],
  ]
}

function underNut(plan: Plan): Inline[][] {
  const {nutSeat} = plan.neck ?? {}
  if (!nutSeat) return []
  return [
    [
      'The nut’s groove, ',
      lengthAlone(nutSeat.grooveMm, plan),
      ' deep, leaves ',
      lengthAlone(nutSeat.leftMm, plan, 'down'),
      ' of wood under it.',
    ],
  ]
}
