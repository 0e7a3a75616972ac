import {altMissing} from './alt-missing.ts'
import {basedOnCircle} from './based-on-circle.ts'
import {basedOnMissing} from './based-on-missing.ts'
import {cautionsLeftOut} from './cautions-left-out.ts'
import type {Check} from './check.ts'
import {directiveTwice} from './directive-twice.ts'
import {dotWithoutLine} from './dot-without-line.ts'
import {fileMissing} from './file-missing.ts'
import {fileOutside} from './file-outside.ts'
import {finishedBeforeStarted} from './finished-before-started.ts'
import {linePastBridge} from './line-past-bridge.ts'
import {linesPastPattern} from './lines-past-pattern.ts'
import {measuredLineUnknown} from './measured-line-unknown.ts'
import {openValue} from './open-value.ts'
import {patternNotRising} from './pattern-not-rising.ts'
import {temperamentNotRising} from './temperament-not-rising.ts'
import {temperamentOctave} from './temperament-octave.ts'
import {tunersUneven} from './tuners-uneven.ts'
import {unknownDirective} from './unknown-directive.ts'
import {unknownValue} from './unknown-value.ts'
import {unknownWood} from './unknown-wood.ts'

/** Every check, sorted by rule, a line each. */
// biome-ignore format: a line each, so that checks can be added side by side
export const allChecks: readonly Check[] = [
  altMissing,
  basedOnCircle,
  basedOnMissing,
  cautionsLeftOut,
  directiveTwice,
  dotWithoutLine,
  fileMissing,
  fileOutside,
  finishedBeforeStarted,
  linePastBridge,
  linesPastPattern,
  measuredLineUnknown,
  openValue,
  patternNotRising,
  temperamentNotRising,
  temperamentOctave,
  tunersUneven,
  unknownDirective,
  unknownValue,
  unknownWood,
]
