import {neckTaper, neckWidthAt} from '../neck/taper.ts'
import {noteFrequencyHz, noteName} from '../notes.ts'
import type {PlanPart} from '../part.ts'
import type {Plan} from '../plan.ts'
import type {Box} from './box.ts'

/**
 * Give the air in the box (L), the area of its holes (mm²), the note it answers to (Hz; lower as thin walls give),
 * the nearest note by its name and where that falls on the strings. Absent where the box has no room or no hole.
 */
export const boxAir: PlanPart = ({values, referenceHz}, soFar) => {
  const {box} = soFar
  const {inside, outside} = box ?? {}
  if (!inside || !outside) return {}
  const roomMm3 = inside.lengthMm * inside.widthMm * inside.heightMm
  const taper = neckTaper(values)
  const widthAtMm = (stationMm: number) => (taper && neckWidthAt(stationMm, taper)) ?? 0
  const neckMm3 = (box?.neck?.heightInsideMm ?? 0) * neckPlanMm2(box!, widthAtMm)
  const blocksMm3 = (values.box?.blocks ?? []).reduce(
    (sum, {length, width, thickness}) => sum + (length?.mm ?? 0) * (width?.mm ?? 0) * (thickness?.mm ?? 0),
    0,
  )
  const volumeL = (roomMm3 - neckMm3 - blocksMm3) / 1e6
  const diametersMm = (values.box?.holes ?? []).flatMap(({diameter}) => diameter?.mm ?? [])
  const resonanceHz = airResonanceHz(volumeL, outside.topMm, diametersMm)
  if (volumeL <= 0) return {}
  return {
    box: {
      ...box,
      volumeL,
      ...(diametersMm.length > 0 && {
        holeAreaMm2: diametersMm.reduce((sum, d) => sum + (Math.PI / 4) * d ** 2, 0),
      }),
      ...(resonanceHz !== undefined && answers(resonanceHz, referenceHz, soFar)),
    },
  }
}

/** How much of the inside, seen from above, a neck that runs through takes (mm²). */
function neckPlanMm2({atMm, tailMm, outside, neck}: Box, widthAtMm: (stationMm: number) => number): number {
  if (atMm === undefined || tailMm === undefined || !outside || !neck) return 0
  const fromMm = atMm + outside.sidesMm
  const toMm = Math.min(tailMm - outside.sidesMm, neck.tailMm ?? tailMm)
  return toMm > fromMm ? (toMm - fromMm) * widthAtMm((fromMm + toMm) / 2) : 0
}

function answers(resonanceHz: number, referenceHz: number, {strings = [], scale}: Plan): Partial<Box> {
  const midi = Math.round(69 + 12 * Math.log2(resonanceHz / referenceHz))
  const noteHz = noteFrequencyHz(midi, referenceHz)
  const open = {label: '0', semitones: 0, cents: 0}
  const nearestLines = strings.flatMap((string) => {
    const wanted = 1200 * Math.log2(noteHz / string.frequencyHz)
    const line = [open, ...(scale?.lines ?? [])].find((one) => Math.abs(one.cents - wanted) <= 50)
    return line ? [{string: string.name, label: line.label, cents: line.cents - wanted}] : []
  })
  return {
    resonanceHz,
    resonanceLowHz: wallsGive * resonanceHz,
    nearestNote: noteName(midi),
    nearestCents: 1200 * Math.log2(resonanceHz / noteHz),
    ...(nearestLines.length > 0 && {nearestLines}),
  }
}

/** Speed of sound in air at 20 °C, m/s. Source: OpenStax University Physics vol. 1, §17.2. */
const soundMS = 343

/** What a flange adds to a hole's length at each end, times its radius: 8/(3π), Rayleigh's piston. */
const endCorrection = 8 / (3 * Math.PI)

/** What the give of thin wooden walls makes of the air's note: about a semitone lower. */
export const wallsGive = 0.944

/**
 * Give the frequency (Hz) of the air in a box of so many litres breathing through round holes (mm) in a top of this
 * thickness (mm): (c/2π)·√(Σ S/L / V), both ends of each hole flanged, the box stiff.
 * Sources: J. Woodhouse, Euphonics §4.2.1 eq. (8); parallel holes add as inertances. The lowering by thin walls:
 * Nia et al., Proc. R. Soc. A 471, 20140905 (2015).
 */
export function airResonanceHz(
  volumeL: number,
  topMm: number,
  diametersMm: readonly number[],
): number | undefined {
  const conductanceMm = diametersMm.reduce((sum, diameterMm) => {
    const radiusMm = diameterMm / 2
    return sum + (Math.PI * radiusMm ** 2) / (topMm + 2 * endCorrection * radiusMm)
  }, 0)
  if (!(volumeL > 0) || !(conductanceMm > 0)) return undefined
  return (soundMS / (2 * Math.PI)) * Math.sqrt(conductanceMm / 1000 / (volumeL / 1000))
}
