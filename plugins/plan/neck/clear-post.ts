import {toMark} from '../to-mark.ts'
import {type Conflict, type HeadLayout, headConflicts} from './head-layout.ts'

/** Coarser steps where a fine ruler would make the search long. */
const mostSteps = 400

/**
 * Find the one value that takes a conflict away and brings no other: the post's place along the head or off the centre
 * line, by the ruler, the shortest move first. `at` and `off` are as the build file has them (mm; `at` negative).
 * Undefined where no single move does.
 */
export function clearPost(
  layout: HeadLayout,
  conflict: Conflict,
  rulerMm: number,
): {path: string; mm: number} | undefined {
  const before = new Set(headConflicts(layout).map(named))
  const movable = conflict.other === undefined ? [conflict.post] : [conflict.post, conflict.other]
  const isCleared = (post: number, moved: {alongMm?: number; offMm?: number}) => {
    const posts = layout.posts.map((one, i) => (i === post ? {...one, ...moved} : one))
    const left = headConflicts({...layout, posts}).map(named)
    return !left.includes(named(conflict)) && left.every((one) => before.has(one))
  }
  const step = rulerMm * Math.max(1, Math.ceil(layout.lengthMm / rulerMm / mostSteps))
  for (let moveMm = 0; moveMm <= layout.lengthMm; moveMm += step)
    for (const post of movable)
      for (const sign of [1, -1] as const) {
        const {alongMm, offMm, side} = layout.posts[post]!
        const along = toMark(alongMm + sign * moveMm, rulerMm, sign < 0 ? 'down' : 'up')
        const off = toMark(offMm + sign * moveMm, rulerMm, sign < 0 ? 'down' : 'up')
        const staysOnSide = side === 'bass' ? off < 0 : off > 0
        if (along > 0 && isCleared(post, {alongMm: along})) return {path: `tuners.at.${post + 1}`, mm: -along}
        if ((staysOnSide || offMm === 0) && isCleared(post, {offMm: off}))
          return {path: `tuners.off.${post + 1}`, mm: off}
      }
  return undefined
}

const named = ({kind, post, other}: Conflict) => `${kind} ${post} ${other}`
