import type {BuildValues} from '../../build-file/schema/schema.ts'

/** Gather how the neck widens: its width at nut and tail, and the tail end's place at neck.length − head.length. */
export function neckTaper({neck, head}: BuildValues): NeckTaper | undefined {
  const nutMm = neck?.width?.nut?.mm
  if (nutMm === undefined) return undefined
  const tailMm = neck?.width?.tail?.mm
  const tailStationMm = neck?.length && head?.length && neck.length.mm - head.length.mm
  return {nutMm, tailMm, tailStationMm}
}

export interface NeckTaper {
  nutMm: number
  /** The width at the tail end, and where that is; without them the neck is as wide as at the nut. */
  tailMm?: number | undefined
  tailStationMm?: number | undefined
}

/**
 * Give the neck's width in mm at a station in mm from the nut line: straight from nut to tail, and as wide as at
 * the nut behind it. Undefined where a tail width is given and the tail end lies nowhere yet.
 */
export function neckWidthAt(
  stationMm: number,
  {nutMm, tailMm, tailStationMm}: NeckTaper,
): number | undefined {
  if (tailMm === undefined || tailMm === nutMm) return nutMm
  if (tailStationMm === undefined || tailStationMm <= 0) return undefined
  const part = Math.min(1, Math.max(0, stationMm / tailStationMm))
  return nutMm + part * (tailMm - nutMm)
}
