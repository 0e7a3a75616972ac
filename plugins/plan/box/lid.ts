import {inch} from '../../tables/units.ts'
import type {Settled} from '../kit/settled.ts'
import {woodOf} from '../kit/woods.ts'
import {leastMark, type WouldDo} from '../kit/would-do.ts'
import {creep} from '../neck/bow.ts'
import {leastGapMm} from '../neck-shape/inside.ts'
import {isSure} from './lid-bending.ts'
import {
  bothPressed,
  likelyPressed,
  loadOn,
  midway,
  type OnLid,
  type Pressed,
  pressed,
  wallUnder,
} from './lid-pressed.ts'
import type {Given} from './plate.ts'

/** How the top gives way under a bridge that stands on it; mm, N, MPa. */
export interface Lid {
  /** What presses it down; negative: the strings lift it. */
  pushN: number
  /** Of strings that are held at the bridge: their pull times their height over the middle of the top. */
  momentNmm?: number | undefined
  thicknessMm: number
  /** The row of the wood table. */
  wood?: string | undefined
  /** What of the box carries the bridge, where that is no top: its foot stands on a wall, or reaches over both sides. */
  standsOn?: 'head wall' | 'tail wall' | 'side walls' | undefined
  /** How far the bridge sinks, most likely: half way between a top that lies loose and one that the walls hold fast. */
  sinkMm: number
  sinkAfterCreepMm: number
  /** It sinks so far in time that it is drawn taut as well, which holds it somewhat and is not reckoned. */
  isTaut?: true | undefined
  /** Low and high: held fast by the walls and of the stiffest wood that it may be, loose and of the limpest. */
  rangeMm: number[]
  /** As most likely, but with the grain the other way. */
  otherGrainMm?: number | undefined
  /** The grain runs along the neck, or across it: as the box is longer. */
  grain?: 'along' | 'across' | undefined
  /** How far the strings, held at the bridge, draw its crown towards the nut. */
  leanMm?: number | undefined
  /** The largest stress of bending, and what its wood may carry, where the two are nearest. */
  stressMpa?: number | undefined
  mayCarryMpa?: number | undefined
  /** That stress is across the grain. */
  isAcrossGrain?: boolean | undefined
  /** More than its wood may carry. */
  tooWeak?: {wouldDo?: WouldDo | undefined} | undefined
  /** The strings come down at the octave, creep included, by more than they may lose of their height. */
  tooLimp?: {lostMm: number; mayLoseMm: number; wouldDo?: WouldDo | undefined} | undefined
  /** Over a neck that runs through: the daylight that lets it sink so far without touching, as thick as it had better be. */
  needsGapMm?: number | undefined
}

/** The part of their height at the octave that strings may lose to a sinking top: common practice, no source. */
const mayLose = 1 / 2
/** A plate that sinks by more than this part of its thickness is drawn taut like a skin: a usual bound, from memory. */
const taut = 1 / 2
/** The thickest top that is proposed (mm): common practice, no source. */
const thickestMm = inch(1 / 2)

/**
 * Say how far a top sinks under a bridge that stands on it, what that does to its wood and to the strings' height, and
 * the thickness that would do. It is a plate between the walls; the foot presses it evenly, spread to the middle of
 * its thickness, or with the whole of a block that is glued under it there. Sound holes, and blocks elsewhere but at
 * the ends, are left out. Undefined without a bridge on the top, its push, or a wood that is known.
 */
export function planLid(settled: Settled, around: OnLid): Lid | undefined {
  const {values} = settled
  const {sizes, seat, heights} = around
  const load = loadOn(values, around)
  const wood = woodOf(values.box?.top?.wood?.value ?? values.box?.wood?.value)
  if (!seat || !sizes?.inside || !load) return undefined
  if (seat.fromHeadEdgeMm < -1e-6 || seat.fromTailEdgeMm < -1e-6) return undefined
  const thicknessMm = sizes.outside.topMm
  const known = {pushN: load.pushN, momentNmm: load.momentNmm || undefined, thicknessMm, wood: wood?.row}
  const standsOn = wallUnder(seat, sizes)
  if (standsOn) return {...known, standsOn, sinkMm: 0, sinkAfterCreepMm: 0, rangeMm: [0, 0]}
  if (!wood) return undefined
  const grain = sizes.outside.widthMm > sizes.outside.lengthMm ? 'across' : 'along'
  const lid = {wood, grain, around, load} as const
  const likely = bothPressed(lid, thicknessMm)
  const given = midway(likely)
  const stiff = isSure(wood, 'stiff') ? likely.held : pressed(lid, thicknessMm, {as: 'stiff', isHeld: true})
  const limp = isSure(wood, 'limp') ? likely.loose : pressed(lid, thicknessMm, {as: 'limp', isHeld: false})
  const isEven = wood.kind === 'sheet' && !wood.plies
  const turned = {...lid, grain: grain === 'along' ? 'across' : 'along'} as const
  const mayLoseMm = heights && mayLose * heights.octaveMm
  const isLimp = ({sinkMm}: Given) => mayLoseMm !== undefined && (creep * sinkMm) / 2 > mayLoseMm + 1e-9
  const isWeak = ({stressMpa = 0, mayCarryMpa}: Pressed) =>
    mayCarryMpa !== undefined && stressMpa > mayCarryMpa
  const [breaks, sinksTooFar] = [isWeak(given), isLimp(given)]
  const wouldDo =
    breaks || sinksTooFar
      ? thickEnough(settled, thicknessMm, (mm) => {
          const tried = likelyPressed(lid, mm)
          return !isLimp(tried) && !isWeak(tried)
        })
      : undefined
  return {
    ...known,
    grain,
    sinkMm: given.sinkMm,
    sinkAfterCreepMm: creep * given.sinkMm,
    isTaut: creep * given.sinkMm > taut * thicknessMm || undefined,
    rangeMm: [stiff.sinkMm, limp.sinkMm].sort((a, b) => a - b),
    otherGrainMm: isEven ? undefined : likelyPressed(turned, thicknessMm).sinkMm,
    leanMm: load.momentNmm ? -given.slope * load.heightMm : undefined,
    stressMpa: given.stressMpa,
    mayCarryMpa: given.mayCarryMpa,
    isAcrossGrain: given.isAcrossGrain,
    needsGapMm: Math.max(leastGapMm, creep * (wouldDo ? likelyPressed(lid, wouldDo.mm) : given).sinkMm),
    tooWeak: breaks ? {wouldDo} : undefined,
    tooLimp: sinksTooFar ? {lostMm: (creep * given.sinkMm) / 2, mayLoseMm: mayLoseMm!, wouldDo} : undefined,
  }
}

/** Find the least thickness, to a mark of the ruler, that does, up to 1/2 in. */
function thickEnough(
  {rulerMm}: Settled,
  thicknessMm: number,
  does: (mm: number) => boolean,
): WouldDo | undefined {
  const marks = [Math.ceil(thicknessMm / rulerMm), Math.floor(thickestMm / rulerMm)] as const
  const mark = leastMark(marks, (one) => does(one * rulerMm))
  return mark === undefined ? undefined : {path: 'box.top.thickness', mm: mark * rulerMm}
}
