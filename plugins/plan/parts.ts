import {boxPlace} from './box-place.ts'
import {bridgePlace} from './bridge-place.ts'
import type {PlanPart} from './part.ts'
import {screwPlaces} from './screw-places.ts'
import {stringAnchors} from './string-anchors.ts'
import {tunerPosts} from './tuner-posts.ts'

/** The concerns of the plan, each after those that it reads. */
// biome-ignore format: a line each, so that concerns can be added side by side
export const parts: readonly PlanPart[] = [
  boxPlace,
  bridgePlace,
  // the strings come here, before what is named after them
  tunerPosts,
  stringAnchors,
  screwPlaces,
]
