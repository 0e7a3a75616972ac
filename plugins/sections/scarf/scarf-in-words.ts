import type {Plan} from '../../plan/shape/plan.ts'
import {angle, type Inline, length, lengthAlone, number} from '../kit.ts'

/** Say how the head is sawn and glued, for each way of making it. */
export function scarfInWords(plan: Plan): Inline[][] {
  const {scarf, head} = plan.neck ?? {}
  if (!head) return []
  if (head.joint === 'straight')
    return [['The head runs on straight behind the nut: nothing is sawn at an angle.']]
  const ledge: Inline[] =
    head.ledgeMm > 0
      ? [
          'It starts ',
          lengthAlone(head.ledgeMm, plan),
          ' behind the nut line; until there the face stays flat.',
        ]
      : ['It starts at the nut line.']
  if (!scarf)
    return [
      [
        `Saw the head out of the solid, leaning back ${angle(head.angleDeg)}. The grain runs out of it: glue a plate on its face, or handle it gently. `,
        ...ledge,
      ],
    ]
  const isPart = plan.neck!.layup?.layers.some(({beforeScarf}) => !beforeScarf)
  return [
    [
      `Saw the scarf at ${angle(scarf.angleDeg)} to the stick, through `,
      length(scarf.thicknessMm, plan),
      isPart ? ': what is glued on after the scarf is not there yet. ' : '. ',
      `A mitre gauge that counts from square would have to read ${angle(scarf.fromSquareDeg)}, and few do: saw it in a jig that holds the stick at the slope, or by hand to a line on both edges. The sawn face is `,
      length(scarf.faceMm, plan),
      ' long and runs ',
      lengthAlone(scarf.runMm, plan),
      ` along the stick, 1 in ${number(scarf.slope, 1)}. `,
      ...ledge,
    ],
    [
      'Turn the piece that was sawn off over and lay it under the neck’s end, so that both sawn slopes lie in one plane; plane them together. Then glue its slope to the back of the neck: the neck’s own slope is now the first ',
      lengthAlone(scarf.faceMm, plan),
      ' of the head’s face.',
    ],
  ]
}
