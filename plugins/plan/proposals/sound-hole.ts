import {soundHoleBits} from '../../tables/drills.ts'
import {centsOf, inch} from '../../tables/units.ts'
import {airResonanceHz, planAir} from '../box/box-air.ts'
import {planBridgeSeat} from '../box/bridge-seat.ts'
import {roomAround, soundHoleKeepsMm, type TopView} from '../box/sound-holes.ts'
import {noteFrequencyHz} from '../kit/notes.ts'
import {markAt, sizeOf, type Written} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import {toMark} from '../kit/would-do.ts'
import type {Around, Propose} from './around.ts'

/**
 * Where the air of a box answers, over the lowest open string: half an octave, so that it carries the lowest notes. A
 * violin's does at 275 Hz over 196, a guitar's at 100 over 82; from memory.
 */
const overLowest = Math.SQRT2
/** Two holes are proposed only where one is further off than this (cents): common practice, no source. */
const secondHoleCents = 200

/**
 * Propose the sound hole: of the bits that are sold and fit the one (or two alike, one at each side) with which the air
 * in this box comes nearest to half an octave over the lowest string, where the wood around it is widest: beside the
 * neck, clear of walls, blocks and bridge; of places alike the one nearest to the middle between the box's end and the
 * bridge.
 */
export const proposeHole: Propose = (settled, around) => {
  const {values, place, sizes} = around
  const {strings = [], box} = values
  if (!box || box.holes || !place || !sizes?.inside || strings.length === 0) return []
  const lowest = Math.min(...strings.map(({note}) => note?.midi ?? Number.NaN))
  if (Number.isNaN(lowest)) return [{key: 'box', open: 'no notes'}]
  const targetHz = overLowest * noteFrequencyHz(lowest, settled.referenceHz)
  const view = viewOf(settled, around)
  const volumeL = planAir(settled, {...around, scale: undefined, strings: undefined})?.volumeL ?? 0
  const offBy = (bit: Written, count: number) => {
    const hz = airResonanceHz(volumeL, sizes.outside.topMm, Array(count).fill(bit.mm))
    if (hz === undefined) return Number.POSITIVE_INFINITY
    return Math.abs(centsOf(hz / targetHz))
  }
  const {one, two} = roomiest(view, settled)
  const [best] = soundHoleBits[settled.units]
    .map((text) => sizeOf(text, text, settled))
    .flatMap((bit) => [
      {bit, at: one, count: 1, cost: offBy(bit, 1)},
      {bit, at: two, count: 2, cost: offBy(bit, 2) + secondHoleCents},
    ])
    .filter(({bit, at}) => at && bit.mm / 2 <= at.roomMm)
    .sort((a, b) => a.cost - b.cost)
  if (!best?.at) return [{key: 'box', open: 'no room for a hole'}]
  const [along, off] = [best.at.alongMm, best.at.offMm].map((mm) => markAt(mm, settled, 'down').text)
  const hole = (offText: string) => ({diameter: best.bit.text, along: along!, off: offText})
  const holes = best.count === 2 ? [hole(`-${off}`), hole(off!)] : [hole(off!)]
  return [{key: 'box', texts: {box: {holes}}, why: 'hole by the air'}]
}

function viewOf(settled: Settled, {place, sizes, neck, taper, blocks, bridge}: Around): TopView {
  const outside = sizes?.outside
  const seat = planBridgeSeat(settled, bridge, place, outside)
  return {place, outside, neck, taper, blocks, bridge, bridgeSeat: seat?.bridgeSeat}
}

/** Places are tried this far apart (mm), or further on a large box. */
const stepMm = inch(1 / 4)
const mostSteps = 24
/** Rooms that differ by less than this (mm) are alike. */
const alikeMm = 0.5

interface Place {
  alongMm: number
  offMm: number
  /** The widest radius that leaves wood enough all round. */
  roomMm: number
  farMm: number
}

/** Find where one hole, and where one of two beside the centre line, has most room (mm). */
function roomiest(view: TopView, {rulerMm}: Settled): {one?: Place | undefined; two?: Place | undefined} {
  const {place, outside, bridge} = view
  if (!place || !outside) return {}
  const {lengthMm, widthMm} = outside
  const wishMm = Math.min((bridge?.stationMm ?? place.atMm + lengthMm / 2) - place.atMm, lengthMm) / 2
  const roomAt = roomAround(view)
  const along = marks(0, lengthMm, rulerMm)
  let [one, two]: (Place | undefined)[] = []
  for (const offMm of marks(0, widthMm / 2, rulerMm))
    for (const alongMm of along) {
      const roomMm = roomAt({stationMm: place.atMm + alongMm, offMm, diameterMm: 0})
      const here = {alongMm, offMm, roomMm, farMm: Math.abs(alongMm - wishMm)}
      one = roomier(one, here)
      two = roomier(two, {...here, roomMm: Math.min(roomMm, offMm - soundHoleKeepsMm.hole / 2)})
    }
  return {one, two}
}

function roomier(best: Place | undefined, here: Place): Place {
  if (!best) return here
  const isAlike = Math.abs(here.roomMm - best.roomMm) < alikeMm
  return (isAlike ? here.farMm < best.farMm : here.roomMm > best.roomMm) ? here : best
}

/** List places on marks of the ruler from one place to another (mm). */
function marks(fromMm: number, toMm: number, rulerMm: number): number[] {
  const apartMm = Math.max(stepMm, (toMm - fromMm) / mostSteps)
  const count = Math.floor((toMm - fromMm) / apartMm + 1e-9)
  return Array.from({length: count + 1}, (_, i) => toMark(fromMm + i * apartMm, rulerMm, 'down'))
}
