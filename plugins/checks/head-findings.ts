import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/shape/plan.ts'
import type {Finding} from './check.ts'

type Conflict = NonNullable<NonNullable<NonNullable<Plan['neck']>['head']>['conflicts']>[number]

/**
 * Word what is too close on the head, for one kind of conflict: `says` is told the names of the strings whose posts
 * they are, and what is between them, and what there should be.
 */
export function headFindings(
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
