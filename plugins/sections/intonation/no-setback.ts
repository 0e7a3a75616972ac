import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, length, strong} from '../kit.ts'

/** Say where the bridge goes on a fretless neck, and why it is not set back. */
export function noSetback(plan: Plan): Inline[][] {
  const bridgeMm = plan.bridge?.stationMm
  if (bridgeMm === undefined) return []
  return [
    [
      strong('The bridge goes on its line'),
      ', ',
      length(bridgeMm, plan),
      ' from the nut line, with no setback. ',
      'A setback makes up for the stretch of a string that is pressed to a fret. Without frets the slide or the finger ',
      'stops the string wherever the note is, so there is nothing to make up for: the lines only show where to look.',
    ],
  ]
}
