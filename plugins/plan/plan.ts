import type {Build} from '../build-file/build.ts'
import {type Action, action} from './action.ts'
import {type AnchorRow, anchorRow, stringAnchors} from './anchors.ts'
import {type AsBuilt, asBuilt} from './as-built.ts'
import {type BillRow, bill, type Cost} from './bill.ts'
import {type Box, boxPlace, boxSizes, wayIn} from './box/box.ts'
import {boxAir} from './box/box-air.ts'
import {boxBlocks} from './box/box-blocks.ts'
import {bridgePush} from './box/bridge-push.ts'
import {bridgeSeat} from './box/bridge-seat.ts'
import {neckInBox} from './box/neck-in-box.ts'
import {soundHoles} from './box/sound-holes.ts'
import {type Bridge, bridgePlace} from './bridge.ts'
import {type Caution, cautions} from './cautions.ts'
import {type Cuts, partsTooMany, planCuts} from './cut-list.ts'
import {type Hole, holes} from './drilling/holes.ts'
import {type Fastener, fasteners} from './fasteners/fasteners.ts'
import {type ScrewPlace, screwPlaces} from './fasteners/screw-places.ts'
import {type Intonation, setbacks} from './intonation.ts'
import {layout, type Station} from './layout.ts'
import {longestScale} from './longest-scale.ts'
import {justMarks, marking} from './marking.ts'
import {neckBudget} from './neck/budget.ts'
import {type Neck, neck} from './neck/neck.ts'
import {type Outline, outline} from './outline.ts'
import type {Context, PlanPart} from './part.ts'
import {type Pickup, pickup} from './pickup.ts'
import {straightSaddle} from './saddle.ts'
import {type Scale, scaleLines} from './scale.ts'
import {type SettingUp, settingUp} from './setting-up.ts'
import {type Assumption, settle} from './settle.ts'
import {planStockTroubles, type StockTrouble} from './stock-at-hand.ts'
import {stringLengths} from './string-lengths.ts'
import {type StringPlan, strings} from './strings.ts'
import {type Placed, tunerPosts} from './tuners.ts'
import {otherTunings, type Tuning} from './tunings.ts'
import {unknownWoods} from './unknown-woods.ts'
import {type Step, type WorkTime, workOrder} from './work/work-order.ts'

export interface Plan {
  slug: string
  title?: string | undefined
  status?: string | undefined
  play?: string | undefined
  units: 'in' | 'mm'
  /** The finest mark that the maker works to. */
  rulerMm: number
  handed: 'right' | 'left'
  assumptions: Assumption[]
  scale?: Scale | undefined
  strings?: StringPlan[] | undefined
  /** Every station in order, head end to tail end. */
  layout?: Station[] | undefined
  tensionTotalN?: number | undefined
  /** Other common tunings that these gauges carry. */
  tunings?: Tuning[] | undefined
  bridge?: Bridge | undefined
  intonation?: Intonation[] | undefined
  action?: Action | undefined
  neck?: Neck | undefined
  box?: Box | undefined
  tuners?: Placed[] | undefined
  anchors?: Placed[] | undefined
  screws?: ScrewPlace[] | undefined
  anchorRow?: AnchorRow | undefined
  holes?: Hole[] | undefined
  fasteners?: Fastener[] | undefined
  pickup?: Pickup | undefined
  /** In an order that works. */
  work?: Step[] | undefined
  workTime?: WorkTime | undefined
  cuts?: Cuts | undefined
  /** More parts than can be planned. */
  tooManyParts?:
    | {
        count: number
        most: number
      }
    | undefined
  stockTroubles?: StockTrouble[] | undefined
  bill?: BillRow[] | undefined
  cost?: Cost | undefined
  cautions?: Caution[] | undefined
  asBuilt?: AsBuilt[] | undefined
  settingUp?: SettingUp[] | undefined
  unknownWoods?:
    | {
        path: string
        wood: string
        nearest?: string | undefined
      }[]
    | undefined
  /** What drawings and templates are drawn from. */
  outline?: Outline | undefined
}

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
  plan.stockTroubles = planStockTroubles(settled.values, context)
  plan.tooManyParts = partsTooMany(settled.values)
  plan.cuts = planCuts(settled, plan.neck, context.pieces)
  add(cautions)
  add(asBuilt)
  add(bill)
  add(settingUp)
  add(outline)
  add(layout)
  add(workOrder)
  return plan
}
