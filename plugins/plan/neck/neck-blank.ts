import type {NeckConcern} from './concern.ts'
import {headPoint} from './head-shape.ts'

/** Squared off at each end of the stick (mm): common practice, no source. */
const squareMm = 25.4 / 2

/**
 * Say how long (mm) a stick to start from, 1/2 in more at each end included.
 * A scarf: the piece sawn off is turned over and glued under the neck's end, so that the sawn slope of the neck is the
 * first of the head's face. The stick is bent, not lengthened: along the face it gains t·tan(θ/2), which is
 * t/sin θ − t/tan θ, and the saw takes kerf/sin θ. A head sawn out of the solid leans, so it takes its length times
 * cos θ, and a stick as thick as it reaches down; a straight one takes the length as it is.
 */
export const neckBlank: NeckConcern = ({model: {head, layup}, settled, neck}) => {
  const {budget} = neck
  if (!budget || !head) return {}
  const leanRad = (head.angleDeg * Math.PI) / 180
  const ends = 2 * squareMm
  if (head.joint === 'straight') return {budget: {...budget, squareMm, blankMm: budget.lengthMm + ends}}
  const end = headPoint(head, head.lengthMm)
  if (head.joint === 'solid') {
    const blankMm = budget.lengthMm - head.lengthMm + end.behindMm + ends
    const reachesMm = end.depthMm + head.thicknessMm * Math.cos(leanRad)
    return {budget: {...budget, squareMm, blankMm, blankThicknessMm: Math.max(reachesMm, layup.stickMm)}}
  }
  const gainMm = head.sawnMm * Math.tan(leanRad / 2)
  const kerfMm = (settled.values.saw?.kerf?.mm ?? 0) / Math.sin(leanRad)
  return {
    budget: {
      ...budget,
      squareMm,
      blankMm: budget.lengthMm - gainMm + kerfMm + ends,
      blankGainMm: gainMm,
      blankKerfMm: kerfMm,
    },
  }
}
