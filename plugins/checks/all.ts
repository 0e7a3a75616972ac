import type {Check} from './check.ts'

/** Every check, sorted by rule, a line each. */
export const allChecks: readonly Check[] = []
