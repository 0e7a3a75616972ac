import {nearest} from '../build-file/nearest.ts'
import type {Check} from './check.ts'

/** Find a build that was copied from one that the journal does not have. */
export const basedOnMissing: Check = {
  rule: 'based-on-missing',
  find: ({values, surroundings}) => {
    const named = values['based-on']?.value
    if (named === undefined || !surroundings || surroundings.builds.some(({slug}) => slug === named))
      return []
    const close = nearest(
      named,
      surroundings.builds.map(({slug}) => slug),
    )
    return [
      {
        at: 'based-on',
        message: `there is no build ${named} in this journal${close ? `; was ${close} meant?` : ''}`,
        ...(close ? {expected: [close]} : {}),
      },
    ]
  },
}
