import type {Setback} from './intonation.ts'
import type {PlanPart} from './part.ts'
import type {StraightSaddle} from './saddle.ts'

export interface Bridge {
  stationMm: number
  alongMm?: number | undefined
  /** neck or top. */
  on?: string | undefined
  /** From what it stands on. */
  heightMm?: number | undefined
  /** Down from the bridge to the nut. */
  frontAngleDeg?: number | undefined
  /** Down from the bridge to the anchors. */
  breakAngleDeg?: number | undefined
  downforceN?: number | undefined
  setbacks?: Setback[] | undefined
  /** Over all strings and their first twelve lines, with nothing set back. */
  drawnWorstCents?: number | undefined
  /** The straight slanted saddle that fits best. */
  slantedSaddle?: StraightSaddle | undefined
  /** The same, square to the neck. */
  squareSaddle?: StraightSaddle | undefined
}

/**
 * Place the bridge: its line lies at the scale length (mm from the nut line, and along the box where that lies
 * somewhere); what it stands on, where the file or the way the neck joins says so.
 */
export const bridgePlace: PlanPart = ({values}, soFar) => {
  const stationMm = values.scale?.length?.mm
  if (stationMm === undefined) return {}
  const atMm = soFar.box?.atMm
  const on = values.bridge?.on?.value
  return {
    bridge: {
      ...soFar.bridge,
      stationMm,
      ...(atMm !== undefined && {alongMm: stationMm - atMm}),
      ...(on && {on}),
    },
  }
}
