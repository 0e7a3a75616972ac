import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import {type LooseWood, looseWoods, type WoodRow, woods} from '../../tables/woods.ts'
import type {Notch} from '../box/neck-in-box.ts'
import type {Cuts} from '../cut-list.ts'
import type {Hole} from '../holes.ts'
import type {Scarf} from '../neck/scarf.ts'
import type {Settled} from '../settle.ts'
import {woodOf} from '../woods.ts'

/** What decides which cautions a build brings: its values, what is made of them, and what is asked of both often. */
export interface BenchFacts {
  values: BuildValues
  units: 'in' | 'mm'
  made: {
    cuts: Cuts | undefined
    scarf: Scarf | undefined
    holes: readonly Hole[] | undefined
    /** Of the box, for the neck. */
    notch: Notch | undefined
    tensionTotalN: number | undefined
  }
  woods: readonly WoodUsed[]
  /** Write a length (mm) in the build's units to its ruler. */
  size: (mm: number) => string
}

/** Say why a hazard belongs to this build, in one sentence; undefined where it does not. */
export type Trigger = (facts: BenchFacts) => string | undefined

/** Gather what the triggers of cautions ask. */
export function benchFacts(settled: Settled, made: BenchFacts['made']): BenchFacts {
  return {
    values: settled.values,
    units: settled.units,
    made,
    woods: woodsUsed(settled.values),
    size: (mm) => writeLength(mm, settled),
  }
}

/** A wood of the build: as written, where it is, and the rows of the wood table that it is, or may be. */
export interface WoodUsed {
  name: string
  /** In a maker's words: neck, fingerboard, box. */
  where: string
  rows: readonly string[]
  /** The name says less than a species. */
  isLoose: boolean
  isSheet: boolean
  /** Listings under CITES, with the row that each belongs to. */
  trade: readonly {row: string; listing: string}[]
}

const table: Readonly<Record<string, WoodRow>> = woods
const loose: Readonly<Record<string, LooseWood>> = looseWoods
const boards = /\b(ply(wood)?|mdf|hardboard|chipboard|particle ?board|fib(re|er)board)\b/i

/** List the woods of neck, box and further parts, each once, where it is met first. */
function woodsUsed({neck, head, fingerboard, box, parts}: BuildValues): WoodUsed[] {
  const named: [string, {value: string} | undefined][] = [
    ['neck', neck?.wood],
    ...(neck?.laminations ?? []).flatMap(({wood, woods: strips = []}): typeof named => [
      ['neck', wood],
      ...strips.map((strip): (typeof named)[number] => ['neck', strip]),
    ]),
    ['cap of the neck', neck?.cap?.wood],
    ['plate of the head', head?.plate?.wood],
    ['fingerboard', fingerboard?.wood],
    ['box', box?.wood],
    ['top', box?.top?.wood],
    ...(box?.blocks ?? []).map(({wood}): (typeof named)[number] => ['blocks', wood]),
    ...(parts ?? []).map(({name, wood}): (typeof named)[number] => [name?.value ?? 'parts', wood]),
  ]
  const found = new Map<string, WoodUsed>()
  for (const [where, wood] of named)
    if (wood && wood.value !== 'any' && !found.has(wood.value)) found.set(wood.value, used(wood.value, where))
  return [...found.values()]
}

function used(name: string, where: string): WoodUsed {
  const row = woodOf(name)?.row
  const of = row === undefined ? undefined : loose[row]?.of
  // The kinds (hardwood, unknown) may mean anything, and so warn of nothing in particular.
  const rows = row === undefined || typeof of === 'string' ? [] : (of ?? [row])
  return {
    name,
    where,
    rows,
    isLoose: of !== undefined,
    isSheet: boards.test(name) || rows.some((one) => table[one]?.kind === 'sheet'),
    trade: rows.flatMap((one) => {
      const listing = table[one]?.trade
      return listing === undefined ? [] : [{row: one, listing}]
    }),
  }
}

/** Say the first three of several things, and how many more there are: `beech, ash, cherry and 2 more`. */
export function firstFew(things: readonly string[]): string {
  const shown = things.slice(0, 3)
  const more = things.length - shown.length
  if (more > 0) return `${shown.join(', ')} and ${more} more`
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`
}
