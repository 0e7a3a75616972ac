import {type LooseWood, looseWoods, type WoodRow, woods} from '../../tables/woods.ts'

type Range = readonly [low: number, high: number]

/** What a wood is worth to the plan: from its row, from the rows a loose name may mean, or from the build itself. */
export interface Wood {
  /** The row of the wood table, or the name itself where the build describes it: equal rows, equal wood. */
  row: string
  /** A loose name: its values are medians of what it may mean, its strength the least. */
  loose: boolean
  densityKgM3: number
  /** Stiffness along the grain, as bending tests give it. */
  eMpa: number
  /** Ovendry mass over volume at 12 % moisture, as screw formulas want it. */
  g12: number
  kind?: WoodRow['kind'] | undefined
  /** Glued of plies that cross. */
  plies?: true | undefined
  /** Change of width per 1 % of moisture, radial (quarter-sawn) and tangential (flat-sawn). */
  moves?: Range | undefined
  /** What breaks it in bending (modulus of rupture); of a loose name, the weakest that it may mean. */
  morMpa?: number | undefined
  /** The row of that one. */
  weakest?: string | undefined
  hardnessN?: number | undefined
  trade?: string | undefined
  /** Low and high, where the name or its sources leave a range. */
  range?: {densityKgM3: Range; eMpa: Range} | undefined
}

const rows: Readonly<Record<string, WoodRow>> = woods
const loose: Readonly<Record<string, LooseWood>> = looseWoods

/** Density in kg/m³ at 12 % moisture: 1000·G·(1 + 0.12). Source: Wood Handbook, FPL-GTR-282, Eq. 4-14. */
const density = (g12: number) => 1120 * g12

/** The rows that a loose name may mean; `any` and the kinds are those grown in the USA. */
function members(of: LooseWood['of']): string[] {
  if (typeof of !== 'string') return [...of]
  return Object.keys(rows).filter((name) => {
    const {source, kind} = rows[name]!
    return source === 'handbook' && (of === 'any' || kind === of)
  })
}

const median = (values: number[]) => {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = (sorted.length - 1) / 2
  return (sorted[Math.floor(middle)]! + sorted[Math.ceil(middle)]!) / 2
}
const span = (values: number[]): Range => [Math.min(...values), Math.max(...values)]

function looseWood(name: string): Wood {
  const names = members(loose[name]!.of)
  const strengthOf = (one: string) => rows[one]!.morMpa ?? Number.POSITIVE_INFINITY
  const weakest = names.reduce((least, one) => (strengthOf(one) < strengthOf(least) ? one : least))
  const of = names.map((one) => rows[one]!)
  const moves = of.map(movementOf).filter((pair) => pair !== undefined)
  const kinds = new Set(of.map((row) => row.kind))
  const g12 = median(of.map((row) => row.g12))
  return {
    row: name,
    loose: true,
    g12,
    densityKgM3: density(g12),
    eMpa: median(of.map((row) => row.moeMpa)),
    kind: kinds.size === 1 ? of[0]!.kind : undefined,
    morMpa: rows[weakest]!.morMpa,
    weakest,
    moves: moves.length > 0 ? [median(moves.map((m) => m[0])), median(moves.map((m) => m[1]))] : undefined,
    range: {densityKgM3: span(of.map((row) => density(row.g12))), eMpa: span(of.map((row) => row.moeMpa))},
  }
}

function rowWood(name: string): Wood {
  const {g12, moeMpa, kind, plies, morMpa, hardnessN, trade, spread, ...row} = rows[name]!
  return {
    row: name,
    loose: false,
    g12,
    densityKgM3: density(g12),
    eMpa: moeMpa,
    kind,
    plies,
    moves: movementOf(row),
    morMpa,
    hardnessN,
    trade,
    range: spread && {densityKgM3: spread.densityKgM3, eMpa: spread.moeMpa},
  }
}

/** Every wood by its row or loose name, as the plan uses it: values at 12 % moisture. */
export const woodFacts: ReadonlyMap<string, Wood> = new Map([
  ...Object.keys(loose).map((name) => [name, looseWood(name)] as const),
  ...Object.keys(rows).map((name) => [name, rowWood(name)] as const),
])

/**
 * Give a wood's change of width per 1 % of moisture, [radial, tangential], between 6 and 14 %: as printed, or from its
 * shrinkage S in % by C = 1/(3000/S − 20). Sugar maple, S 9.9: 0.00353.
 * Source: Wood Handbook, FPL-GTR-190, Table 13-5; the rule is its exact form with 10 % at the start.
 */
export function movementOf(
  row: Pick<WoodRow, 'moves' | 'shrinkPercent'>,
): readonly [radial: number, tangential: number] | undefined {
  if (row.moves) return row.moves
  if (!row.shrinkPercent) return undefined
  const [radial, tangential] = row.shrinkPercent
  return [1 / (3000 / radial - 20), 1 / (3000 / tangential - 20)]
}

/** Fold case, hyphens and spaces, so that `Yellow Poplar` finds `yellow-poplar`. */
const folded = (name: string) =>
  name
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()

const byName = new Map<string, Wood>()
const tables: readonly Readonly<Record<string, WoodRow | LooseWood>>[] = [looseWoods, woods]
for (const table of tables)
  for (const [row, {others = []}] of Object.entries(table))
    for (const name of [row, ...others]) byName.set(folded(name), woodFacts.get(row)!)

/**
 * Look a wood up by its name, another name or a loose one; the build's own density and stiffness win over the table,
 * and make up for a name that it does not have. Undefined where neither gives both.
 */
export function woodOf(
  name: string | undefined,
  own: {density?: {kgM3: number} | undefined; stiffness?: {mpa: number} | undefined} = {},
): Wood | undefined {
  const found = name === undefined ? undefined : (byName.get(name) ?? byName.get(folded(name)))
  if (!own.density && !own.stiffness) return found
  const densityKgM3 = own.density?.kgM3 ?? found?.densityKgM3
  const eMpa = own.stiffness?.mpa ?? found?.eMpa
  if (densityKgM3 === undefined || eMpa === undefined) return undefined
  const {range, ...rest} = found ?? {row: folded(name ?? 'own'), loose: false, range: undefined}
  const own12 = {...rest, densityKgM3, eMpa, g12: densityKgM3 / 1120}
  if (!range || (own.density && own.stiffness)) return own12
  const stays = (value: number) => [value, value] as const
  return {
    ...own12,
    range: {
      densityKgM3: own.density ? stays(densityKgM3) : range.densityKgM3,
      eMpa: own.stiffness ? stays(eMpa) : range.eMpa,
    },
  }
}

/**
 * Give the pull across the grain (MPa) that tears a wood at 12 % moisture: 10.1·G^1.30 of a hardwood, 6.0·G^1.11 of a
 * softwood or a sheet. Of a loose wood, the lightest that it may mean. Source: Wood Handbook, FPL-GTR-190,
 * Table 5-11a, from memory; eastern white pine 1.9 (listed 2.1), black cherry 4.1 (3.9), black walnut 4.6 (4.8).
 */
export function tornAcrossMpa({kind, g12, loose, range}: Wood): number {
  const g = loose && range ? range.densityKgM3[0] / 1120 : g12
  return kind === 'hardwood' ? 10.1 * g ** 1.3 : 6 * g ** 1.11
}
