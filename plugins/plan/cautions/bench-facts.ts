import {ownAt} from '../../build-file/schema/path.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {HazardName} from '../../tables/hazards.ts'
import {type LooseWood, looseWoods, type WoodRow, woods} from '../../tables/woods.ts'
import {givenBlocks} from '../box/box-blocks.ts'
import type {Notch} from '../joint/notch.ts'
import type {Hole} from '../kit/hole.ts'
import type {Settled} from '../kit/settled.ts'
import {woodOf} from '../kit/woods.ts'
import type {Scarf} from '../neck/scarf.ts'
import type {Cuts} from '../stock/cut-list.ts'
import type {Part} from '../stock/part.ts'

/** What decides which cautions a build brings: its values, what is made of them, and what is asked of both often. */
export interface BenchFacts {
  values: BuildValues
  made: {
    cuts: Cuts | undefined
    scarf: Scarf | undefined
    holes: readonly Hole[] | undefined
    /** Of the box, for the neck. */
    notch: Notch | undefined
    tensionTotalN: number | undefined
  }
  woods: readonly WoodUsed[]
}

/** What brings a hazard to a build: nothing more where the hazard's name says it. */
export interface Brought {
  /** `extra`: what the file lists; else the pickup is played through an amplifier, or fed by a battery. */
  'mains-power': {extra?: string | undefined}
  battery: {extra?: string | undefined}
  solder: Nothing
  rods: {nut?: 'rod' | 'bolt' | undefined; bridge?: 'rod' | undefined}
  'fret-wire': Nothing
  'fret-ends': {count?: number | undefined}
  'string-eyes': {count: number; tensionN?: number | undefined}
  /** What the file says, or how short the scale is. */
  'small-player': {said: string} | {scaleMm: number}
  'glue-epoxy': Glue
  'glue-ca': Glue
  'glue-pu': Glue
  'glue-hide': Glue
  'oil-rags': Finishes
  solvents: Finishes
  'lacquer-mist': Finishes
  'burn-marks': {burnt: readonly ('lines' | 'dots')[]}
  /** What the file says of paper or age; else what stands on a found box is not known. */
  'lead-paint': {paper: 'strip' | 'keep'} | {called: string} | Nothing
  'box-residue': Nothing
  chisel: {widthMm: number; depthMm: number}
  'saw-kickback': {part?: Part | undefined}
  'short-part': {parts: readonly Part[]; shortestMm: number}
  'scarf-saw': {angleDeg: number; runMm: number}
  /** As the file has it. */
  'router-direction': {radius: string}
  'big-bit': {mm: number; topMm: number}
  planer: {part: Part; places: readonly string[]}
  'drill-clamp': {count: number}
  eyes: Nothing
  noise: Nothing
  'redcedar-dust': Woods
  'rosewood-dust': Woods
  'cancer-dust': Woods
  'sensitizer-dust': Woods
  /** Empty: the neck's wood is not named yet. */
  'wood-dust': {names: readonly string[]; places: readonly string[]}
  'sheet-dust': {sheets: readonly {name: string; where: string; places: readonly string[]}[]}
  /** Those that are glued. */
  'oily-wood': Woods
  'protected-wood': {woods: readonly (WoodHere & {listing: string})[]}
}
type Nothing = Record<string, never>
type Glue = {glue: string}
type Finishes = {kinds: readonly string[]}
type Woods = {woods: readonly WoodHere[]}

/** A wood as the file names it and where it is, and the row of the wood table that it is, or may be. */
export interface WoodHere {
  name: string
  where: string
  /** All its places, as paths of the build file. */
  places: readonly string[]
  row: string
  isLoose: boolean
}

/** Say what brings a hazard to this build; undefined where nothing does. */
export type Trigger<Name extends HazardName> = (facts: BenchFacts) => Brought[Name] | undefined

/** Gather what the triggers of cautions ask. */
export function benchFacts(settled: Settled, made: BenchFacts['made']): BenchFacts {
  return {
    values: settled.values,
    made,
    woods: woodsUsed(settled.values),
  }
}

/** Name the place of a part, as cautions have it: all layers of the neck are one, and all blocks. */
export const placeOf = ({of}: {of: string}): string =>
  of.startsWith('neck.laminations') ? 'neck' : of.startsWith('box.') ? 'box.blocks' : of

/** A wood of the build: as written, where it is, and the rows of the wood table that it is, or may be. */
export interface WoodUsed {
  name: string
  /** Where it is met first: a path of the build file, or the name of a further part. */
  where: string
  /** All its places, as paths of the build file. */
  places: readonly string[]
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

/** List the woods of neck, box and further parts, each once, with all its places. */
function woodsUsed(values: BuildValues): WoodUsed[] {
  const {neck, head, fingerboard, box, parts = []} = values
  const named: [place: string, wood: {value: string} | undefined, called?: string | undefined][] = [
    ['neck', neck?.wood],
    ...(neck?.laminations ?? []).flatMap(({wood, woods: strips = []}): typeof named => [
      ['neck', wood],
      ...strips.map((strip): (typeof named)[number] => ['neck', strip]),
    ]),
    ['neck.cap', neck?.cap?.wood],
    ['head.plate', head?.plate?.wood],
    ['fingerboard', fingerboard?.wood],
    ['box', box?.wood],
    // A top of no wood of its own is of the box's.
    ['box.top', box?.top?.wood ?? box?.wood],
    ...givenBlocks(values).map(({wood}): (typeof named)[number] => ['box.blocks', wood]),
    ...parts.map(({name, wood}, i): (typeof named)[number] => [
      `parts.${i + 1}`,
      wood,
      name?.value ?? 'parts',
    ]),
  ]
  const found = new Map<string, {where: string; places: string[]}>()
  for (const [place, wood, called] of named) {
    if (!wood || wood.value === 'any') continue
    const met = found.get(wood.value)
    if (met) met.places.push(place)
    else found.set(wood.value, {where: called ?? place, places: [place]})
  }
  return [...found].map(([name, at]) => used(name, at))
}

function used(name: string, at: Pick<WoodUsed, 'where' | 'places'>): WoodUsed {
  const row = woodOf(name)?.row
  const of = row === undefined ? undefined : ownAt(loose, row)?.of
  // The kinds (hardwood, unknown) may mean anything, and so warn of nothing in particular.
  const rows = row === undefined || typeof of === 'string' ? [] : (of ?? [row])
  return {
    name,
    ...at,
    rows,
    isLoose: of !== undefined,
    isSheet: boards.test(name) || rows.some((one) => ownAt(table, one)?.kind === 'sheet'),
    trade: rows.flatMap((one) => {
      const listing = ownAt(table, one)?.trade
      return listing === undefined ? [] : [{row: one, listing}]
    }),
  }
}
