import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Heights} from '../action/action.ts'
import type {BridgePlace, BridgePush} from '../action/bridge.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'
import type {Wood} from '../kit/woods.ts'
import {strengthPart} from '../neck/stress.ts'
import {isAnchoredAtBridge} from './anchors.ts'
import type {Block} from './box-blocks.ts'
import type {BridgeSeat} from './bridge-seat.ts'
import {heldPlate} from './held-plate.ts'
import {lidPlate, lidWood, type Make} from './lid-bending.ts'
import {type Given, loosePlate, type Plate, type PlateLoad} from './plate.ts'

/** What the top lies on, what stands on it and what the strings do there. */
export interface OnLid {
  place: BoxPlace | undefined
  sizes: BoxSizes | undefined
  seat: BridgeSeat | undefined
  blocks: readonly Block[] | undefined
  bridge: BridgePlace | undefined
  push: BridgePush | undefined
  heights: Heights | undefined
  tensionTotalN: number | undefined
}

/** What the strings do to a bridge on the top. */
interface StringsOn {
  pushN: number
  /** Tipping it forward is negative. */
  momentNmm: number
  /** The strings over the middle of the top. */
  heightMm: number
}

/**
 * Say what the strings do to the bridge: those that run on to anchors behind it push it down (N); those that are held
 * at it draw it towards the nut as well, which tips it: their pull times their height (N·mm). Statics of a string.
 */
export function loadOn(
  values: BuildValues,
  {place, sizes, bridge, push, heights, tensionTotalN}: OnLid,
): StringsOn | undefined {
  if (!bridge || bridge.heightMm === undefined) return undefined
  const heightMm = bridge.heightMm + (sizes?.outside.topMm ?? 0) / 2
  if (isAnchoredAtBridge(values, place)) {
    if (!heights || tensionTotalN === undefined) return undefined
    const down = (heights.bridgeHeightMm - heights.nutMm - heights.crownMm) / bridge.stationMm
    const along = 1 / Math.hypot(1, down)
    return {
      pushN: tensionTotalN * down * along,
      momentNmm: 0 - tensionTotalN * along * heightMm,
      heightMm,
    }
  }
  return push?.downforceN === undefined ? undefined : {pushN: push.downforceN, momentNmm: 0, heightMm}
}

/** Find the wall that a bridge's foot stands on, or the two sides that it spans. */
export function wallUnder(
  seat: BridgeSeat,
  {inside, outside}: BoxSizes,
): 'head wall' | 'tail wall' | 'side walls' | undefined {
  if (seat.lengthMm >= inside!.widthMm) return 'side walls'
  if (seat.fromTailWallMm < 0) return 'tail wall'
  return seat.fromHeadEdgeMm < outside.sidesMm ? 'head wall' : undefined
}

/** A top and what presses it. */
interface LidTried {
  wood: Wood
  grain: 'along' | 'across'
  around: OnLid
  load: StringsOn
}

/** How a top gives way, and its stress where that is nearest to what its wood may carry, in MPa. */
export interface Pressed extends Given {
  stressMpa?: number | undefined
  mayCarryMpa?: number | undefined
  isAcrossGrain?: boolean | undefined
}

/** Press a lid of some thickness (mm) as it is most likely: half way between loose and held, stressed as a loose one. */
export const likelyPressed = (lid: LidTried, thicknessMm: number): Pressed =>
  midway(bothPressed(lid, thicknessMm))

/** The same of a lid that was pressed both ways. */
export const midway = ({loose, held}: ReturnType<typeof bothPressed>): Pressed => ({
  ...loose,
  sinkMm: (loose.sinkMm + held.sinkMm) / 2,
  slope: (loose.slope + held.slope) / 2,
})

/** Press a lid of its likely wood as it lies loose, and held fast. */
export const bothPressed = (lid: LidTried, thicknessMm: number) => ({
  loose: pressed(lid, thicknessMm, {as: 'likely', isHeld: false}),
  held: pressed(lid, thicknessMm, {as: 'likely', isHeld: true}),
})

/** Press a lid of some thickness (mm), held fast by the walls or lying loose on them. */
export function pressed(
  {wood, grain, around, load}: LidTried,
  thicknessMm: number,
  {as, isHeld}: {as: Make; isHeld: boolean},
): Pressed {
  const of = lidWood(wood, thicknessMm, as)
  const [fromMm, toMm] = span(around, isHeld)
  const plate: Plate = {
    ...lidPlate(of, thicknessMm, grain),
    lengthMm: toMm - fromMm,
    widthMm: around.sizes!.inside!.widthMm,
  }
  const foot = footOn(around, thicknessMm, [fromMm, toMm])
  const offMm = around.bridge!.stationMm - foot.stationMm
  const on: PlateLoad = {
    atMm: foot.stationMm - fromMm,
    footMm: foot.alongMm,
    acrossMm: foot.acrossMm,
    pushN: load.pushN,
    momentNmm: load.momentNmm + load.pushN * offMm,
  }
  const given = isHeld ? heldPlate(plate, on) : loosePlate(plate, on)
  const stress = (moment: number) => (6 * moment) / thicknessMm ** 2
  const [withGrain, across] =
    grain === 'along' ? [given.momentAlongN, given.momentAcrossN] : [given.momentAcrossN, given.momentAlongN]
  const ways = [
    {stressMpa: stress(withGrain), breaksMpa: of.breaksMpa, isAcrossGrain: false},
    {stressMpa: stress(across), breaksMpa: of.breaksAcrossMpa, isAcrossGrain: true},
  ].map(({breaksMpa, ...way}) => ({...way, mayCarryMpa: breaksMpa && strengthPart * breaksMpa}))
  const part = ({stressMpa, mayCarryMpa = 1e3}: (typeof ways)[number]) => stressMpa / mayCarryMpa
  const worst = part(ways[1]!) > part(ways[0]!) ? ways[1]! : ways[0]!
  return {...given, ...worst, sinkMm: given.sinkMm + given.slope * offMm}
}

/**
 * Give where the top is free, mm from the nut line: between the end walls, and where it is held fast between blocks
 * against them that are at least half as wide as the inside.
 */
function span(
  {place, sizes, seat, bridge, blocks = []}: OnLid,
  isHeld: boolean,
): [fromMm: number, toMm: number] {
  const {outside, inside} = sizes!
  const atMm = place!.atMm
  let [fromMm, toMm] = [atMm + outside.sidesMm, atMm + outside.lengthMm - outside.sidesMm]
  const [head, tail] = [fromMm, toMm]
  const [footFrom, footTo] = [-1, 1].map((side) => bridge!.stationMm + (side * seat!.footMm) / 2) as [
    number,
    number,
  ]
  for (const {stationMm, lengthMm, widthMm, glued} of isHeld ? blocks : []) {
    if (glued !== 'at the ends' || widthMm < inside!.widthMm / 2) continue
    const [startMm, endMm] = [stationMm - lengthMm / 2, stationMm + lengthMm / 2]
    if (startMm < head + againstMm && endMm < footFrom) fromMm = Math.max(fromMm, endMm)
    if (endMm > tail - againstMm && startMm > footTo) toMm = Math.min(toMm, startMm)
  }
  return [fromMm, toMm]
}

/** A block this near a wall (mm) is taken to stand against it. */
const againstMm = 3

/** Where a foot presses the middle of a top, mm from the nut line: its own outline, or that of a block under it. */
function footOn(
  {seat, sizes, blocks = [], bridge}: OnLid,
  thicknessMm: number,
  [fromMm, toMm]: readonly [number, number],
) {
  const {footMm, lengthMm} = seat!
  const {stationMm} = bridge!
  const block = blocks.find(
    (one) =>
      one.glued === 'under the top' &&
      Math.abs(stationMm - one.stationMm) + footMm / 2 <= one.lengthMm / 2 &&
      Math.abs(one.offMm) + lengthMm / 2 <= one.widthMm / 2,
  )
  const middleMm = block?.stationMm ?? stationMm
  const halfMm = Math.min(
    (Math.max(block?.lengthMm ?? 0, footMm) + thicknessMm) / 2,
    middleMm - fromMm,
    toMm - middleMm,
  )
  return {
    stationMm: middleMm,
    alongMm: 2 * halfMm,
    acrossMm: Math.min(Math.max(block?.widthMm ?? 0, lengthMm) + thicknessMm, sizes!.inside!.widthMm),
  }
}
