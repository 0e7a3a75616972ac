import type {BuildValues} from '../../build-file/schema.ts'
import {neckWidthAt} from '../neck-width-at.ts'
import type {Plan} from '../shape/plan.ts'
import {clearPost} from './clear-post.ts'
import type {NeckConcern} from './concern.ts'
import {type HeadLayout, headConflicts, type Post} from './head-layout.ts'
import type {NeckModel} from './neck-model.ts'

/** What tuners with a post through the head fit (mm): common practice, no source. */
const tunerThicknessMm = {least: (25.4 * 3) / 8, most: (25.4 * 3) / 4} as const

/** The first, small hole of a post hole that is drilled in two steps (mm): common practice, no source. */
const pilotMm = 25.4 / 8

/**
 * Look at the head from above: how thick it is and may be for its tuners, and what on it is too close, with the one
 * move of a post that would clear it. All in mm.
 */
export const neckHead: NeckConcern = ({model, settled, soFar}) => {
  const {head} = model
  if (!head) return {}
  const {values, rulerMm} = settled
  const layout = layoutOf(values, soFar, model)
  const conflicts = layout && headConflicts(layout)
  const retainer = values.head?.retainer?.value
  return {
    head: {
      joint: head.joint,
      angleDeg: head.angleDeg,
      lengthMm: head.lengthMm,
      ledgeMm: head.ledgeMm,
      thicknessMm: head.thicknessMm,
      ...(layout && {widthMm: layout.widthMm}),
      ...(values.tuners && {leastMm: tunerThicknessMm.least, mostMm: tunerThicknessMm.most}),
      ...(values.tuners?.['post-hole'] && {pilotMm}),
      ...(retainer && {retainer}),
      ...(conflicts?.length && {
        conflicts: conflicts.map((conflict) => {
          const wouldDo = clearPost(layout!, conflict, rulerMm)
          return {...conflict, ...(wouldDo && {wouldDo})}
        }),
      }),
    },
  }
}

function layoutOf(
  {tuners, strings}: BuildValues,
  soFar: Plan,
  {head, taper}: NeckModel,
): HeadLayout | undefined {
  const holeMm = tuners?.['post-hole']?.mm
  const widthMm = neckWidthAt(0, taper)
  if (!soFar.tuners || holeMm === undefined || widthMm === undefined || !head) return undefined
  const side = tuners?.side?.value
  const posts = soFar.tuners.map(({stationMm, offMm}, i): Post => {
    const nutOffMm = soFar.scale?.nutOffMm?.[i]
    const ownSide = side === 'bass' || side === 'treble' ? side : offMm > 0 ? 'treble' : 'bass'
    return {
      alongMm: -stationMm,
      offMm,
      side: ownSide,
      ...(nutOffMm !== undefined && {nutOffMm}),
      stringMm: strings?.[i]?.gauge?.mm ?? 0,
    }
  })
  const buttonMm = tuners?.button?.mm
  return {posts, holeMm, ...(buttonMm !== undefined && {buttonMm}), widthMm, lengthMm: head.lengthMm}
}
