import type {Check} from './check.ts'
import {headFindings} from './head-findings.ts'

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
