import type {PlanPart} from '../part.ts'

/** A sound hole this wide lets two fingers and a jack through (mm): common practice, no source. */
const handMm = 2 * 25.4

/** Say how the top is held, and whether the box, once it is closed, lets nobody in any more. */
export const wayIn: PlanPart = ({values}, soFar) => {
  const held = values.box?.top?.held?.value
  if (!held) return {}
  const isWide = values.box?.holes?.some(({diameter}) => (diameter?.mm ?? 0) >= handMm) ?? false
  return {box: {...soFar.box, topHeld: held, isShut: held === 'glued' && !isWide}}
}
