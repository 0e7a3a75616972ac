import type {PlanPart} from './part.ts'

/** The concerns of the plan, each after those that it reads. */
export const parts: readonly PlanPart[] = []
