import type {Build} from '../build-file/schema/build.ts'
import type {Action} from './action/action.ts'
import type {Bridge} from './action/bridge.ts'
import type {Intonation} from './action/intonation.ts'
import type {Nut} from './action/nut.ts'
import {type AnchorRow, planAnchorConflicts, planAnchorRow, planAnchors} from './box/anchors.ts'
import {type Box, planWayIn, wholeBox} from './box/box.ts'
import {planAir} from './box/box-air.ts'
import {type Pickup, planPickup} from './box/pickup.ts'
import {planSoundHoles} from './box/sound-holes.ts'
import {type EndJoint, planEndJoint} from './fasteners/end-joint.ts'
import type {Fastener} from './fasteners/fastener.ts'
import {planFasteners} from './fasteners/fasteners.ts'
import {planScrewPlaces, type ScrewPlace, screwsTooMany} from './fasteners/screw-places.ts'
import {planJointPull} from './joint/joint-pull.ts'
import type {Conflict} from './kit/conflicts.ts'
import type {Context} from './kit/context.ts'
import type {Hole} from './kit/hole.ts'
import type {Assumption, Settled} from './kit/settled.ts'
import {planUnknownWoods, type UnknownWood} from './kit/unknown-woods.ts'
import {planHoles} from './layout/holes.ts'
import {type Outline, planOutline} from './layout/outline.ts'
import type {Making} from './making.ts'
import {headLayout} from './neck/head.ts'
import {planHeadConflicts} from './neck/head-layout.ts'
import {type Neck, planNeck} from './neck/neck.ts'
import {planEndWeakness} from './proposals/end-screws.ts'
import type {Scale} from './scale/scale.ts'
import {settle} from './settle.ts'
import type {StringPlan} from './strings/strings.ts'
import type {Placed} from './strings/tuners.ts'
import {type Bearing, type Drawn, planBearing, planDrawn, planStrung, type Strung} from './strung.ts'

/** What is computed of the instrument itself. */
export interface Instrument {
  slug: string
  title?: string | undefined
  status?: string | undefined
  play?: string | undefined
  units: 'in' | 'mm'
  /** The finest mark that the maker works to. */
  rulerMm: number
  handed: 'right' | 'left'
  assumptions: readonly Assumption[]
  scale?: Scale | undefined
  strings?: StringPlan[] | undefined
  tensionTotalN?: number | undefined
  bridge?: Bridge | undefined
  intonation?: Intonation[] | undefined
  action?: Action | undefined
  /** What the strings rest on at the head end. */
  nut?: Nut | undefined
  neck?: Neck | undefined
  box?: Box | undefined
  tuners?: Placed[] | undefined
  anchors?: Placed[] | undefined
  screws?: ScrewPlace[] | undefined
  /** How a neck that ends at the box is held there. */
  endJoint?: EndJoint | undefined
  anchorRow?: AnchorRow | undefined
  holes?: Hole[] | undefined
  fasteners?: Fastener[] | undefined
  /** What is too near to what, of all that is bored. */
  conflicts?: Conflict[] | undefined
  pickup?: Pickup | undefined
  /** More screws than can be planned. */
  tooManyScrews?: {count: number; most: number} | undefined
  unknownWoods?: UnknownWood[] | undefined
  /** What drawings and templates are drawn from. */
  outline?: Outline | undefined
}

/**
 * Plan the instrument alone, all but what making it takes (`planMaking`): lengths in mm, forces in N, masses in kg, angles
 * in degrees, pitch in Hz and cents. Pure, and what cannot be computed yet is undefined.
 */
export function planInstrument(build: Build | Settled, context: Context): Instrument & Making {
  const settled = settle(build, context.journal)
  const {values, rulerMm} = settled
  const drawn = planDrawn(settled, context)
  const bearing = planBearing(settled, drawn)
  const strung = planStrung(settled, drawn, bearing)
  const {neck, headConflicts} = planNeckUnder(settled, drawn, bearing, strung)
  const {box, holeConflicts} = planBoxUnder(settled, drawn, bearing, strung)
  const fitted = planFitted(settled, {...drawn, ...bearing, ...strung, box})
  const conflicts = [...holeConflicts, ...headConflicts, ...fitted.conflicts]
  return {
    slug: settled.slug,
    title: values.title?.value,
    status: values.status?.value,
    play: values.play?.value,
    units: settled.units,
    rulerMm,
    handed: values.handed?.value ?? 'right',
    assumptions: settled.assumptions,
    scale: drawn.scale,
    strings: strung.strings,
    layout: undefined,
    tensionTotalN: drawn.tensionTotalN,
    tunings: undefined,
    bridge: strung.bridge,
    intonation: strung.intonation,
    action: strung.action,
    nut: drawn.nut,
    neck,
    box,
    tuners: strung.tuners,
    anchors: fitted.anchors,
    screws: fitted.screws,
    endJoint: fitted.endJoint,
    anchorRow: fitted.anchorRow,
    holes: fitted.holes,
    fasteners: fitted.fasteners,
    conflicts: conflicts.length ? conflicts : undefined,
    pickup: fitted.pickup,
    // Its making has its place in the order of the whole.
    work: undefined,
    workTime: undefined,
    cuts: undefined,
    tooManyParts: undefined,
    tooManyScrews: screwsTooMany(values),
    stockTroubles: undefined,
    bill: undefined,
    cost: undefined,
    cautions: undefined,
    asBuilt: undefined,
    settingUp: undefined,
    unknownWoods: planUnknownWoods(values),
    outline: planOutline(values, {...drawn, bridge: strung.bridge}),
  }
}

/** Plan the neck as it is bent, and what is too near to what on its head. */
function planNeckUnder(settled: Settled, drawn: Drawn, {bent}: Bearing, {action, tuners}: Strung) {
  const {scale, model, budget, tensionTotalN, nut, heights} = drawn
  const layout = headLayout(settled.values, model, tuners, scale)
  const around = {scale, tuners, layout, tensionTotalN, action, nut, heights}
  const bare = planNeck(settled, model, budget, around)
  return {neck: bare && {...bare, ...bent}, headConflicts: planHeadConflicts(layout, settled.rulerMm)}
}

/** Plan the box as a whole, and what is too near to its sound holes. */
function planBoxUnder(settled: Settled, drawn: Drawn, bearing: Bearing, {bridge, strings}: Strung) {
  const {place, taper, scale} = drawn
  const {sizes, neckInBox: neck, blocks, seat, lid} = bearing
  const around = {place, outside: sizes?.outside, neck, taper, blocks, bridge, bridgeSeat: seat?.bridgeSeat}
  const {soundHoles, conflicts: holeConflicts} = planSoundHoles(settled, around)
  const air = planAir(settled, {place, sizes, neck, taper, scale, strings})
  const wayIn = planWayIn(settled.values)
  const box = wholeBox({...place, ...sizes, neck, blocks, ...seat, lid, soundHoles, ...wayIn, ...air})
  return {box, holeConflicts}
}

/** Plan what is fitted into neck and box: anchors, screws, pickup, and the holes that all of it asks for. */
function planFitted(settled: Settled, parts: Drawn & Bearing & Strung & {box: Box | undefined}) {
  const {values} = settled
  const {place, taper, tuned, tensionTotalN, isAnchoredOnNeck, action, bridge, tuners, box} = parts
  const anchors = planAnchors(values, place, tuned?.strings)
  const anchorRow = planAnchorRow(values, anchors, isAnchoredOnNeck, taper)
  const pickup = planPickup(values, box, bridge)
  const pull = planJointPull(bridge, isAnchoredOnNeck, action, tensionTotalN)
  const screws = planScrewPlaces(values, place)
  const end = box && planEndJoint(settled, {box, pull})
  const screwed = planFasteners(settled, screws, {box, taper}, {pull, end})
  const {fasteners} = screwed
  const weak = box && planEndWeakness({settled, box, place, taper, pull}, end, fasteners)
  const bored = {tuners, anchors, isAnchoredOnNeck, box, fasteners, jack: pickup?.jack}
  return {
    anchors,
    anchorRow,
    pickup,
    screws,
    fasteners,
    endJoint: end && {...end, weak},
    holes: planHoles(settled, bored),
    conflicts: [...planAnchorConflicts(values, anchorRow), ...screwed.conflicts],
  }
}
