import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Plan} from '../../plan/plan.ts'
import {box, type Convex} from '../solids/convex.ts'
import type {Solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import type {Done} from './neck-look.ts'
import type {Piece} from './scene.ts'

/** A plan whose box is known and lies somewhere along the neck. */
export interface BoxLook {
  plan: Plan
  wood: string | undefined
  topWood: string | undefined
  blockWood: (of: string) => string | undefined
  atMm: number
  tailMm: number
  /** The top's outer face, from the playing face up (mm). */
  topZ: number
  outside: NonNullable<NonNullable<Plan['box']>['outside']>
  /** Across, of a distance off the centre line: the player's bass side is nearer. */
  x: (offMm: number) => number
}

/** Draw up the box: back, two sides, two ends, top; `isOpen` leaves the top out. The neck's notches are cut once made. */
export function boxPieces(look: BoxLook, done: Done, isOpen = false): Piece[] {
  const {atMm, tailMm, topZ, outside, wood, topWood} = look
  const {widthMm, depthMm, sidesMm, topMm, backMm} = outside
  const half = widthMm / 2
  const [under, floor, low] = [topZ - topMm, topZ - depthMm + backMm, topZ - depthMm]
  const notch = done.has('notch-box') ? notches(look) : []
  const piece = (of: string, body: Convex, more: Partial<Piece> = {}): Piece => ({
    of,
    wood,
    solid: {of: [body], less: []},
    ...more,
  })
  const wall = (fromMm: number): Piece => ({
    ...piece(
      fromMm === atMm ? 'box.head-end' : 'box.tail-end',
      box([-half + sidesMm, fromMm, floor], [half - sidesMm, fromMm + sidesMm, under]),
    ),
    solid: {
      of: [box([-half + sidesMm, fromMm, floor], [half - sidesMm, fromMm + sidesMm, under])],
      less: notch,
    },
    grain: 'across',
  })
  return [
    piece('box.back', box([-half, atMm, low], [half, tailMm, floor])),
    piece('box.side-far', box([-half, atMm, floor], [-half + sidesMm, tailMm, under])),
    piece('box.side-near', box([half - sidesMm, atMm, floor], [half, tailMm, under])),
    wall(atMm),
    wall(tailMm - sidesMm),
    ...(isOpen ? [] : [piece('box.top', box([-half, atMm, under], [half, tailMm, topZ]), {wood: topWood})]),
  ]
}

/** What the neck takes out of the end walls, open upwards. */
export function notches({plan, atMm, tailMm, topZ, outside}: BoxLook): Convex[] {
  const {notch, joins} = plan.box?.neck ?? {}
  if (!notch) return []
  const cutter = (fromMm: number, wideMm: number): Convex =>
    box(
      [-wideMm / 2, fromMm - 1, topZ - notch.depthMm],
      [wideMm / 2, fromMm + outside.sidesMm + 1, topZ + 60],
    )
  return [
    cutter(atMm, notch.widthMm),
    ...(joins === 'through' ? [cutter(tailMm - outside.sidesMm, notch.tailWidthMm ?? notch.widthMm)] : []),
  ]
}

/** The blocks, against the top's inside where they are glued there, else on the back. */
export function blockPieces({plan, x, topZ, outside, blockWood}: BoxLook): Piece[] {
  return (plan.box?.blocks ?? []).map(
    ({of, stationMm, offMm, lengthMm, widthMm, thicknessMm = 15, glued}): Piece => {
      const high = glued === undefined || glued === 'under the top' || glued === 'at the ends'
      const z = high ? topZ - outside.topMm - thicknessMm : topZ - outside.depthMm + outside.backMm
      const from: Vec = [x(offMm) - widthMm / 2, stationMm - lengthMm / 2, z]
      const body = box(from, [from[0] + widthMm, from[1] + lengthMm, z + thicknessMm])
      const solid: Solid = {of: [body], less: []}
      return {of, wood: blockWood(of), solid, grain: widthMm > lengthMm ? 'across' : 'along'}
    },
  )
}

/** What the build says of its woods, as far as the plan does not. */
export interface WoodsBeside {
  box?: string | undefined
  top?: string | undefined
  plate?: string | undefined
  blocks?: Readonly<Record<string, string | undefined>>
}

/** What of a box pictures ask for, once it is known. */
export function boxLook(plan: Plan, woods: WoodsBeside, x: (offMm: number) => number): BoxLook | undefined {
  const {box: known, outline} = plan
  if (!known?.outside || known.atMm === undefined) return undefined
  return {
    plan,
    wood: woods.box,
    topWood: woods.top ?? woods.box,
    blockWood: (of) => woods.blocks?.[of],
    atMm: known.atMm,
    tailMm: known.atMm + known.outside.lengthMm,
    topZ: -(known.neck?.aboveTopMm ?? outline?.neck?.aboveTopMm ?? outline?.neck?.thicknessMm ?? 0),
    outside: known.outside,
    x,
  }
}

/** Name the woods that the plan has no place for. */
export function woodsBeside({box, head}: BuildValues): WoodsBeside {
  const blocks = (box?.blocks ?? []).map((block, i) => [`box.blocks.${i + 1}`, block.wood?.value] as const)
  return {
    box: box?.wood?.value,
    top: box?.top?.wood?.value,
    plate: head?.plate?.wood?.value,
    blocks: Object.fromEntries([...blocks, ['box.end-block', box?.['end-block']?.wood?.value]]),
  }
}
