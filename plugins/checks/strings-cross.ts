import type {Check} from './check.ts'
import {headFindings} from './head-findings.ts'

/** Two strings that cross on the way to their posts. */
export const stringsCross: Check = {
  rule: 'strings-cross',
  find: (_, plan) =>
    headFindings(plan, 'cross', ([post, other]) => `${post} crosses ${other} on the way to its post`),
}
