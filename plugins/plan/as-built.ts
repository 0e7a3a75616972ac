import {effectsOf} from './as-built/effects-of.ts'
import {measures} from './as-built/measures.ts'
import {toleranceOf} from './as-built/tolerance-of.ts'
import type {PlanPart} from './part.ts'
import type {AsBuilt} from './shape/work.ts'

/** Off by no more than the last bits of two readings: a measure on the limit is within it. */
const slack = 1e-6

/**
 * Put what was measured beside what was drawn, in mm, degrees, N, cents and Hz: difference = measured − planned, how
 * far it may be off, and what the difference does in a maker's words. Absent where nothing was measured.
 */
export const asBuilt: PlanPart = (settled, plan) => {
  const found = measures(settled, plan)
  if (found.length === 0) return {}
  const lengthMm =
    found.find(({path}) => path === 'scale.length' || path === 'scale')?.measured ?? plan.scale?.lengthMm
  return {
    asBuilt: found.map((measure): AsBuilt => {
      const {path, measured, unit, planned} = measure
      const allowed = toleranceOf(measure, settled)
      if (planned === undefined) return {path, measured, unit, ...allowed, effects: []}
      const difference = measured - planned
      return {
        path,
        planned,
        measured,
        difference,
        unit,
        ...allowed,
        ...(allowed && {isOut: Math.abs(difference) > allowed.tolerance + slack}),
        effects: effectsOf(
          {path, planned, measured, unit, difference},
          {plan, referenceHz: settled.referenceHz, lengthMm},
        ),
      }
    }),
  }
}
