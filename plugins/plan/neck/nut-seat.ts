import type {NeckConcern} from './concern.ts'
import {sectionAt} from './section-at.ts'

/** Wood to be left under the nut's groove (mm): common practice, no source. */
const underGrooveMm = (25.4 * 3) / 8

/**
 * Measure the wood left under the nut's groove (mm), the scarf's overlap counted: behind the place where the back
 * turns into the head, the piece glued under it adds what the head has gone down by.
 */
export const nutSeat: NeckConcern = ({model, cut, settled}) => {
  const grooveMm = settled.values.nut?.groove?.mm
  const section = sectionAt(model, 0, cut)
  if (grooveMm === undefined || !section) return {}
  const {head} = model
  const leanRad = ((head?.angleDeg ?? 0) * Math.PI) / 180
  const backTurnsMm = head ? -head.ledgeMm + head.sawnMm * Math.tan(leanRad / 2) : 0
  const overlapMm = head?.joint === 'scarf' ? Math.max(backTurnsMm, 0) * Math.tan(leanRad) : 0
  const thicknessMm = section.thicknessMm + overlapMm
  return {
    nutSeat: {
      grooveMm,
      leftMm: thicknessMm - grooveMm,
      leastMm: underGrooveMm,
      deepestMm: thicknessMm - underGrooveMm,
      overlapMm,
    },
  }
}
