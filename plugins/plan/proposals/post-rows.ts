import {inch} from '../../tables/units.ts'
import {toMark} from '../kit/would-do.ts'
import {type HeadLayout, headKeepsMm, isHeadClear, type Post} from '../neck/head-layout.ts'
import {stringAngleDeg} from '../neck/string-angles.ts'
import {behindNut, type HeadShape} from '../neck-shape/head-shape.ts'

/** Neighbours along the head stand no further apart (mm), however long it is: common practice, no source. */
const mostApartMm = inch(1.25)

/** A string that goes down this much behind the nut lies well in its slot (degrees): common practice, no source. */
const easyDeg = 6

/** The head that posts are to find room on, and the strings that run to them; in mm. */
export interface Room {
  head: HeadShape
  widthMm: number
  holeMm: number
  buttonMm: number
  nutOffMm: readonly number[]
  stringsMm: readonly number[]
  /** How far from the nut a packet's string reaches, past its anchor. */
  reachMm: readonly number[]
  /** String at the nut above the playing face, and at the post above the head's. */
  nutMm: number | undefined
  postHeightMm: number
}

interface Posts {
  atMm: readonly number[]
  offMm: readonly number[]
  flattestDeg: number
}

type Side = 'bass' | 'treble' | 'both'

export type Ruler = {units: 'in' | 'mm'; rulerMm: number}

/** Try the widest spacing first and the nearest place behind the nut; prefer strings that go down well. */
export function findPosts(room: Room, side: Side, ruler: Ruler): Posts | undefined {
  const {head, holeMm, buttonMm, nutOffMm} = room
  const leastMm = Math.max(head.ledgeMm + headKeepsMm.edge + holeMm / 2, buttonMm / 2 + headKeepsMm.edge)
  const mostMm = head.lengthMm - headKeepsMm.edge - holeMm / 2
  const gaps = nutOffMm.length - 1
  const closestMm = side === 'both' ? buttonMm / 2 : buttonMm
  const widestMm = gaps > 0 ? Math.min(mostApartMm, (mostMm - leastMm) / gaps) : 0
  let easiest: Posts | undefined
  for (const apartMm of stepsDown(widestMm, gaps > 0 ? Math.min(closestMm, widestMm) : 0, ruler.rulerMm)) {
    const lastMm = mostMm - gaps * apartMm
    for (const firstMm of stepsUp(leastMm, lastMm, ruler.rulerMm)) {
      const posts = placed(room, side, {firstMm, apartMm}, ruler)
      if (posts && posts.flattestDeg >= easyDeg) return posts
      if (posts && !(easiest && easiest.flattestDeg >= posts.flattestDeg)) easiest = posts
    }
  }
  return easiest
}

const mostSteps = 12

function stepsDown(most: number, least: number, rulerMm: number): number[] {
  return stepsUp(least, most, rulerMm).reverse()
}

/** List places from one to another, at most a dozen, on marks of the ruler or coarser. */
function stepsUp(least: number, most: number, rulerMm: number): number[] {
  if (most < least - 1e-9) return []
  const stepMm = Math.max(rulerMm, (most - least) / mostSteps)
  const count = Math.floor((most - least) / stepMm + 1e-9)
  return Array.from({length: count + 1}, (_, i) => least + i * stepMm)
}

/** Lay posts out at a spacing, as far out as leaves nothing in another's way; undefined where nothing does. */
function placed(
  room: Room,
  side: Side,
  {firstMm, apartMm}: {firstMm: number; apartMm: number},
  {rulerMm}: Ruler,
): Posts | undefined {
  const {widthMm, holeMm, nutOffMm, reachMm} = room
  const order = orderAlong(nutOffMm.length, side)
  const atMm = order.map((rank) => toMark(-(firstMm + rank * apartMm), rulerMm, 'down'))
  if (atMm.some((mm, i) => -mm > reachMm[i]! + 1e-6)) return undefined
  const angles = atMm.map((mm) => angleOf(room, -mm))
  if (angles.some((deg) => deg > stringAngleDeg.most)) return undefined
  const limitMm = widthMm / 2 - headKeepsMm.edge - holeMm / 2
  const outs = side === 'both' ? stepsDown(limitMm, limitMm / 3, rulerMm) : [limitMm]
  for (const outMm of outs) {
    const offMm = nutOffMm.map((nutMm, i) => {
      const mm = toMark(side === 'both' ? outMm : Math.min(Math.abs(nutMm), limitMm), rulerMm, 'down')
      const isBass = side === 'both' ? i < Math.ceil(nutOffMm.length / 2) : nutMm < 0
      return isBass ? 0 - mm : mm
    })
    if (isHeadClear(layoutOf(room, side, atMm, offMm))) return {atMm, offMm, flattestDeg: Math.min(...angles)}
  }
  return undefined
}

/** Say which place along the head each string takes, counted from the nut: outer strings before inner ones. */
function orderAlong(count: number, side: Side): number[] {
  const all = Array.from({length: count}, (_, i) => i)
  if (side === 'bass') return all
  if (side === 'treble') return all.map((i) => count - 1 - i)
  const bass = Math.ceil(count / 2)
  return all.map((i) => (i < bass ? 2 * i : 2 * (count - 1 - i) + 1))
}

function layoutOf(
  {head, widthMm, holeMm, buttonMm, nutOffMm, stringsMm}: Room,
  side: Side,
  atMm: readonly number[],
  offMm: readonly number[],
): HeadLayout {
  const posts = atMm.map(
    (mm, i): Post => ({
      alongMm: -mm,
      offMm: offMm[i]!,
      side: side === 'both' ? (offMm[i]! > 0 ? 'treble' : 'bass') : side,
      nutOffMm: nutOffMm[i],
      stringMm: stringsMm[i]!,
    }),
  )
  return {posts, holeMm, buttonMm, widthMm, lengthMm: head.lengthMm}
}

/** How much a string goes down behind the nut (degrees); well enough where its height is not known. */
const angleOf = ({head, nutMm, postHeightMm}: Room, postMm: number): number =>
  nutMm === undefined ? easyDeg : behindNut(head, {nutMm, postMm, postHeightMm}).angleDeg
