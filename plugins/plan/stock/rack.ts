import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {RackEntry} from '../../build-file/schema/wood.ts'
import {type Context, type GonePiece, type Lot, listedAs, namesOfEach, type Piece} from '../kit/context.ts'
import type {BillRow} from './bill.ts'
import type {Cuts} from './cut-list.ts'

/** A piece on the rack. */
export interface RackPiece extends Piece {
  /** Its own density and stiffness, where the rack's file gives them. */
  densityKgM3?: number | undefined
  stiffnessMpa?: number | undefined
  /** What it is left over from: there since the day that build was started. */
  from?: {build: string; piece: string; on: string} | undefined
}

/** The rack between two builds: what stands on it, and what became of what no longer does. */
export interface Rack {
  pieces: readonly RackPiece[]
  lots: readonly Lot[]
  /** Pieces that were cut and lots that were used up. */
  gone: readonly {id: string; by: string}[]
}

/**
 * Stand on the rack what its file lists, pieces of `count: 6` as `A4.1` to `A4.6`; a piece without a size or id is left
 * out, and whatever has an item is a lot.
 */
export function rackOf(listed: readonly RackEntry[]): Rack {
  const lots = listed.flatMap(({id, item, count, cost, bought}): Lot[] =>
    id && item
      ? [
          {
            id: id.value,
            item: item.value,
            count: count?.value ?? 1,
            each: cost?.amount,
            bought: bought?.iso,
          },
        ]
      : [],
  )
  const pieces = listed.flatMap((piece) => {
    const {id, item, wood, length, width, thickness, clear, count} = piece
    if (item || !id || !length || !width || !thickness) return []
    const [from, to] = clear ?? []
    return namesOfEach(id.value, count?.value ?? 1).map(
      (name): RackPiece => ({
        id: name,
        wood: wood?.value ?? 'unknown',
        lengthMm: length.mm,
        widthMm: width.mm,
        thicknessMm: thickness.mm,
        clearMm: from && to && [from.mm, to.mm],
        cost: piece.cost?.amount,
        bought: piece.bought?.iso,
        remark: piece.remark?.value,
        densityKgM3: piece.density?.kgM3,
        stiffnessMpa: piece.stiffness?.mpa,
      }),
    )
  })
  return {pieces, lots, gone: []}
}

/** A build as the rack sees it. */
export interface RackBuild {
  slug: string
  values: Pick<BuildValues, 'started' | 'status' | 'take' | 'stock' | 'scale'>
}

/** What a build leaves the rack without, or with. */
export interface Used {
  cuts?: Cuts | undefined
  bill?: readonly BillRow[] | undefined
}

/** Put builds in the order in which they take their wood: by the day they were started, then by slug; undated ones last. */
function inRackOrder<B extends RackBuild>(builds: readonly B[]): B[] {
  const day = ({values}: B) => values.started?.iso ?? '\uffff'
  const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
  return [...builds].sort((a, b) => compare(day(a), day(b)) || compare(a.slug, b.slug))
}

export type RackContext = Required<Omit<Context, 'journal'>>

/** What a build that sees no rack is planned with. */
export const noRack: RackContext = {pieces: [], lots: [], gone: [], reserved: []}

/**
 * Lead the builds past the rack in their order: each is planned with what stands there on its day, and leaves its
 * offcuts. `usedBy` plans one; only those that `sees` tells of are given what stands there, which in a journal of
 * thousands is much. Gives the rack as it stands after the last.
 */
export async function throughRack<B extends RackBuild>(
  start: Rack,
  builds: readonly B[],
  usedBy: (build: B, context: RackContext) => Promise<Used>,
  sees: (build: B) => boolean = () => true,
): Promise<Rack> {
  const wishes = new Map<string, string[]>()
  for (const build of builds.filter(onlyReserves))
    for (const id of namedBy(build.values)) wishes.set(id, [...(wishes.get(id) ?? []), build.slug])
  const reservedFor = (build: B) => {
    const wished = onlyReserves(build) ? namedBy(build.values) : []
    return wished.flatMap((id) =>
      (wishes.get(id) ?? []).filter((by) => by !== build.slug).map((by) => ({id, by})),
    )
  }
  let rack = start
  for (const build of inRackOrder(builds)) {
    const context = sees(build) ? {...standingFor(rack, build), reserved: reservedFor(build)} : noRack
    rack = putBack(rack, build, await usedBy(build, context))
  }
  return rack
}

/** Tell whether a build leaves the rack as it is: an idea, and one without a day, reserves what it names. */
export const onlyReserves = ({values: {started, status}}: RackBuild): boolean =>
  !started || status?.value === 'idea'

/** List the names of what a build takes and of its own stock: what has one name is one board, wherever it is listed. */
export const namedBy = ({take = [], stock = []}: RackBuild['values']): string[] => [
  ...take.map(({value}) => value),
  ...stock.flatMap(({id}) => id?.value ?? []),
]

/**
 * Give what stands on the rack on the day a build is started (any day for one without a date), and what it names and
 * cannot have, with why.
 */
function standingFor({pieces, lots, gone}: Rack, {values}: RackBuild): Omit<RackContext, 'reserved'> {
  const {started} = values
  const isThere = ({bought}: {bought?: string | undefined}) => !bought || !started || bought <= started.iso
  const asked = new Set(namedBy(values))
  const isAsked = (id: string) => asked.has(id) || asked.has(listedAs(id))
  const later = [...pieces, ...lots].flatMap((one): GonePiece[] =>
    !isThere(one) && isAsked(one.id) ? [{id: one.id, why: 'later', on: one.bought}] : [],
  )
  const used = gone.flatMap(({id, by}): GonePiece[] => (isAsked(id) ? [{id, why: 'cut', by}] : []))
  return {
    pieces: pieces.filter(isThere).map(({from, densityKgM3, stiffnessMpa, ...piece}) => piece),
    lots: lots.filter(isThere),
    gone: [...used, ...later],
  }
}

/** What a build does to the rack. */
interface Left {
  /** The pieces it cut. */
  cut: readonly string[]
  /** What it left over of them and of its own. */
  offcuts: readonly RackPiece[]
  /** Of lots, how many it took. */
  taken: readonly (readonly [id: string, count: number])[]
}

/** Say what a build takes from the rack and leaves there. */
export function leftBy(build: RackBuild, {cuts, bill = []}: Used): Left {
  const {slug, values} = build
  const {started} = values
  if (!started || onlyReserves(build)) return {cut: [], offcuts: [], taken: []}
  const pieces = cuts?.pieces ?? []
  const offcuts = pieces.flatMap((piece) =>
    piece.offcuts.map(({lengthMm, widthMm, thicknessMm}, i): RackPiece => {
      return {
        id: offcutOf(piece, i, slug),
        wood: piece.wood,
        lengthMm,
        widthMm,
        thicknessMm,
        from: {build: slug, piece: piece.id, on: started.iso},
      }
    }),
  )
  return {
    cut: [...new Set(pieces.flatMap(({id, onRack}) => (onRack ? [id] : [])))],
    offcuts,
    taken: bill.flatMap(({lot, count}) => (lot === undefined ? [] : [[lot, count] as const])),
  }
}

/**
 * Leave the rack as it stands after a build: the pieces it cut are gone, their offcuts stand there under new names, by
 * falling length; what it took and did not cut stands where it stood, and of a lot what it did not need.
 */
function putBack(rack: Rack, build: RackBuild, used: Used): Rack {
  const {cut, offcuts, taken} = leftBy(build, used)
  if (cut.length + offcuts.length + taken.length === 0) return rack
  const [isCut, counts] = [new Set(cut), new Map(taken)]
  const left = rack.lots.map((lot) => ({...lot, count: lot.count - (counts.get(lot.id) ?? 0)}))
  const usedUp = left.filter(({count}) => count <= 0).map(({id}) => id)
  return {
    pieces: [...(isCut.size > 0 ? rack.pieces.filter(({id}) => !isCut.has(id)) : rack.pieces), ...offcuts],
    lots: left.filter(({count}) => count > 0),
    gone: [...rack.gone, ...[...cut, ...usedUp].map((id) => ({id, by: build.slug}))],
  }
}

/** List what stands on the rack on a day; without one, everything that was ever bought and not used. */
export function standingOn({pieces, lots}: Rack, day: string | undefined): Pick<Rack, 'pieces' | 'lots'> {
  const isThere = (since: string | undefined) => !since || !day || since <= day
  return {
    pieces: pieces.filter(({bought, from}) => isThere(from?.on ?? bought)),
    lots: lots.filter(({bought}) => isThere(bought)),
  }
}

/**
 * Tell whether a build's plan depends on the rack: it takes from it, its own stock is a board of it, or it asks for the
 * longest scale without wood of its own.
 */
export function seesRack({pieces}: Rack): (build: RackBuild) => boolean {
  const listed = new Set(pieces.map(({id}) => listedAs(id)))
  const isOfRack = (id: string) => listed.has(listedAs(id.replace(/(?:-[a-z]+)+$/, '')))
  return ({values: {take, stock, scale}}) =>
    (take?.length ?? 0) > 0 ||
    (stock ?? []).some(({id}) => id && isOfRack(id.value)) ||
    (!scale?.length && !stock?.length)
}

/** Name an offcut, from 0, of a piece that a build cuts: by the piece where that stood on the rack, else by the build too. */
export const offcutOf = (
  {id, onRack}: Pick<Cuts['pieces'][number], 'id' | 'onRack'>,
  n: number,
  slug: string,
): string => `${onRack ? '' : `${slug}.`}${id}-${offcutName(n)}`

/** Name the n-th offcut of a piece, from 0: `a` to `z`, then `aa`, `ab` … */
export function offcutName(n: number): string {
  const last = String.fromCharCode(97 + (n % 26))
  return n < 26 ? last : offcutName(Math.floor(n / 26) - 1) + last
}
