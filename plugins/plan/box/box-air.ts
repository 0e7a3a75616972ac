import {centsOf} from '../../tables/units.ts'
import type {NeckInBox} from '../joint/neck-in-box.ts'
import type {BoxPlace, BoxSizes} from '../kit/box-place.ts'
import {noteFrequencyHz, noteName} from '../kit/notes.ts'
import type {Settled} from '../kit/settled.ts'
import {type NeckTaper, neckWidthAt} from '../neck-shape/taper.ts'
import type {Scale} from '../scale/scale.ts'
import type {StringPlan} from '../strings/strings.ts'
import {givenBlocks} from './box-blocks.ts'

/** The air in the box, and the note that it answers to. */
export interface BoxAir {
  /** The air inside: less the neck and the blocks. */
  volumeL: number
  holeAreaMm2?: number | undefined
  /** As thin walls lower it: what will be heard. */
  resonanceLowHz?: number | undefined
  /** Nearest to that. */
  nearestNote?: string | undefined
  /** How far above that note it lies. */
  nearestCents?: number | undefined
  /** Where that note falls on the neck; label 0 is the open string. */
  nearestLines?: {string: string; label: string; cents: number}[] | undefined
  /** Both ends of each hole flanged, in a box that does not give. */
  resonanceHz?: number | undefined
  /** Nearest to that. */
  stiffNote?: string | undefined
}

interface Around {
  place: BoxPlace | undefined
  sizes: BoxSizes | undefined
  neck: NeckInBox | undefined
  taper: NeckTaper | undefined
  scale: Pick<Scale, 'lines'> | undefined
  strings: readonly StringPlan[] | undefined
}

/** Speed of sound in air at 20 °C, m/s. Source: OpenStax University Physics vol. 1, §17.2. */
const soundMS = 343

/** What a flange adds to a hole's length at each end, times its radius: 8/(3π), Rayleigh's piston. */
const endCorrection = 8 / (3 * Math.PI)

/** What the give of thin wooden walls makes of the air's note: about a semitone lower. */
export const wallsGive = 0.944

/** Give the air in the box, and where its note falls on the strings. Undefined where the box has no room. */
export function planAir({values, referenceHz}: Settled, around: Around): BoxAir | undefined {
  const {sizes} = around
  if (!sizes?.inside) return undefined
  const {lengthMm, widthMm, heightMm} = sizes.inside
  const blocksMm3 = givenBlocks(values).reduce(
    (sum, {length, width, thickness}) => sum + (length?.mm ?? 0) * (width?.mm ?? 0) * (thickness?.mm ?? 0),
    0,
  )
  const volumeL = (lengthMm * widthMm * heightMm - neckMm3(around) - blocksMm3) / 1e6
  if (volumeL <= 0) return undefined
  const diametersMm = (values.box?.holes ?? []).flatMap(({diameter}) => diameter?.mm ?? [])
  const resonanceHz = airResonanceHz(volumeL, sizes.outside.topMm, diametersMm)
  const areaMm2 = diametersMm.reduce((sum, d) => sum + (Math.PI / 4) * d ** 2, 0)
  return {
    volumeL,
    holeAreaMm2: diametersMm.length > 0 ? areaMm2 : undefined,
    ...(resonanceHz !== undefined && note(resonanceHz, referenceHz, around)),
  }
}

/** What a neck that runs through takes of the inside: as wide as it is halfway along. */
function neckMm3({place, sizes, neck, taper}: Around): number {
  if (!sizes || place?.tailMm === undefined || !neck?.heightInsideMm) return 0
  const {sidesMm} = sizes.outside
  const fromMm = place.atMm + sidesMm
  const toMm = Math.min(place.tailMm - sidesMm, neck.tailMm ?? place.tailMm)
  const widthMm = (taper && neckWidthAt((fromMm + toMm) / 2, taper)) ?? 0
  return toMm > fromMm ? (toMm - fromMm) * widthMm * neck.heightInsideMm : 0
}

/** Lower a stiff box's resonance as thin walls do, and name the nearest note and each string's line that gives it. */
function note(resonanceHz: number, referenceHz: number, {strings = [], scale}: Around): Partial<BoxAir> {
  const nearest = (hz: number) => Math.round(69 + 12 * Math.log2(hz / referenceHz))
  const resonanceLowHz = wallsGive * resonanceHz
  const midi = nearest(resonanceLowHz)
  const noteHz = noteFrequencyHz(midi, referenceHz)
  const lines = [{label: '0', cents: 0}, ...(scale?.lines ?? [])]
  const nearestLines = strings.flatMap((string) => {
    const wanted = centsOf(noteHz / string.frequencyHz)
    const line = lines.find((one) => Math.abs(one.cents - wanted) <= 50)
    return line ? [{string: string.name, label: line.label, cents: line.cents - wanted}] : []
  })
  return {
    resonanceLowHz,
    nearestNote: noteName(midi),
    nearestCents: centsOf(resonanceLowHz / noteHz),
    nearestLines: nearestLines.length > 0 ? nearestLines : undefined,
    resonanceHz,
    stiffNote: noteName(nearest(resonanceHz)),
  }
}

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
