import {type LooseWood, looseWoods, type WoodName, type WoodRow, woods} from '../tables/woods.ts'
import {movementOf} from './movement-of.ts'

type Range = readonly [low: number, high: number]

/** What a wood is worth to the plan: from its row, from the rows a loose name may mean, or from the build itself. */
export interface Wood {
  /** The row of the wood table, or the name itself where the build describes it: equal rows, equal wood. */
  row: string
  /** A loose name: its values are medians of what it may mean. */
  loose: boolean
  densityKgM3: number
  /** Stiffness along the grain, as bending tests give it. */
  eMpa: number
  /** Ovendry mass over volume at 12 % moisture, as screw formulas want it. */
  g12: number
  kind?: WoodRow['kind']
  /** Change of width per 1 % of moisture, radial (quarter-sawn) and tangential (flat-sawn). */
  moves?: Range
  morMpa?: number
  hardnessN?: number
  trade?: string
  /** Low and high, where the name or its sources leave a range. */
  range?: {densityKgM3: Range; eMpa: Range}
}

const rows: Readonly<Record<string, WoodRow>> = woods
const loose: Readonly<Record<string, LooseWood>> = looseWoods

/** Density in kg/m³ at 12 % moisture: 1000·G·(1 + 0.12). Source: Wood Handbook, FPL-GTR-282, Eq. 4-14. */
const density = (g12: number) => 1120 * g12

/** The rows that a loose name may mean; `any` and the kinds are those grown in the USA. */
function members(of: LooseWood['of']): WoodRow[] {
  if (typeof of !== 'string') return of.map((name: WoodName) => rows[name]!)
  return Object.values(rows).filter((row) => row.source === 'handbook' && (of === 'any' || row.kind === of))
}

const median = (values: number[]) => {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = (sorted.length - 1) / 2
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2
}
const span = (values: number[]): Range => [Math.min(...values), Math.max(...values)]

function looseWood(name: string): Wood {
  const of = members(loose[name]!.of)
  const moves = of.map(movementOf).filter((pair) => pair !== undefined)
  const kinds = new Set(of.map((row) => row.kind))
  const g12 = median(of.map((row) => row.g12))
  return {
    row: name,
    loose: true,
    g12,
    densityKgM3: density(g12),
    eMpa: median(of.map((row) => row.moeMpa)),
    ...(kinds.size === 1 && {kind: of[0]!.kind}),
    ...(moves.length > 0 && {
      moves: [median(moves.map((m) => m[0])), median(moves.map((m) => m[1]))] as const,
    }),
    range: {densityKgM3: span(of.map((row) => density(row.g12))), eMpa: span(of.map((row) => row.moeMpa))},
  }
}

function rowWood(name: string): Wood {
  const {g12, moeMpa, kind, morMpa, hardnessN, trade, spread, ...row} = rows[name]!
  const moves = movementOf(row)
  return {
    row: name,
    loose: false,
    g12,
    densityKgM3: density(g12),
    eMpa: moeMpa,
    kind,
    ...(moves && {moves}),
    ...(morMpa !== undefined && {morMpa}),
    ...(hardnessN !== undefined && {hardnessN}),
    ...(trade !== undefined && {trade}),
    ...(spread && {range: {densityKgM3: spread.densityKgM3, eMpa: spread.moeMpa}}),
  }
}

/** Every wood by its row or loose name, as the plan uses it: values at 12 % moisture. */
export const woodFacts: ReadonlyMap<string, Wood> = new Map([
  ...Object.keys(loose).map((name) => [name, looseWood(name)] as const),
  ...Object.keys(rows).map((name) => [name, rowWood(name)] as const),
])
