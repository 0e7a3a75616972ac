import type {BuildValues} from '../build-file/schema.ts'
import type {NeckTaper} from './neck-width-at.ts'

/** Gather how the neck widens: its width at nut and tail, and the tail end's place at neck.length − head.length. */
export function neckTaper({neck, head}: BuildValues): NeckTaper | undefined {
  const nutMm = neck?.width?.nut?.mm
  if (nutMm === undefined) return undefined
  const tailMm = neck?.width?.tail?.mm
  const isPlaced = neck?.length && head?.length
  return {
    nutMm,
    ...(tailMm !== undefined && {tailMm}),
    ...(isPlaced && {tailStationMm: neck.length!.mm - head.length!.mm}),
  }
}
