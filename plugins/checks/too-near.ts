import type {ConflictKind} from '../plan/conflicts.ts'
import type {Plan} from '../plan/plan.ts'

/** List what the plan has that is too near something, of one kind, each at the value to change. */
export const tooNear = ({conflicts = []}: Plan, kind: ConflictKind) =>
  conflicts
    .filter((conflict) => conflict.kind === kind)
    .map((conflict) => ({at: conflict.wouldDo?.path ?? conflict.of, cause: conflict.to, conflict}))
