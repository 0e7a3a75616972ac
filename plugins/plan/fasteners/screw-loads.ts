import type {JointPull} from './joint-pull.ts'

/** The seat of the neck: where it touches the box, in mm from the nut line, and how far below the playing face. */
export interface Seat {
  fromMm: number
  toMm: number
  belowFaceMm: number
}

/**
 * Share the pull on the neck among screws driven across the seat, at these stations (mm), as a stiff bar on springs
 * alike: the lift evenly, its moment by distance from their middle; at one station alone, by the lever to the far end
 * of the seat. N for each screw, drawing it out; none where it is pressed home.
 */
export function screwLoads(stationsMm: readonly number[], pull: JointPull, seat: Seat): number[] {
  const count = stationsMm.length
  const middleMm = stationsMm.reduce((sum, one) => sum + one, 0) / count
  const momentNmm = pull.tailwardN * (pull.heightMm + seat.belowFaceMm)
  const spreadMm2 = stationsMm.reduce((sum, one) => sum + (one - middleMm) ** 2, 0)
  if (spreadMm2 < 1) {
    const about = (edgeMm: number) =>
      edgeMm === middleMm ? 0 : (pull.upN * (edgeMm - pull.stationMm) + momentNmm) / (edgeMm - middleMm)
    const mostN = Math.max(0, pull.upN, about(seat.fromMm), about(seat.toMm))
    return stationsMm.map(() => mostN / count)
  }
  const tiltNmm = pull.upN * (pull.stationMm - middleMm) - momentNmm
  return stationsMm.map((one) => Math.max(0, pull.upN / count + (tiltNmm * (one - middleMm)) / spreadMm2))
}

/** Share the lift of a neck that runs through among its screws: both notches keep it from tilting. N for each. */
export function throughScrewLoads(count: number, pull: JointPull): number[] {
  return Array.from({length: count}, () => Math.max(0, pull.upN) / count)
}

/**
 * Share the pull on a neck that ends at the box among screws along it, through the wall into its end: it turns about
 * the upper edge of its end face, and they sit half its thickness (mm) below that edge. N for each.
 */
export function endScrewLoads(count: number, pull: JointPull, seat: Seat): number[] {
  const atWallMm = pull.heightMm + (pull.upN / pull.tailwardN || 0) * (seat.fromMm - pull.stationMm)
  const eachN = Math.max(0, (pull.tailwardN * atWallMm) / (seat.belowFaceMm / 2) / count)
  return Array.from({length: count}, () => eachN)
}
