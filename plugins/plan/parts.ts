import {action} from './action.ts'
import {boxPlace} from './box-place.ts'
import {bridgePlace} from './bridge-place.ts'
import {setbacks} from './intonation/setbacks.ts'
import {straightSaddle} from './intonation/straight-saddle.ts'
import type {PlanPart} from './part.ts'
import {scaleLines} from './scale/scale-lines.ts'
import {screwPlaces} from './screw-places.ts'
import {stringAnchors} from './string-anchors.ts'
import {otherTunings} from './strings/other-tunings.ts'
import {stringLengths} from './strings/string-lengths.ts'
import {strings} from './strings/strings.ts'
import {tunerPosts} from './tuner-posts.ts'
import {unknownWoods} from './unknown-woods.ts'

/** The concerns of the plan, each after those that it reads. */
// biome-ignore format: a line each, so that concerns can be added side by side
export const parts: readonly PlanPart[] = [
  boxPlace,
  bridgePlace,
  scaleLines,
  // the strings come before what is named after them
  strings,
  otherTunings,
  action,
  setbacks,
  straightSaddle,
  tunerPosts,
  stringAnchors,
  stringLengths,
  screwPlaces,
  unknownWoods,
]
