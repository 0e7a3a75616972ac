import {inch} from '../../tables/units.ts'
import type {Conflict, ConflictKind} from '../kit/conflicts.ts'
import {type Side, sideOf} from '../kit/sides.ts'
import {toMark, type WouldDo} from '../kit/would-do.ts'

/** A tuner's post on the head's face, and the string that runs to it (all mm). */
export interface Post {
  /** Along the head's face from the nut line, positive towards the head end. */
  alongMm: number
  offMm: number
  /** The side its button stands out on. */
  side: Side
  /** Where its string crosses the nut line, off the centre line. */
  nutOffMm: number | undefined
  stringMm: number
}

/** The head as seen from above, with what each post and button takes (mm). */
export interface HeadLayout {
  posts: Post[]
  holeMm: number
  buttonMm: number | undefined
  widthMm: number
  lengthMm: number
}

/** Two things on the head that are in each other's way, or one that is too near an edge; counted from 0. */
interface Crowding {
  kind: Extract<ConflictKind, 'post-edge' | 'post-post' | 'button-button' | 'string-post' | 'string-string'>
  post: number
  other?: number | undefined
  /** What is between them, or to the edge (mm). */
  gapMm: number
  /** What there should be (mm). */
  needsMm: number
}

/** What is kept around a post hole (mm): common practice, no source. */
export const headKeepsMm = {edge: inch(1 / 8), holes: inch(1 / 4)}

/** A tuner's post is no thicker than this (mm), whatever bushing its hole takes: common practice, no source. */
const postMostMm = 6

const slackMm = 1e-6

/** List what is too close on the head, each with the one move of a post that would clear it. */
export function planHeadConflicts(layout: HeadLayout | undefined, rulerMm: number): Conflict[] {
  if (!layout) return []
  const crowdings = headCrowdings(layout)
  const before = new Set(crowdings.map(named))
  return crowdings.map((crowding) => {
    const {kind, post, other, gapMm, needsMm} = crowding
    const posts = other === undefined ? [post] : [post, other]
    const wouldDo = clearPost(layout, before, crowding, rulerMm)
    return {kind, of: `tuners.at.${post + 1}`, posts, gapMm, needsMm, wouldDo}
  })
}

/** Tell whether nothing on the head is in another's way. */
export const isHeadClear = (layout: HeadLayout): boolean =>
  layout.posts.every(
    (_, post) =>
      !edgeConflict(layout, post) &&
      layout.posts.slice(0, post).every((__, other) => !pairConflict(layout, post, other)),
  )

/**
 * Find what is too close on the head: a hole near an edge or another hole, buttons that touch on one side, a string
 * that crosses another or runs into another's post. Strings leave their posts on the inner side. A pair is named once,
 * by the first of these.
 */
function headCrowdings(layout: HeadLayout): Crowding[] {
  const {posts} = layout
  const pairs = posts.flatMap((_, post) => posts.slice(0, post).map((__, other) => [post, other] as const))
  return [
    ...posts.flatMap((_, post) => edgeConflict(layout, post) ?? []),
    ...pairs.flatMap(([post, other]) => pairConflict(layout, post, other) ?? []),
  ]
}

/** Find what of it one post has a part in. */
const crowdingsOf = (layout: HeadLayout, post: number): Crowding[] =>
  [
    edgeConflict(layout, post),
    ...layout.posts.map((_, other) =>
      other === post ? undefined : pairConflict(layout, Math.max(post, other), Math.min(post, other)),
    ),
  ].filter((one) => one !== undefined)

const pairConflict = (layout: HeadLayout, post: number, other: number): Crowding | undefined =>
  holesConflict(layout, post, other) ??
  buttonsConflict(layout, post, other) ??
  stringsConflict(layout, post, other)

function edgeConflict({posts, holeMm, widthMm, lengthMm}: HeadLayout, post: number): Crowding | undefined {
  const {alongMm, offMm} = posts[post]!
  const gapMm = Math.min(widthMm / 2 - Math.abs(offMm), lengthMm - alongMm) - holeMm / 2
  return gapMm < headKeepsMm.edge - slackMm
    ? {kind: 'post-edge', post, gapMm, needsMm: headKeepsMm.edge}
    : undefined
}

function holesConflict({posts, holeMm}: HeadLayout, post: number, other: number): Crowding | undefined {
  const [a, b] = [posts[post]!, posts[other]!]
  const gapMm = Math.hypot(a.alongMm - b.alongMm, a.offMm - b.offMm) - holeMm
  return gapMm < headKeepsMm.holes - slackMm
    ? {kind: 'post-post', post, other, gapMm, needsMm: headKeepsMm.holes}
    : undefined
}

function buttonsConflict({posts, buttonMm}: HeadLayout, post: number, other: number): Crowding | undefined {
  const [a, b] = [posts[post]!, posts[other]!]
  if (buttonMm === undefined || a.side !== b.side) return undefined
  const gapMm = Math.abs(a.alongMm - b.alongMm) - buttonMm
  return gapMm < -slackMm ? {kind: 'button-button', post, other, gapMm, needsMm: 0} : undefined
}

function stringsConflict(layout: HeadLayout, post: number, other: number): Crowding | undefined {
  const [far, near] =
    layout.posts[post]!.alongMm >= layout.posts[other]!.alongMm ? [post, other] : [other, post]
  const [long, short] = [layout.posts[far]!, layout.posts[near]!]
  if (long.nutOffMm === undefined || short.nutOffMm === undefined || short.alongMm <= 0) return undefined
  const radiusMm = Math.min(layout.holeMm, postMostMm) / 2
  const passesMm = long.nutOffMm + ((leavesAt(long, radiusMm) - long.nutOffMm) * short.alongMm) / long.alongMm
  const gapMm = Math.abs(passesMm - short.offMm) - radiusMm - long.stringMm / 2
  if (gapMm < -slackMm) return {kind: 'string-post', post: far, other: near, gapMm, needsMm: 0}
  const before = Math.sign(long.nutOffMm - short.nutOffMm)
  const after = Math.sign(passesMm - short.offMm)
  return before !== 0 && before !== after
    ? {kind: 'string-string', post: far, other: near, gapMm, needsMm: 0}
    : undefined
}

/** Where a string leaves its post, off the centre line: on the side towards it. */
function leavesAt({offMm}: Post, radiusMm: number): number {
  return offMm - Math.sign(offMm) * Math.min(radiusMm, Math.abs(offMm))
}

/** Coarser steps where a fine ruler would make the search long. */
const mostSteps = 400

/**
 * Find the one value that takes a conflict away and brings none that was not there before: the post's place along the
 * head or off the centre line, by the ruler, the shortest move first. `at` and `off` are as the build file has them (mm;
 * `at` negative). Undefined where no single move does.
 */
function clearPost(
  layout: HeadLayout,
  before: ReadonlySet<string>,
  crowding: Crowding,
  rulerMm: number,
): WouldDo | undefined {
  const own = named(crowding)
  const movable = crowding.other === undefined ? [crowding.post] : [crowding.post, crowding.other]
  const isCleared = (post: number, moved: {alongMm?: number; offMm?: number}) => {
    const posts = layout.posts.with(post, {...layout.posts[post]!, ...moved})
    return crowdingsOf({...layout, posts}, post).every((left) => {
      const name = named(left)
      return name !== own && before.has(name)
    })
  }
  const step = rulerMm * Math.max(1, Math.ceil(layout.lengthMm / rulerMm / mostSteps))
  for (let moveMm = 0; moveMm <= layout.lengthMm; moveMm += step)
    for (const post of movable)
      for (const sign of [1, -1] as const) {
        const {alongMm, offMm, side} = layout.posts[post]!
        const along = toMark(alongMm + sign * moveMm, rulerMm, sign < 0 ? 'down' : 'up')
        const off = toMark(offMm + sign * moveMm, rulerMm, sign < 0 ? 'down' : 'up')
        const staysOnSide = off !== 0 && sideOf(off, layout.posts.length) === side
        if (along > 0 && isCleared(post, {alongMm: along})) return {path: `tuners.at.${post + 1}`, mm: -along}
        if ((staysOnSide || offMm === 0) && isCleared(post, {offMm: off}))
          return {path: `tuners.off.${post + 1}`, mm: off}
      }
  return undefined
}

const named = ({kind, post, other}: Crowding) => `${kind} ${post} ${other}`
