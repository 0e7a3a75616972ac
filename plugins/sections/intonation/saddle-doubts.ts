import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, inWords} from '../kit.ts'

const soft = new Set(['nylon', 'gut', 'fluorocarbon'])

/** Say what the setbacks hang on that is only a usual value: stiffness, cores, the height of the crowns. */
export function saddleDoubts({strings = [], action}: Plan, hasCrown: boolean): Inline[][] {
  const names = (which: (string: (typeof strings)[number]) => boolean) =>
    inWords(strings.filter(which).map(({name}) => name))
  const softNames = names(({stiffnessFrom = ''}) => soft.has(stiffnessFrom))
  const coredNames = names(({coreAssumed, stiffnessFrom}) => coreAssumed === true && stiffnessFrom !== 'file')
  return [
    ...(softNames
      ? [
          [
            `The stiffness of ${softNames} is only a usual one, 5 GPa, and such strings run from 3.4 to 8.3: let the saddle move until it is set by ear.`,
          ],
        ]
      : []),
    ...(coredNames
      ? [[`The core of ${coredNames} is assumed; a packet that tells it makes this surer.`]]
      : []),
    ...(!hasCrown && action
      ? [['The frets’ crowns are not given, so the bridge’s height is taken from the tops of the frets.']]
      : []),
  ]
}
