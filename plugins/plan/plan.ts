import type {Build} from '../build-file/schema/build.ts'
import {type Instrument, planInstrument} from './instrument.ts'
import type {Context} from './kit/context.ts'
import type {Settled} from './kit/settled.ts'
import {type Making, planMaking} from './making.ts'
import {settle} from './settle.ts'

/** All that is computed from a build; a part whose inputs are missing is absent. */
export interface Plan extends Instrument, Making {}

/**
 * Compute the whole plan of a build: lengths in mm, forces in N, masses in kg, angles in degrees, pitch in Hz and cents.
 * Pure: the same build, settings and pieces give the same plan. What cannot be computed yet is undefined.
 */
export function planBuild(build: Build | Settled, context: Context): Plan {
  const settled = settle(build, context.journal)
  const instrument = planInstrument(settled, context)
  return {...instrument, ...planMaking(settled, instrument, context)}
}
