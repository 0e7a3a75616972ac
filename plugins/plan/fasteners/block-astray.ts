import type {Box} from '../shape/box.ts'
import type {Fastener, ScrewPlace} from '../shape/holes.ts'

/** Propose the middle of the nearest block on the same line, for a screw that is to meet a block where none is. */
export function blockAstray(place: ScrewPlace, box: Box | undefined): NonNullable<Fastener['astray']> {
  const beside = (box?.blocks ?? []).filter(
    ({offMm, widthMm}) => Math.abs(place.offMm - offMm) <= widthMm / 2,
  )
  const [nearest] = [...beside].sort(
    (a, b) => Math.abs(a.stationMm - place.stationMm) - Math.abs(b.stationMm - place.stationMm),
  )
  if (!nearest) return {}
  const originMm = place.stationPath.includes('.along') ? (box?.atMm ?? 0) : 0
  return {wouldDo: {path: place.stationPath, mm: nearest.stationMm - originMm}}
}
