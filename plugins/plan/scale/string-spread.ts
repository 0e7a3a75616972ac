import type {BuildValues} from '../../build-file/schema.ts'
import {spreadStrings} from './spread-strings.ts'

/** Where the strings cross nut and bridge, in mm off the centre line. */
export interface StringSpread {
  nutOffMm: number[]
  bridgeOffMm: number[]
}

/** Spread the strings at nut and bridge; undefined without a spacing, or with equal gaps and a gauge missing. */
export function stringSpread({strings = [], spacing}: BuildValues): StringSpread | undefined {
  const nutMm = spacing?.nut?.mm
  const bridgeMm = spacing?.bridge?.mm
  if (strings.length === 0 || nutMm === undefined || bridgeMm === undefined) return undefined
  const diametersMm = strings.map((string) => string.gauge?.mm).filter((mm) => mm !== undefined)
  const byGaps = spacing?.slots?.value === 'gaps'
  if (byGaps && diametersMm.length < strings.length) return undefined
  const diameters = byGaps ? diametersMm : undefined
  return {
    nutOffMm: spreadStrings(strings.length, nutMm, diameters),
    bridgeOffMm: spreadStrings(strings.length, bridgeMm, diameters),
  }
}
