import type {PlanPart} from '../part.ts'

/**
 * Say where the foot of a bridge that stands on the top comes to stand, in mm: from the inside of the tail wall, and
 * from the box's two edges. A bridge without a foot's length counts as its line, one without a width as its strings.
 */
export const bridgeSeat: PlanPart = ({values}, soFar) => {
  const {box, bridge} = soFar
  if (bridge?.on !== 'top' || box?.atMm === undefined || box.tailMm === undefined || !box.outside) return {}
  const footMm = values.bridge?.foot?.mm ?? 0
  const fromTailEdgeMm = box.tailMm - (bridge.stationMm + footMm / 2)
  return {
    box: {
      ...box,
      bridgeSeat: {
        footMm,
        lengthMm: values.bridge?.length?.mm ?? values.spacing?.bridge?.mm ?? 0,
        fromTailEdgeMm,
        fromTailWallMm: fromTailEdgeMm - box.outside.sidesMm,
        fromHeadEdgeMm: bridge.stationMm - footMm / 2 - box.atMm,
      },
    },
  }
}
