import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/shape/plan.ts'
import type {Check, Finding} from './rule.ts'

/** Tuners listed in another number than the strings, or `at` and `off` in unequal numbers. */
export const tunersUneven: Check = {
  rule: 'tuners-uneven',
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
}

/** Two tuners' holes too near each other. */
export const tunerHolesClose: Check = {
  rule: 'tuner-holes-close',
  find: (_, plan) =>
    headFindings(
      plan,
      'holes',
      ([post, other], gap, needs) =>
        `the post holes of ${other} and ${post} leave ${gap} of wood between them, where ${needs} keeps it whole`,
    ),
}

/** A tuner's hole too near the head's edge. */
export const tunerNearEdge: Check = {
  rule: 'tuner-near-edge',
  find: (_, plan) =>
    headFindings(
      plan,
      'edge',
      ([post], gap, needs) =>
        `the post hole of ${post} leaves ${gap} of wood to the head’s edge, where ${needs} keeps it from splitting`,
    ),
}

/** Two tuner buttons on one side that touch. */
export const buttonsTouch: Check = {
  rule: 'buttons-touch',
  find: (_, plan) =>
    headFindings(plan, 'buttons', ([post, other]) => `the tuner buttons of ${other} and ${post} would touch`),
}

/** A string that runs into another's post. */
export const stringFoulsPost: Check = {
  rule: 'string-fouls-post',
  find: (_, plan) =>
    headFindings(
      plan,
      'foul',
      ([post, other]) => `${post} runs into the post of ${other} on the way to its own`,
    ),
}

/** Two strings that cross on the way to their posts. */
export const stringsCross: Check = {
  rule: 'strings-cross',
  find: (_, plan) =>
    headFindings(plan, 'cross', ([post, other]) => `${post} crosses ${other} on the way to its post`),
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
