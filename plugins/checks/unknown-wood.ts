import type {Check} from './check.ts'

/** Find a wood that neither the table nor the build says enough of to plan with. */
export const unknownWood: Check = {
  rule: 'unknown-wood',
  find: (_, plan) =>
    (plan.unknownWoods ?? []).map(({path, wood, nearest}) => ({
      at: path,
      message: `${wood} is not in the wood table${nearest ? `; was ${nearest} meant?` : ''}${nearest ? ' Else' : ';'} give its own density and stiffness, or a loose name: hardwood, softwood, unknown`,
      ...(nearest ? {expected: [nearest]} : {expected: ['unknown']}),
    })),
}
