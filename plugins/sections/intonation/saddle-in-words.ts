import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, lengthAlone, number, strong} from '../kit.ts'
import {fine} from './fine.ts'

/** Say in one sentence where the saddle goes against the scale length as drawn, and what a straight one leaves over. */
export function saddleInWords(plan: Plan): Inline[][] {
  const {bridge, scale, strings = []} = plan
  const [alone] = bridge?.setbacks ?? []
  if (!bridge || !alone) return []
  const ruler = fine(plan)
  const {slantedSaddle: slanted, squareSaddle: square} = bridge
  const where: Inline[] = slanted
    ? [
        'Set a straight saddle back ',
        length(slanted.firstMm, ruler),
        ` at ${strings[0]?.name} and `,
        length(slanted.lastMm, ruler),
        ` at ${strings.at(-1)?.name}`,
      ]
    : ['Set the saddle back ', length(alone.setbackMm, ruler)]
  const worstCents = (slanted ?? alone).worstCents
  const noticeable = scale?.noticeableCents ?? 0
  const drawn = number(bridge.drawnWorstCents ?? alone.plainWorstCents, 1)
  return [
    [
      strong(...where),
      ' behind the bridge line, which lies ',
      length(bridge.stationMm, plan),
      ` from the nut line. It leaves no fret of the first twelve more than ${number(worstCents, 1)} cents off; as drawn, with no setback, the worst would be ${drawn}.`,
    ],
    ...(square
      ? [
          [
            'Square to the neck, ',
            lengthAlone(square.firstMm, ruler),
            ` back leaves at most ${number(square.worstCents, 1)} cents; ears notice about ${number(noticeable, 0)}.`,
          ],
        ]
      : []),
    ...(worstCents > noticeable
      ? [
          [
            'Moving the nut towards the frets as well leaves less, as the figures below show; so does a lower nut.',
          ],
        ]
      : []),
  ]
}
