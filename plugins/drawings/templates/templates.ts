import type {Plan} from '../../plan/shape/plan.ts'
import {boxTemplate} from './box-template.ts'
import {headTemplate} from './head-template.ts'
import {neckTemplate} from './neck-template.ts'
import type {Template} from './template.ts'

/** Draw every template that a build has, neck first. */
export function templates(plan: Plan): Template[] {
  return [neckTemplate(plan), headTemplate(plan), boxTemplate(plan)].filter((one) => one !== undefined)
}
