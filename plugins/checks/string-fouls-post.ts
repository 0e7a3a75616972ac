import type {Check} from './check.ts'
import {headFindings} from './head-findings.ts'

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
