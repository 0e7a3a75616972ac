import {action} from './action.ts'
import {anchorRow, stringAnchors} from './anchors.ts'
import {asBuilt} from './as-built.ts'
import {bill} from './bill.ts'
import {boxPlace, boxSizes, wayIn} from './box/box.ts'
import {boxAir} from './box/box-air.ts'
import {boxBlocks} from './box/box-blocks.ts'
import {bridgePush} from './box/bridge-push.ts'
import {bridgeSeat} from './box/bridge-seat.ts'
import {neckInBox} from './box/neck-in-box.ts'
import {soundHoles} from './box/sound-holes.ts'
import {bridgePlace} from './bridge-place.ts'
import {cautions} from './cautions.ts'
import {cuts} from './cut-list.ts'
import {holes} from './drilling/holes.ts'
import {fasteners} from './fasteners/fasteners.ts'
import {screwPlaces} from './fasteners/screw-places.ts'
import {setbacks} from './intonation/setbacks.ts'
import {straightSaddle} from './intonation/straight-saddle.ts'
import {layout} from './layout.ts'
import {neck} from './neck/neck.ts'
import {neckBudget} from './neck/neck-budget.ts'
import {outline} from './outline.ts'
import type {PlanPart} from './part.ts'
import {pickup} from './pickup.ts'
import {justMarks} from './scale/just-marks.ts'
import {longestScale} from './scale/longest-scale.ts'
import {marking} from './scale/marking.ts'
import {scaleLines} from './scale/scale-lines.ts'
import {settingUp} from './setting-up.ts'
import {stockTroubles} from './stock-at-hand.ts'
import {otherTunings} from './strings/other-tunings.ts'
import {stringLengths} from './strings/string-lengths.ts'
import {strings} from './strings/strings.ts'
import {tunerPosts} from './tuner-posts.ts'
import {unknownWoods} from './unknown-woods.ts'
import {workOrder} from './work/work-order.ts'

/** The concerns of the plan, each after those that it reads. */
// biome-ignore format: a line each, so that concerns can be added side by side
export const parts: readonly PlanPart[] = [
  boxPlace,
  bridgePlace,
  scaleLines,
  marking,
  justMarks,
  // the strings come before what is named after them
  strings,
  otherTunings,
  action,
  setbacks,
  straightSaddle,
  tunerPosts,
  stringAnchors,
  neckBudget,
  neck,
  longestScale,
  stringLengths,
  screwPlaces,
  boxSizes,
  neckInBox,
  boxBlocks,
  bridgeSeat,
  soundHoles,
  wayIn,
  boxAir,
  bridgePush,
  anchorRow,
  pickup,
  fasteners,
  holes,
  unknownWoods,
  stockTroubles,
  cuts,
  cautions,
  asBuilt,
  bill,
  settingUp,
  outline,
  // after everything that has a station
  layout,
  // after the cautions, which stand beside its steps
  workOrder,
]
