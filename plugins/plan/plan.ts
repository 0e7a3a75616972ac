import type {Build} from '../build-file/build.ts'
import {type Action, action} from './action.ts'
import {type AnchorRow, isAnchoredOnNeck, planAnchorRow, planAnchors} from './anchors.ts'
import {type AsBuilt, planAsBuilt} from './as-built.ts'
import {type BillRow, type Cost, planBill} from './bill.ts'
import {type Box, planWayIn, wholeBox} from './box/box.ts'
import {planAir} from './box/box-air.ts'
import {planBlocks} from './box/box-blocks.ts'
import {planBoxPlace, planBoxSizes} from './box/box-place.ts'
import {planBridgePush} from './box/bridge-push.ts'
import {planBridgeSeat} from './box/bridge-seat.ts'
import {planNeckInBox} from './box/neck-in-box.ts'
import {planSoundHoles} from './box/sound-holes.ts'
import {type Bridge, bridgePlace} from './bridge.ts'
import {type Caution, planCautions} from './cautions.ts'
import {type Cuts, partsTooMany, planCuts} from './cut-list.ts'
import {type Fastener, planFasteners} from './fasteners/fasteners.ts'
import {planJointPull} from './fasteners/joint-loads.ts'
import {planScrewPlaces, type ScrewPlace} from './fasteners/screw-places.ts'
import {type Hole, planHoles} from './holes.ts'
import {type Intonation, setbacks} from './intonation.ts'
import {planLayout, type Station} from './layout.ts'
import {longestScale} from './longest-scale.ts'
import {justMarks, marking} from './marking.ts'
import {neckBudget} from './neck/budget.ts'
import {neckModel} from './neck/model.ts'
import {type Neck, neck} from './neck/neck.ts'
import {neckTaper} from './neck/taper.ts'
import {type Outline, planOutline} from './outline.ts'
import type {Context, PlanPart} from './part.ts'
import {type Pickup, planPickup} from './pickup.ts'
import {straightSaddle} from './saddle.ts'
import {type Scale, scaleLines} from './scale.ts'
import {planSettingUp, type SettingUp} from './setting-up.ts'
import {type Assumption, settle} from './settle.ts'
import {planStockTroubles, type StockTrouble} from './stock-at-hand.ts'
import {stringLengths} from './string-lengths.ts'
import {type StringPlan, strings} from './strings.ts'
import {type Placed, tunerPosts} from './tuners.ts'
import {otherTunings, type Tuning} from './tunings.ts'
import {planUnknownWoods, type UnknownWood} from './unknown-woods.ts'
import type {Step} from './work/step.ts'
import {planWork, type WorkTime} from './work/work-order.ts'

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
  unknownWoods?: UnknownWood[] | undefined
  /** What drawings and templates are drawn from. */
  outline?: Outline | undefined
}

/**
 * Compute the whole plan of a build: lengths in mm, forces in N, masses in kg, angles in degrees, pitch in Hz and cents.
 * Pure: the same build, settings and pieces give the same plan. What cannot be computed yet is absent.
 */
export function planBuild(build: Build, context: Context): Plan {
  const {settled, assumptions} = settle(build, context.journal)
  const {values, rulerMm} = settled
  const {title, status, play, handed} = values
  const plan: Plan = {
    slug: build.slug,
    ...(title ? {title: title.value} : {}),
    ...(status ? {status: status.value} : {}),
    ...(play ? {play: play.value} : {}),
    units: settled.units,
    rulerMm,
    handed: handed?.value ?? 'right',
    assumptions,
  }
  const add = (part: PlanPart) => Object.assign(plan, part(settled, plan, context))

  // A line each: a concern with typed arguments is `plan.holes = planHoles(...)` in place of its `add`.
  const place = planBoxPlace(values)
  const taper = neckTaper(values)
  plan.box = place
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
  plan.anchors = planAnchors(values, place, plan.strings)
  add(neckBudget)
  add(neck)
  add(longestScale)
  add(stringLengths)
  plan.screws = planScrewPlaces(values, place)

  const sizes = planBoxSizes(values)
  const neckInBox = planNeckInBox(values, {
    place,
    outside: sizes?.outside,
    taper,
    bridge: plan.bridge,
    action: plan.action,
  })
  const blocks = planBlocks(values, rulerMm, {place, sizes, neck: neckInBox})
  const seat = planBridgeSeat(settled, plan.bridge, place, sizes?.outside)
  const soundHoles = planSoundHoles(settled, {
    place,
    outside: sizes?.outside,
    neck: neckInBox,
    taper,
    blocks,
    bridge: plan.bridge,
    bridgeSeat: seat?.bridgeSeat,
  })
  const air = planAir(settled, {
    place,
    sizes,
    neck: neckInBox,
    taper,
    scale: plan.scale,
    strings: plan.strings,
  })
  const box = wholeBox({
    ...place,
    ...sizes,
    neck: neckInBox,
    blocks,
    ...seat,
    soundHoles,
    ...planWayIn(values),
    ...air,
  })
  plan.box = box
  plan.bridge = plan.bridge && {
    ...plan.bridge,
    ...planBridgePush(values, place, plan.bridge, {
      action: plan.action,
      tensionTotalN: plan.tensionTotalN,
    }),
  }

  const anchoredOnNeck = isAnchoredOnNeck(values, place, neckInBox)
  plan.anchorRow = planAnchorRow(values, plan.anchors, anchoredOnNeck, taper)
  const pickup = planPickup(values, box, plan.bridge)
  plan.pickup = pickup
  const pull = planJointPull(plan.bridge, anchoredOnNeck, plan.action, plan.tensionTotalN)
  const fasteners = planFasteners(settled, plan.screws, {box, taper}, pull)
  plan.fasteners = fasteners
  const holes = planHoles(settled, {
    tuners: plan.tuners,
    anchors: plan.anchors,
    isAnchoredOnNeck: anchoredOnNeck,
    box,
    fasteners,
    jack: pickup?.jack,
  })
  plan.holes = holes
  plan.unknownWoods = planUnknownWoods(values)
  plan.stockTroubles = planStockTroubles(values, context)
  plan.tooManyParts = partsTooMany(values)
  plan.cuts = planCuts(settled, plan.neck, context.pieces)
  plan.cautions = planCautions(settled, {
    cuts: plan.cuts,
    scarf: plan.neck?.scarf,
    holes,
    notch: neckInBox?.notch,
    tensionTotalN: plan.tensionTotalN,
  })
  const asBuilt = planAsBuilt(settled, {
    scale: plan.scale,
    strings: plan.strings,
    action: plan.action,
    bridge: plan.bridge,
    box,
    neckLengthMm: plan.neck?.budget?.lengthMm,
    bowMm: plan.neck?.bow?.reliefMm,
  })
  plan.asBuilt = asBuilt
  const {bill, cost} = planBill(
    settled,
    {
      strings: plan.strings,
      screws: plan.screws,
      wireMm: plan.neck?.fretting?.wireMm,
      cuts: plan.cuts,
    },
    context,
  )
  plan.bill = bill
  plan.cost = cost
  plan.settingUp = planSettingUp(settled, {
    scale: plan.scale,
    strings: plan.strings,
    action: plan.action,
    bridge: plan.bridge,
    box,
    bow: plan.neck?.bow,
    pickup,
    asBuilt,
  })
  const outline = planOutline(values, {
    model: neckModel(values, plan),
    taper,
    scale: plan.scale,
    bridge: plan.bridge,
  })
  plan.outline = outline
  const layout = planLayout(settled, {
    scale: plan.scale,
    neckLengthMm: plan.neck?.budget?.lengthMm,
    tuners: plan.tuners,
    anchors: plan.anchors,
    screws: plan.screws,
    bridge: plan.bridge,
    box,
    outline,
  })
  plan.layout = layout
  const work = planWork(
    settled,
    {
      scale: plan.scale,
      strings: plan.strings,
      neck: plan.neck,
      box,
      layout,
      holes,
      fasteners,
      cuts: plan.cuts,
    },
    plan.cautions,
  )
  plan.work = work?.work
  plan.workTime = work?.workTime
  return plan
}
