import type {Box} from '../box/box.ts'
import type {JointPull} from '../joint/joint-pull.ts'
import type {EndJoint} from './end-joint.ts'

/** As much of a screw as its share of the pull goes by. */
interface Driven {
  stationMm: number
  way: 'up' | 'down' | 'along'
  joinsNeck: boolean
  /** It holds a top that comes off. */
  holdsTop?: true | undefined
  /** Below the box's top, along the neck only. */
  downMm?: number | undefined
}

/** What the strings pull at, and how the neck is held. */
interface Joint {
  pull: JointPull | undefined
  end: EndJoint | undefined
  box: Pick<Box, 'atMm' | 'tailMm' | 'neck'>
}

/**
 * Give what the strings ask of each screw (N), those across the neck's seat and those along the neck apart; nothing of
 * a screw that does not join the neck, and undefined where the strings' pull on the neck is not known.
 */
export function jointLoads(
  screws: readonly Driven[],
  {pull, end, box: {atMm, tailMm, neck}}: Joint,
): (number | undefined)[] {
  const loads: (number | undefined)[] = screws.map(({joinsNeck}) => (joinsNeck ? undefined : 0))
  if (!pull || atMm === undefined || tailMm === undefined || !neck) return loads
  const seat: Seat = {
    fromMm: atMm,
    toMm: Math.min(neck.tailMm ?? tailMm, tailMm),
    belowFaceMm: neck.thicknessMm,
  }
  const ofTop = screws.flatMap(({holdsTop}, i) => (holdsTop ? [i] : []))
  // A neck on top pulls at the top, and that at the screws which hold it on the walls.
  if (neck.joins === 'on top' && ofTop.length) {
    const topSeat = {fromMm: atMm, toMm: tailMm, belowFaceMm: neck.thicknessMm}
    const shares = screwLoads(
      ofTop.map((i) => screws[i]!.stationMm),
      pull,
      topSeat,
    )
    for (const [k, i] of ofTop.entries()) loads[i] = shares[k]
  }
  for (const isAlong of [false, true]) {
    const which = screws.flatMap((one, i) => (one.joinsNeck && (one.way === 'along') === isAlong ? [i] : []))
    if (!which.length) continue
    const stations = which.map((i) => screws[i]!.stationMm)
    const shares = isAlong
      ? endScrewLoads(
          which.map((i) => screws[i]!.downMm),
          end,
        )
      : neck.joins === 'through'
        ? throughScrewLoads(which.length, pull)
        : screwLoads(stations, pull, seat)
    for (const [k, i] of which.entries()) loads[i] = shares[k]
  }
  return loads
}

/** The seat of the neck: where it touches the box, in mm from the nut line, and how far below the playing face. */
interface Seat {
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
function throughScrewLoads(count: number, pull: JointPull): number[] {
  return Array.from({length: count}, () => Math.max(0, pull.upN) / count)
}

/**
 * Share the moment on a neck that ends at the box among screws along it, each at its depth (mm) below the box's top. The
 * neck turns as one piece about the upper edge of the box's end, so a screw is drawn by its distance below that edge,
 * and all of them together balance the strings: F = moment·d / Σd². N for each; undefined where none has a lever.
 */
export function endScrewLoads(
  downsMm: readonly (number | undefined)[],
  joint: Pick<EndJoint, 'momentNmm' | 'edgeMm'> | undefined,
): (number | undefined)[] {
  if (!joint) return downsMm.map(() => undefined)
  const levers = downsMm.map((down = 0) => Math.max(0, down - joint.edgeMm))
  const sum = levers.reduce((all, lever) => all + lever ** 2, 0)
  const momentNmm = Math.max(0, joint.momentNmm)
  return levers.map((lever) => (sum < leastLeverMm ** 2 ? undefined : (momentNmm * lever) / sum))
}

/** A screw this near (mm) the edge that the neck turns about has no lever at all. */
const leastLeverMm = 1e-3
