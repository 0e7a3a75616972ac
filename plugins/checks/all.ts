import {cautionsLeftOut} from './cautions-left-out.ts'
import type {Check} from './check.ts'
import {directiveTwice} from './directive-twice.ts'
import {openValue} from './open-value.ts'
import {unknownDirective} from './unknown-directive.ts'
import {unknownValue} from './unknown-value.ts'

/** Every check, sorted by rule, a line each. */
export const allChecks: readonly Check[] = [
  cautionsLeftOut,
  directiveTwice,
  openValue,
  unknownDirective,
  unknownValue,
]
