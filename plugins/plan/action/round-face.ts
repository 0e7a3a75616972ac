import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Scale} from '../scale/scale.ts'

/**
 * Give the sagitta (mm) of a round face: how much lower it is so far off its middle than there, R − √(R² − x²).
 * Source: geometry. Undefined past the edge of the whole circle.
 */
export function sagittaMm(radiusMm: number, offMm: number): number | undefined {
  if (Math.abs(offMm) > radiusMm) return undefined
  return offMm ** 2 / (radiusMm + Math.sqrt(radiusMm ** 2 - offMm ** 2))
}

/** A string over a round fingerboard, against one over the middle of a flat one (mm). */
export interface OverRound {
  /** How much lower it stands at the nut. */
  nutDropMm: number
  /** How much lower it stands at the bridge. */
  bridgeDropMm: number
  /** How much higher it stands over its own part of the face than the drawing, at a part of the way from nut to bridge. */
  overFaceMm: (part: number) => number
}

/**
 * Set each string over its own part of a round face: its straight line passes the octave as high over it as drawn, and
 * the nut too, unless that is a straight rod, over which all strings lie level. Geometry of a circle. Undefined without
 * a radius, or where strings lie past the circle.
 */
export function stringsOverRound(
  {fingerboard, nut}: BuildValues,
  scale: Pick<Scale, 'nutOffMm' | 'bridgeOffMm'> | undefined,
): OverRound[] | undefined {
  const radiusMm = fingerboard?.radius?.mm
  const {nutOffMm, bridgeOffMm} = scale ?? {}
  if (radiusMm === undefined || !fingerboard?.thickness || !nutOffMm || !bridgeOffMm) return undefined
  if ([...nutOffMm, ...bridgeOffMm].some((offMm) => Math.abs(offMm) > radiusMm)) return undefined
  const isStraight = isNutStraight(nut?.kind?.value)
  return nutOffMm.map((nutOff, i): OverRound => {
    const bridgeOff = bridgeOffMm[i]!
    const downAt = (part: number) => sagittaMm(radiusMm, nutOff + (bridgeOff - nutOff) * part) ?? 0
    const nutDropMm = isStraight ? 0 : downAt(0)
    const bridgeDropMm = 2 * downAt(1 / 2) - nutDropMm
    return {
      nutDropMm,
      bridgeDropMm,
      overFaceMm: (part) => downAt(part) - (1 - part) * nutDropMm - part * bridgeDropMm,
    }
  })
}

/** A rod or a bolt lies straight across, whatever the board's face. */
export const isNutStraight = (kind: string | undefined): boolean => kind === 'rod' || kind === 'bolt'
