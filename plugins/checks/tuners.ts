import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/plan.ts'
import {type Finding, rule} from './rule.ts'

export const tunerRules = {
  'tuners-uneven': rule({
    severity: 'error',
    what: 'Tuners and strings in unequal numbers.',
    why: 'Each place under at and off belongs to one string, in their order.',
    mend: 'List one place under at and one under off for each string.',
    find: ({values: {tuners, strings}}) => {
      const [ats, offs] = [tuners?.at?.length, tuners?.off?.length]
      const count = strings?.length
      const uneven = (key: 'at' | 'off', listed: number | undefined): Finding[] =>
        count === undefined || listed === undefined || listed === count
          ? []
          : [
              {
                at: `tuners.${key}`,
                message: `${listed} places under tuners ${key} for ${count} ${count === 1 ? 'string' : 'strings'}; list one for each string, in the strings’ order`,
                cause: 'strings',
              },
            ]
      const found = [...uneven('at', ats), ...uneven('off', offs)]
      if (found.length > 0 || ats === undefined || offs === undefined || ats === offs) return found
      return [
        {
          at: 'tuners.off',
          message: `${offs} places under tuners off and ${ats} under at; each tuner needs one of both`,
          cause: 'tuners.at',
        },
      ]
    },
  }),
  'tuner-holes-close': rule({
    severity: 'warning',
    what: 'Tuner holes with less than 1/4 in of wood between them.',
    why: 'The wood between them splits when they are drilled or when the head is knocked.',
    mend: 'Move one of the posts.',
    find: (_, plan) =>
      headFindings(
        plan,
        'holes',
        ([post, other], gap, needs) =>
          `the post holes of ${other} and ${post} leave ${gap} of wood between them, where ${needs} keeps it whole`,
      ),
  }),
  'tuner-near-edge': rule({
    severity: 'warning',
    what: 'A tuner hole with less than 1/8 in of wood to the edge of the head.',
    why: 'The edge breaks out.',
    mend: 'Move the post inwards.',
    find: (_, plan) =>
      headFindings(
        plan,
        'edge',
        ([post], gap, needs) =>
          `the post hole of ${post} leaves ${gap} of wood to the head’s edge, where ${needs} keeps it from splitting`,
      ),
  }),
  'buttons-touch': rule({
    severity: 'fault',
    what: 'Two tuner buttons on one side of the head that touch.',
    why: 'Neither could be turned.',
    mend: 'Move one post along the head by at least a button.',
    find: (_, plan) =>
      headFindings(
        plan,
        'buttons',
        ([post, other]) => `the tuner buttons of ${other} and ${post} would touch`,
      ),
  }),
  'string-fouls-post': rule({
    severity: 'fault',
    what: 'A string that runs into another string’s post.',
    why: 'It would rub there, and neither could be tuned alone.',
    mend: 'Move one of the posts.',
    find: (_, plan) =>
      headFindings(
        plan,
        'foul',
        ([post, other]) => `${post} runs into the post of ${other} on the way to its own`,
      ),
  }),
  'strings-cross': rule({
    severity: 'fault',
    what: 'Two strings that cross behind the nut.',
    why: 'They rub on each other, and tuning one moves the other.',
    mend: 'Swap their posts, or move one of them.',
    find: (_, plan) =>
      headFindings(plan, 'cross', ([post, other]) => `${post} crosses ${other} on the way to its post`),
  }),
}

type Conflict = NonNullable<NonNullable<NonNullable<Plan['neck']>['head']>['conflicts']>[number]

/**
 * Word what is too close on the head, for one kind of conflict: `says` is told the names of the strings whose posts
 * they are, and what is between them, and what there should be.
 */
function headFindings(
  {neck, strings, ...plan}: Plan,
  kind: Conflict['kind'],
  says: (names: readonly [post: string, other: string], gap: string, needs: string) => string,
): Finding[] {
  const name = (i: number | undefined) => (i === undefined ? '' : (strings?.[i]?.name ?? `string ${i + 1}`))
  return (neck?.head?.conflicts ?? [])
    .filter((conflict) => conflict.kind === kind)
    .map(({post, other, gapMm, needsMm, wouldDo}) => {
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      const found = says(
        [name(post), name(other)],
        writeLength(Math.max(gapMm, 0), plan, 'down'),
        writeLength(needsMm, plan, 'up'),
      )
      return {
        at: wouldDo?.path ?? `tuners.at.${post + 1}`,
        message: text ? `${found}; ${wouldDo.path} ${text} would do` : found,
        ...(text && {expected: [text]}),
      }
    })
}
