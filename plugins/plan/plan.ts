import type {Build} from '../build-file/build.ts'
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
import type {Context, PlanPart} from './part.ts'
import {pickup} from './pickup.ts'
import {justMarks} from './scale/just-marks.ts'
import {longestScale} from './scale/longest-scale.ts'
import {marking} from './scale/marking.ts'
import {scaleLines} from './scale/scale-lines.ts'
import {settingUp} from './setting-up.ts'
import {settle} from './settle.ts'
import type {Plan} from './shape/plan.ts'
import {stockTroubles} from './stock-at-hand.ts'
import {otherTunings} from './strings/other-tunings.ts'
import {stringLengths} from './strings/string-lengths.ts'
import {strings} from './strings/strings.ts'
import {tunerPosts} from './tuner-posts.ts'
import {unknownWoods} from './unknown-woods.ts'
import {workOrder} from './work/work-order.ts'

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
  const add = (part: PlanPart) => Object.assign(plan, part(settled, plan, context))

  // A line each: a concern with typed arguments is `plan.holes = planHoles(...)` in place of its `add`.
  add(boxPlace)
  add(bridgePlace)
  add(scaleLines)
  add(marking)
  add(justMarks)
  add(strings)
  add(otherTunings)
  add(action)
  add(setbacks)
  add(straightSaddle)
  add(tunerPosts)
  add(stringAnchors)
  add(neckBudget)
  add(neck)
  add(longestScale)
  add(stringLengths)
  add(screwPlaces)
  add(boxSizes)
  add(neckInBox)
  add(boxBlocks)
  add(bridgeSeat)
  add(soundHoles)
  add(wayIn)
  add(boxAir)
  add(bridgePush)
  add(anchorRow)
  add(pickup)
  add(fasteners)
  add(holes)
  add(unknownWoods)
  add(stockTroubles)
  add(cuts)
  add(cautions)
  add(asBuilt)
  add(bill)
  add(settingUp)
  add(outline)
  add(layout)
  add(workOrder)
  return plan
}
