import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, lengthAlone} from '../kit.ts'

/** Say how thick the head is and may be for its tuners, how their holes are drilled, and what holds the strings down. */
export function headInWords(plan: Plan, {values}: Build): Inline[][] {
  const {head} = plan.neck ?? {}
  if (!head) return []
  const {thicknessMm, leastMm, mostMm, retainer} = head
  const fits: Inline[] =
    leastMm === undefined || mostMm === undefined
      ? ['.']
      : [
          '; tuners with a post through the head fit one of ',
          lengthAlone(leastMm, plan),
          ' to ',
          lengthAlone(mostMm, plan),
          '.',
        ]
  const hole = values.tuners?.['post-hole']
  return [
    ['The head is ', length(thicknessMm, plan), ' thick', ...fits],
    ...(hole
      ? [
          [
            'Drill each post hole in two steps: ',
            lengthAlone(head.pilotMm ?? 0, plan),
            ' right through from the face, square to it, then ',
            lengthAlone(hole.mm, plan),
            ' from both faces to meet in the middle, so that neither face breaks out.',
          ],
        ]
      : []),
    ...(retainer
      ? [
          [
            `A ${retainer === 'bar' ? 'bar across the strings' : 'screw'} behind the nut holds the strings down in their slots.`,
          ],
        ]
      : []),
  ]
}
