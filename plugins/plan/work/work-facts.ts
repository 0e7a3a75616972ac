import {withUnit} from '../../build-file/give-units.ts'
import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Length} from '../../build-file/values.ts'
import type {Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'

/** What decides which steps a build takes: its values, its plan so far, and how to write a length. */
export interface WorkFacts {
  values: BuildValues
  plan: Plan
  /** Write a length (mm) in the build's units to its ruler. */
  size: (mm: number) => string
  /** Write a length as the file does, with its unit. */
  asWritten: (length: Length) => string
  isFretted: boolean
  /** Frets are sawn into a board of their own, before it is glued on. */
  hasBoard: boolean
}

/** Gather what the groups of steps ask. */
export function workFacts(settled: Settled, plan: Plan): WorkFacts {
  const {values, units} = settled
  const size = (mm: number) => writeLength(mm, settled).replace('-', '−')
  return {
    values,
    plan,
    size,
    asWritten: (length) => (length.assumed ? size(length.mm) : withUnit(length, units)),
    isFretted: values.scale?.fretted?.value === true,
    hasBoard: values.fingerboard !== undefined,
  }
}
