import type {BuildValues} from '../../build-file/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Nut} from '../nut.ts'
import type {NeckModel} from './model.ts'

/** The face of the neck where the nut stands: which layer ends too far forward, and where it has to begin (mm). */
export interface NutFace {
  /** Its path in the build file. */
  of: string
  fromMm: number
  /** In front of the nut line: the nut would stand beside it. */
  isBeforeNut: boolean
  needsFromMm: number
}

/** Wood that a zero fret's slot keeps behind it (mm): common practice, no source. */
const behindSlotMm = inch(1 / 8)

/**
 * Find a layer of the face that ends too far forward for the nut: a flat nut stands against its end, a rod's groove
 * lies in it with both its edges, and a zero fret's slot needs wood behind it. Half the width of a groove g deep for a
 * rod d thick is √(g(d − g)), by geometry.
 */
export function planNutFace(
  {head}: BuildValues,
  {layup}: NeckModel,
  nut: Nut | undefined,
  rulerMm: number,
): NutFace | undefined {
  const short = layup.layers.reduce<(typeof layup.layers)[number] | undefined>(
    (latest, layer) => (layer.fromMm > (latest?.fromMm ?? Number.NEGATIVE_INFINITY) ? layer : latest),
    undefined,
  )
  if (!short || !Number.isFinite(short.fromMm)) return undefined
  const needsFromMm = 0 - needsBehindMm(nut)
  if (short.fromMm <= needsFromMm + rulerMm) return undefined
  return {
    of: short.of,
    fromMm: short.fromMm,
    isBeforeNut: short.fromMm > rulerMm,
    needsFromMm: Math.min(needsFromMm, needsFromMm < 0 ? -(head?.ledge?.mm ?? 0) : 0),
  }
}

function needsBehindMm(nut: Nut | undefined): number {
  if (nut?.kind === 'zero-fret') return behindSlotMm
  const {diameterMm = 0, grooveMm = 0} = nut ?? {}
  const deepMm = Math.min(grooveMm, diameterMm / 2)
  return nut?.kind === 'flat' ? 0 : Math.sqrt(Math.max(deepMm * (diameterMm - deepMm), 0))
}
