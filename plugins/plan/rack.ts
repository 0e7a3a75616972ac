import type {StockPiece} from '../build-file/schema/wood.ts'
import type {BuildValues} from '../build-file/schema.ts'
import type {Context, GonePiece, Piece} from './context.ts'
import type {Cuts} from './cut-list.ts'

/** A piece on the rack. */
export interface RackPiece extends Piece {
  /** Its own density and stiffness, where the rack's file gives them. */
  densityKgM3?: number | undefined
  stiffnessMpa?: number | undefined
  /** What it is left over from: there since the day that build was started. */
  from?: {build: string; piece: string; on: string} | undefined
}

/** The rack between two builds: what stands on it, and what became of pieces that no longer do. */
export interface Rack {
  pieces: readonly RackPiece[]
  cut: readonly {id: string; by: string}[]
}

/** Stand the pieces of the rack file on it, `count: 6` as `A4.1` to `A4.6`; one without a size or id is left out. */
export function rackOf(listed: readonly StockPiece[]): Rack {
  const pieces = listed.flatMap((piece) => {
    const {id, wood, length, width, thickness, clear, count} = piece
    if (!id || !length || !width || !thickness) return []
    const [from, to] = clear ?? []
    const many = count?.value ?? 1
    return Array.from(
      {length: many},
      (_, k): RackPiece => ({
        id: many > 1 ? `${id.value}.${k + 1}` : id.value,
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
  return {pieces, cut: []}
}

/** A build as the rack sees it. */
export interface RackBuild {
  slug: string
  values: Pick<BuildValues, 'started' | 'status' | 'take' | 'stock' | 'scale'>
}

/** Put builds in the order in which they take their wood: by the day they were started, then by slug; undated ones last. */
function inRackOrder<B extends RackBuild>(builds: readonly B[]): B[] {
  const day = ({values}: B) => values.started?.iso ?? '\uffff'
  const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0)
  return [...builds].sort((a, b) => compare(day(a), day(b)) || compare(a.slug, b.slug))
}

export type RackContext = Required<Omit<Context, 'journal'>>

/**
 * Lead the builds past the rack in their order: each is planned with what stands there on its day, and leaves its
 * offcuts. `cutsOf` plans one. Gives the rack as it stands after the last.
 */
export async function throughRack<B extends RackBuild>(
  start: Rack,
  builds: readonly B[],
  cutsOf: (build: B, context: RackContext) => Promise<Cuts | undefined>,
): Promise<Rack> {
  let rack = start
  for (const build of inRackOrder(builds)) {
    rack = putBack(rack, build, await cutsOf(build, piecesFor(rack, build)))
  }
  return rack
}

/**
 * Give the pieces that stand on the rack on the day a build is started (any day for one without a date), and those of
 * its `take` that it cannot have, with why.
 */
function piecesFor({pieces, cut}: Rack, {values: {started, take = []}}: RackBuild): RackContext {
  const isThere = (bought: string | undefined) => !bought || !started || bought <= started.iso
  const asked = new Set(take.map(({value}) => value))
  const isAsked = (id: string) => asked.has(id) || asked.has(id.replace(/\.\d+$/, ''))
  const later = pieces.flatMap(({id, bought}): GonePiece[] =>
    bought && !isThere(bought) && isAsked(id) ? [{id, why: 'later', on: bought}] : [],
  )
  const gone = cut.flatMap(({id, by}): GonePiece[] => (isAsked(id) ? [{id, why: 'cut', by}] : []))
  return {
    pieces: pieces
      .filter(({bought}) => isThere(bought))
      .map(({from, densityKgM3, stiffnessMpa, ...piece}) => piece),
    gone: [...gone, ...later],
  }
}

/**
 * Leave the rack as it stands after a build: the pieces it cut are gone, their offcuts stand there under new names, by
 * falling length; what it took and did not cut stands where it stood. An idea, and a build without a date, changes
 * nothing.
 */
function putBack(rack: Rack, {slug, values}: RackBuild, cuts: Cuts | undefined): Rack {
  const {started} = values
  if (!cuts || !started || values.status?.value === 'idea') return rack
  const isOwn = new Set((values.stock ?? []).map(({id}, i) => id?.value ?? `piece ${i + 1}`))
  const cut = cuts.pieces.filter(({stockId}) => !isOwn.has(stockId)).map(({id}) => ({id, by: slug}))
  const offcuts = cuts.pieces.flatMap((piece) =>
    piece.offcuts.map(({lengthMm, widthMm, thicknessMm}, i): RackPiece => {
      const name = `${piece.id}-${offcutName(i)}`
      return {
        id: isOwn.has(piece.stockId) ? `${slug}.${name}` : name,
        wood: piece.wood,
        lengthMm,
        widthMm,
        thicknessMm,
        from: {build: slug, piece: piece.id, on: started.iso},
      }
    }),
  )
  const isCut = new Set(cut.map(({id}) => id))
  return {
    pieces: [...rack.pieces.filter(({id}) => !isCut.has(id)), ...offcuts],
    cut: [...rack.cut, ...cut],
  }
}

/** List what stands on the rack on a day; without one, everything that was ever bought and not cut. */
export function piecesOn({pieces}: Rack, day: string | undefined): RackPiece[] {
  return pieces.filter(({bought, from}) => {
    const since = from?.on ?? bought
    return !since || !day || since <= day
  })
}

/** Tell whether a build's plan depends on the rack: it takes pieces, or asks for the longest scale without wood of its own. */
export function seesRack({values: {take, stock, scale}}: RackBuild): boolean {
  return (take?.length ?? 0) > 0 || (!scale?.length && !stock?.length)
}

/** Name the n-th offcut of a piece, from 0: `a` to `z`, then `aa`, `ab` … */
export function offcutName(n: number): string {
  const last = String.fromCharCode(97 + (n % 26))
  return n < 26 ? last : offcutName(Math.floor(n / 26) - 1) + last
}
