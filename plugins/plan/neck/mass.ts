import type {BuildValues} from '../../build-file/schema/schema.ts'
import {radians} from '../../tables/units.ts'
import {distinctPlaces} from '../neck-shape/bend.ts'
import type {Cutter} from '../neck-shape/cut.ts'
import {type HeadShape, headPoint} from '../neck-shape/head-shape.ts'
import {layerWood} from '../neck-shape/layers.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'

/** What the neck with its head weighs, and where it balances. */
export interface NeckMass {
  massKg: number
  /** From the nut line; negative under the head. */
  balanceMm: number
}

/** Steps between two changes of the neck: its mass per length is smooth between them. */
const steps = 2
/** A head that leans less (sine of its angle) is as good as straight. */
const leastLean = 0.01

/**
 * Weigh the neck with its head (kg; no tuners, no strings) and find where it balances (mm from the nut line; negative
 * under the head). The head counts as wide as the neck at the nut. Absent where a wood is not known.
 */
export function planMass({head: given}: BuildValues, model: NeckModel, cut: Cutter): NeckMass | undefined {
  const {tailMm, head} = model
  if (tailMm === undefined || !head) return undefined
  const plate = given?.plate
  const lumps = [
    ...neckLumps(model, cut, -head.ledgeMm, tailMm),
    ...headLumps(
      model,
      plate && {
        densityKgM3: plate.density?.kgM3 ?? layerWood(plate).densityKgM3,
        thicknessMm: plate.thickness?.mm ?? 0,
      },
    ),
  ]
  const massKg = lumps.reduce((sum, {kg}) => sum + kg, 0)
  if (!(massKg > 0)) return undefined
  return {massKg, balanceMm: lumps.reduce((sum, {kg, atMm}) => sum + kg * atMm, 0) / massKg}
}

interface Lump {
  kg: number
  atMm: number
}
const unknown = [{kg: Number.NaN, atMm: 0}]

/** Cut the neck into lumps by Simpson's rule. */
function neckLumps({changes}: NeckModel, cut: Cutter, fromMm: number, toMm: number): Lump[] {
  const breaks = distinctPlaces(
    [fromMm, 0, ...changes.map(({stationMm}) => stationMm), toMm].filter((at) => at >= fromMm && at <= toMm),
  )
  const lumps: Lump[] = []
  for (let i = 1; i < breaks.length; i++) {
    const start = breaks[i - 1]!
    const h = (breaks[i]! - start) / (2 * steps)
    for (let k = 0; k <= 2 * steps; k++) {
      const atMm = start + h * Math.min(2 * steps - 1e-9, Math.max(1e-9, k))
      const kgM = cut(atMm)?.values.massPerLengthKgM ?? Number.NaN
      const weight = k === 0 || k === 2 * steps ? 1 : k % 2 ? 4 : 2
      lumps.push({kg: (kgM / 1000) * ((weight * h) / 3), atMm})
    }
  }
  return lumps
}

function headLumps(
  {head, layup, taper}: NeckModel,
  plate: {densityKgM3: number | undefined; thicknessMm: number} | undefined,
): Lump[] {
  const widthMm = neckWidthAt(0, taper)
  const sawn = layup.layers.filter(({isSawn, reachesHead}) => isSawn && reachesHead)
  const sawnMm = sawn.reduce((sum, {thicknessMm}) => sum + thicknessMm, 0)
  if (!head || widthMm === undefined || !(sawnMm > 0)) return unknown
  const densityKgM3 =
    sawn.reduce((sum, {thicknessMm, densityKgM3: own}) => sum + thicknessMm * (own ?? Number.NaN), 0) / sawnMm
  const plateMm = Math.min(plate?.thicknessMm ?? 0, head.thicknessMm)
  const kgMm2 =
    ((head.thicknessMm - plateMm) * densityKgM3 +
      (plateMm > 0 ? plateMm * (plate?.densityKgM3 ?? Number.NaN) : 0)) *
    1e-9
  const middleMm = (head.ledgeMm + head.lengthMm) / 2
  const lengthMm = head.lengthMm - head.ledgeMm
  return [
    {
      kg: kgMm2 * lengthMm * widthMm,
      // Its middle lies half its thickness under its face, which leans.
      atMm: (head.thicknessMm / 2) * Math.sin(radians(head.angleDeg)) - headPoint(head, middleMm).behindMm,
    },
    ...bendLumps(head, layup.totalMm - head.stepMm, densityKgM3 * 1e-9 * widthMm),
  ]
}

/**
 * Correct neck and head, each cut off square where the slope starts, to how they really meet: what both count there is
 * taken off, and what fills the bend up to where their backs meet is added (two triangles; mm, `kgMm2` of the side).
 * Source: geometry.
 */
function bendLumps({angleDeg, ledgeMm, thicknessMm}: HeadShape, deepMm: number, kgMm2: number): Lump[] {
  const [sin, cos] = [Math.sin(radians(angleDeg)), Math.cos(radians(angleDeg))]
  if (sin < leastLean) return []
  const runMm = (deepMm - thicknessMm * cos) / sin
  const squareTo = {behindMm: -thicknessMm * sin, downMm: thicknessMm * cos}
  const meet = {behindMm: runMm * cos - thicknessMm * sin, downMm: deepMm}
  const neckTo = {behindMm: 0, downMm: deepMm}
  return [[squareTo, meet] as const, [meet, neckTo] as const].map(([a, b]) => ({
    kg: (kgMm2 * (a.behindMm * b.downMm - b.behindMm * a.downMm)) / 2,
    atMm: -ledgeMm - (a.behindMm + b.behindMm) / 3,
  }))
}
