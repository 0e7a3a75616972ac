import type {Check} from './check.ts'
import {headFindings} from './head-findings.ts'

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
