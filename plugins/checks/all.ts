import {altMissing} from './alt-missing.ts'
import {basedOnCircle} from './based-on-circle.ts'
import {basedOnMissing} from './based-on-missing.ts'
import {cautionsLeftOut} from './cautions-left-out.ts'
import type {Check} from './check.ts'
import {coreNotInside} from './core-not-inside.ts'
import {coreOnPlain} from './core-on-plain.ts'
import {directiveTwice} from './directive-twice.ts'
import {dotWithoutLine} from './dot-without-line.ts'
import {fileMissing} from './file-missing.ts'
import {fileOutside} from './file-outside.ts'
import {finishedBeforeStarted} from './finished-before-started.ts'
import {heightsDisagree} from './heights-disagree.ts'
import {linePastBridge} from './line-past-bridge.ts'
import {linesPastPattern} from './lines-past-pattern.ts'
import {measuredLineUnknown} from './measured-line-unknown.ts'
import {openValue} from './open-value.ts'
import {packetIncomplete} from './packet-incomplete.ts'
import {patternNotRising} from './pattern-not-rising.ts'
import {pitchesOutOfOrder} from './pitches-out-of-order.ts'
import {stringMaterialOpen} from './string-material-open.ts'
import {stringNearBreaking} from './string-near-breaking.ts'
import {stringSlack} from './string-slack.ts'
import {stringStiff} from './string-stiff.ts'
import {stringTooLong} from './string-too-long.ts'
import {stringUneven} from './string-uneven.ts'
import {stringsOnFace} from './strings-on-face.ts'
import {temperamentNotRising} from './temperament-not-rising.ts'
import {temperamentOctave} from './temperament-octave.ts'
import {tunersUneven} from './tuners-uneven.ts'
import {unknownDirective} from './unknown-directive.ts'
import {unknownValue} from './unknown-value.ts'
import {unknownWood} from './unknown-wood.ts'
import {woundTooThin} from './wound-too-thin.ts'

/** Every check, sorted by rule, a line each. */
// biome-ignore format: a line each, so that checks can be added side by side
export const allChecks: readonly Check[] = [
  altMissing,
  basedOnCircle,
  basedOnMissing,
  cautionsLeftOut,
  coreNotInside,
  coreOnPlain,
  directiveTwice,
  dotWithoutLine,
  fileMissing,
  fileOutside,
  finishedBeforeStarted,
  heightsDisagree,
  linePastBridge,
  linesPastPattern,
  measuredLineUnknown,
  openValue,
  packetIncomplete,
  patternNotRising,
  pitchesOutOfOrder,
  stringMaterialOpen,
  stringNearBreaking,
  stringSlack,
  stringStiff,
  stringTooLong,
  stringUneven,
  stringsOnFace,
  temperamentNotRising,
  temperamentOctave,
  tunersUneven,
  unknownDirective,
  unknownValue,
  unknownWood,
  woundTooThin,
]
