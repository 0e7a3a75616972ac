import type {Build} from '../build-file/build.ts'
import type {Context} from './part.ts'
import {parts} from './parts.ts'
import {settle} from './settle.ts'
import type {Plan} from './shape/plan.ts'

/**
 * Compute the whole plan of a build: lengths in mm, forces in N, masses in kg, angles in degrees, pitch in Hz and cents.
 * Pure: the same build, settings and pieces give the same plan. What cannot be computed yet is absent.
 */
export function planBuild(build: Build, context: Context): Plan {
  const {settled, assumptions} = settle(build, context.journal)
  const {title, status, play, handed} = settled.values
  const plan: Plan = {
    slug: build.slug,
    ...(title ? {title: title.value} : {}),
    ...(status ? {status: status.value} : {}),
    ...(play ? {play: play.value} : {}),
    units: settled.units,
    rulerMm: settled.rulerMm,
    handed: handed?.value ?? 'right',
    assumptions,
  }
  for (const part of parts) Object.assign(plan, part(settled, plan, context))
  return plan
}
