import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'

/** How much the neck's width moves, in mm. */
export interface Movement {
  widthMm: number
  /** For 1 % of moisture. */
  perPercent: Moves
  season?: ({fromPercent: number; toPercent: number} & Moves) | undefined
}

interface Moves {
  quarterMm: number
  flatMm: number
  glueLineMm?: number | undefined
}

/** The air that wood is taken to be in, where nothing else is said (°C): common practice, no source. */
const roomCelsius = 20

/**
 * Say how much the neck's width moves with the seasons (mm): ΔD = D·C·ΔM of its widest place and of the layer that
 * moves most, quarter-sawn and flat-sawn, for each 1 % of moisture and, where `humidity` is given, between its driest
 * and its dampest air; at a glue line, by how much flat-sawn neighbours part. Source: Wood Handbook, FPL-GTR-190,
 * Table 13-5 (valid from 6 to 14 %).
 */
export function planMovement(values: BuildValues, {layup, taper, tailMm}: NeckModel): Movement | undefined {
  const widthsMm = [neckWidthAt(0, taper), neckWidthAt(tailMm ?? 0, taper)].filter((mm) => mm !== undefined)
  const moving = layup.layers.flatMap(({moves, of}) => (moves ? [{moves, of}] : []))
  if (widthsMm.length === 0 || moving.length === 0) return undefined
  const widthMm = Math.max(...widthsMm)
  const most = (i: 0 | 1) => widthMm * Math.max(...moving.map(({moves}) => moves[i]))
  const gaps = moving.slice(1).map(({moves}, i) => widthMm * Math.abs(moves[1] - moving[i]!.moves[1]))
  const glueLineMm = moving.length === layup.layers.length && gaps.length > 0 ? Math.max(...gaps) : undefined
  const perPercent = {quarterMm: most(0), flatMm: most(1), glueLineMm}
  return {widthMm, perPercent, season: season(perPercent, values.humidity)}
}

function season(
  {quarterMm, flatMm, glueLineMm}: Moves,
  humidity: BuildValues['humidity'],
): Movement['season'] {
  const [dry, damp] = humidity ?? []
  if (!dry || !damp) return undefined
  const [fromPercent, toPercent] = [dry.value, damp.value]
    .map((percent) => equilibriumMoisture(percent, roomCelsius))
    .sort((a, b) => a - b) as [number, number]
  const points = toPercent - fromPercent
  return {
    fromPercent,
    toPercent,
    quarterMm: quarterMm * points,
    flatMm: flatMm * points,
    glueLineMm: glueLineMm && glueLineMm * points,
  }
}

/**
 * Give the moisture (%) that wood comes to in air of a relative humidity (%) and temperature (°C).
 * 21.1 °C: 40 % gives 7.7, 65 % gives 12.0. Source: Wood Handbook, FPL-GTR-282, Eq. 4-5, Table 4-2.
 */
export function equilibriumMoisture(humidityPercent: number, celsius: number): number {
  const h = Math.min(Math.max(humidityPercent, 0), 100) / 100
  const t = celsius
  const w = 349 + 1.29 * t + 0.0135 * t * t
  const k = 0.805 + 0.000736 * t - 0.00000273 * t * t
  const k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
  const k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
  const bound = (k1 * k * h + 2 * k1 * k2 * (k * h) ** 2) / (1 + k1 * k * h + k1 * k2 * (k * h) ** 2)
  return (1800 / w) * ((k * h) / (1 - k * h) + bound)
}
