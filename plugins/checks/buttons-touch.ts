import type {Check} from './check.ts'
import {headFindings} from './head-findings.ts'

/** Two tuner buttons on one side that touch. */
export const buttonsTouch: Check = {
  rule: 'buttons-touch',
  find: (_, plan) =>
    headFindings(plan, 'buttons', ([post, other]) => `the tuner buttons of ${other} and ${post} would touch`),
}
