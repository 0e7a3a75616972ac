import type {PlanPart} from './part.ts'

/**
 * Say where the box lies, in mm from the nut line: its head-side and tail edges, and the bridge line along it
 * (0 at the head side, 1 at the tail). `box.at` places it, or else `bridge.from-tail`; where the file gives both,
 * `atByTailMm` is where the second would put the head-side edge. Absent without a scale length or a place.
 */
export const boxPlace: PlanPart = ({values}, soFar) => {
  const {box, bridge} = values
  const lengthMm = box?.length?.mm
  const bridgeMm = values.scale?.length?.mm
  const fromTail = bridge?.['from-tail']
  const atByTailMm =
    fromTail && bridgeMm !== undefined && lengthMm !== undefined
      ? bridgeMm + fromTail.mm - lengthMm
      : undefined
  const atMm = box?.at?.mm ?? atByTailMm
  if (!box || atMm === undefined) return {}
  return {
    box: {
      ...soFar.box,
      atMm,
      placedBy: box.at || !fromTail || fromTail.assumed ? 'box.at' : 'bridge.from-tail',
      ...(lengthMm !== undefined && {tailMm: atMm + lengthMm}),
      ...(lengthMm !== undefined && bridgeMm !== undefined && {bridgeFraction: (bridgeMm - atMm) / lengthMm}),
      ...(box.at && atByTailMm !== undefined && !fromTail?.assumed && {atByTailMm}),
    },
  }
}
