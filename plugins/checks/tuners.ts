import {tooNear as says} from '../words/findings/conflicts.ts'
import {tunersUneven} from '../words/findings/tuners.ts'
import {rule, tooNear} from './rule.ts'

export const tunerRules = {
  'tuners-uneven': rule({
    severity: 'error',
    what: 'Tuners and strings in unequal numbers.',
    why: 'Each place under at and off belongs to one string, in their order.',
    mend: 'List one place under at and one under off for each string.',
    passes: 'strings: 3\ntuners: {at: [-2, -3, -4], off: [-1/2, 1/2, -1/2]}',
    fails: 'strings: 3\ntuners: {at: [-2, -3], off: [-1/2, 1/2, -1/2]}',
    find: ({values: {tuners, strings}, places}) => {
      // What cannot be read is told by itself, and was listed.
      const listed = (key: 'at' | 'off') => {
        const read = tuners?.[key]?.length
        return read !== undefined && places[`tuners.${key}.${read + 1}`] ? undefined : read
      }
      const [ats, offs] = [listed('at'), listed('off')]
      const count = strings?.length
      const uneven = (key: 'at' | 'off', given: number | undefined) =>
        count === undefined || given === undefined || given === count
          ? []
          : [{at: `tuners.${key}`, cause: 'strings', key, listed: given, strings: count}]
      const found = [...uneven('at', ats), ...uneven('off', offs)]
      if (found.length > 0 || ats === undefined || offs === undefined || ats === offs) return found
      return [{at: 'tuners.off', cause: 'tuners.at', key: 'off', listed: offs, ats}]
    },
    says: tunersUneven,
  }),
  'tuner-holes-close': rule({
    severity: 'warning',
    what: 'Tuner holes with less than 1/4 in of wood between them.',
    why: 'The wood between them splits when they are drilled or when the head is knocked.',
    mend: 'Move one of the posts.',
    passes: 'tuners: {post-hole: 1/4, button: 3/4, at: [-3, -1 1/2, -3], off: [-1/4, 0, 1/4]}',
    fails: 'tuners: {post-hole: 1/4, button: 3/4, at: [-3, -1 1/2, -3], off: [-1/8, 0, 1/8]}',
    find: (_, plan) => tooNear(plan, 'post-post'),
    says,
  }),
  'tuner-near-edge': rule({
    severity: 'warning',
    what: 'A tuner hole with less than 1/8 in of wood to the edge of the head.',
    why: 'The edge breaks out.',
    mend: 'Move the post inwards.',
    passes: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16]}',
    fails: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -4 1/2, -3 1/4], off: [-11/16, -7/16, 7/16]}',
    find: (_, plan) => tooNear(plan, 'post-edge'),
    says,
  }),
  'buttons-touch': rule({
    severity: 'fault',
    what: 'Two tuner buttons on one side of the head that touch.',
    why: 'Neither could be turned.',
    mend: 'Move one post along the head by at least a button.',
    passes: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -3, -3 1/4], off: [-7/16, -7/16, 7/16]}',
    fails: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -2 1/2, -3 1/4], off: [-7/16, -7/16, 7/16]}',
    find: (_, plan) => tooNear(plan, 'button-button'),
    says,
  }),
  'string-fouls-post': rule({
    severity: 'fault',
    what: 'A string that runs into another string’s post.',
    why: 'It would rub there, and neither could be tuned alone.',
    mend: 'Move one of the posts.',
    passes: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16]}',
    fails: 'tuners: {post-hole: 1/4, button: 3/4, at: [-2, -4 1/2, -3 1/4], off: [-1/8, -7/16, 7/16]}',
    find: (_, plan) => tooNear(plan, 'string-post'),
    says,
  }),
  'strings-cross': rule({
    severity: 'fault',
    what: 'Two strings that cross behind the nut.',
    why: 'They rub on each other, and tuning one moves the other.',
    mend: 'Swap their posts, or move one of them.',
    passes:
      'spacing: {nut: 1}\ntuners: {post-hole: 1/4, button: 3/4, at: [-2, -4 1/2, -3 1/4], off: [-7/16, -9/16, 7/16]}',
    fails:
      'spacing: {nut: 1}\ntuners: {post-hole: 1/4, button: 3/4, at: [-4 1/2, -2, -3 1/4], off: [-7/16, -9/16, 7/16]}',
    find: (_, plan) => tooNear(plan, 'string-string'),
    says,
  }),
}
