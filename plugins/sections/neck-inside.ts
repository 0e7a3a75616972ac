import type {Plan} from '../plan/plan.ts'
import {insideBecause} from '../words/neck.ts'
import {number} from '../words/quantities.ts'
import type {Inline} from './kit.ts'
import {force, length, lengthAlone} from './measures.ts'

/** Say what is left of a neck that runs through the box inside it, what that carries, and the least that would. */
export function insideInWords(plan: Plan): Inline[][] {
  const {inside} = plan.neck ?? {}
  if (!inside) return []
  const {thicknessMm, surfaceMm, leastMm, because, wallsN, stressMpa, mayCarryMpa} = inside
  const least: Inline[] =
    leastMm === undefined || !because
      ? []
      : ['; it takes ', lengthAlone(leastMm, plan, 'up'), ` there ${insideBecause[because]}`]
  const carries: Inline[] =
    stressMpa === undefined
      ? []
      : [
          ` Its wood is stressed by ${number(stressMpa, 1)} MPa there`,
          ...(mayCarryMpa === undefined
            ? []
            : [
                `, where a third of what breaks it, ${number(mayCarryMpa, 0)} MPa, may stay on it for years (after ASTM D245, from memory)`,
              ]),
          '.',
        ]
  const walls: Inline[] = wallsN
    ? [
        ' The bridge’s push reaches it through the walls: ',
        ...wallWords(wallsN[0] ?? 0, 'head', plan),
        ' and ',
        ...wallWords(wallsN[1] ?? 0, 'tail', plan),
        '.',
      ]
    : []
  return [
    [
      'Inside the box it is cut down to ',
      length(surfaceMm, plan),
      ' under the playing face, which leaves ',
      length(thicknessMm, plan, 'down'),
      ' of it',
      ...least,
      '.',
      ...carries,
      ...walls,
    ],
  ]
}

const wallWords = (newton: number, end: string, plan: Plan): Inline[] => [
  force(Math.abs(newton), plan),
  ` ${newton < 0 ? 'up' : 'down'} at the ${end} end`,
]
