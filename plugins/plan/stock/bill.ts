import {proposedAt} from '../../build-file/schema/path.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Context, Lot} from '../kit/context.ts'
import type {Settled} from '../kit/settled.ts'
import type {StringPlan} from '../strings/strings.ts'
import {money} from './cost.ts'
import type {Cuts} from './cut-list.ts'
import {pieceId} from './stock-at-hand.ts'
import type {BoardSize} from './to-buy.ts'

/** Something to get: a text is what the file calls it. */
export type BillItem =
  | string
  | {is: 'string'; gauge?: string | undefined; for: string; material?: string | undefined}
  | {is: 'tuners' | 'ferrules' | 'pins' | 'tailpiece' | 'retainer screw' | 'jack'}
  | {is: 'screws'; size?: string | undefined; lengthMm?: number | undefined}
  | {is: 'rod' | 'bolt' | 'blank'; for: 'nut' | 'bridge'; diameterMm?: number | undefined}
  | {is: 'fret wire'; mm: number; metal?: string | undefined; widthMm?: number | undefined}
  | {is: 'pickup'; kind?: string | undefined}
  | {is: 'wood'; wood: string; id: string}
  | ({is: 'board'; wood: string} & Pick<BoardSize, 'nominal' | 'widthMm'>)

export interface BillRow {
  item: BillItem
  count: number
  each?: number | undefined
  total?: number | undefined
  /** What asks for it: a path of the build file, `stock` or `to buy`. */
  from: string
  /** What of the rack it comes from, where that is no wood. */
  lot?: string | undefined
  /** What asks for it is proposed. */
  proposed?: true | undefined
  /** What of the rack would do, though the build does not take it. */
  atHand?: string | undefined
}

/** What the design asks for. */
interface Asked {
  strings: readonly StringPlan[] | undefined
  /** A row of the build file each. */
  screws: readonly {of: string}[] | undefined
  /** The fret wire to buy. */
  wireMm: number | undefined
  cuts: Cuts | undefined
}

/**
 * List what has to be got: what the file says was paid for, what it takes from the rack, then strings, and hardware and
 * wood that the design asks for and neither of them gives. Undefined where there is nothing to get.
 */
export function planBill(settled: Settled, asked: Asked, {pieces, lots}: Context): BillRow[] | undefined {
  const paid = (settled.values.cost ?? []).flatMap(({item, count, each}): BillRow[] =>
    item ? [totalled({item: item.value, count: count?.value ?? 1, from: 'cost'}, each?.amount)] : [],
  )
  const names = (settled.values.cost ?? []).flatMap(({item}) => item?.value ?? [])
  const isListed = ({isCalled}: Needed) => names.some(isCalled)
  const {rows: given, left: needed} = fromLots(
    [...stringItems(asked.strings), ...impliedItems(settled, asked)],
    lotsTaken(settled.values, lots),
    oneAString(settled.values),
  )
  const wanted = needed
    .filter((one) => !isListed(one))
    .map(({item, count, from, isCalled}): BillRow => {
      const atHand = lots?.find((lot) => isCalled(lot.item))?.id
      return {item, count, from, proposed: proposedAt(settled.values, from), atHand}
    })
  const wood = woodItems(settled, asked.cuts, pieces)
  const rows = [...paid, ...given, ...wanted, ...wood]
  return rows.length > 0 ? rows : undefined
}

/** Something to get, before it is known what it cost; `isCalled` knows it by what a cost list would call it. */
interface Needed extends Pick<BillRow, 'item' | 'count' | 'from'> {
  isCalled: (item: string) => boolean
  /** Of a set, one gives all that is needed. */
  isInSet?: (item: string) => boolean
}

/** List the strings by gauge and material, those alike together; a course counts each of its strings. */
function stringItems(strings: readonly StringPlan[] = []): Needed[] {
  const found = new Map<string, Needed>()
  for (const {gauge, material, wound, course, name} of strings) {
    const ofWhat = wound ? undefined : material
    const key = JSON.stringify([gauge, gauge === undefined && name, ofWhat])
    const item: BillItem = {is: 'string', gauge, for: name, material: ofWhat}
    const count = (found.get(key)?.count ?? 0) + course
    const isCalled = (listed: string) => gauge !== undefined && listed.split(/[\s,()]+/).includes(gauge)
    found.set(key, {item, count, from: 'strings', isCalled, isInSet: isSetOfStrings})
  }
  return [...found.values()]
}

const isSetOfStrings = (item: string): boolean => /\bstrings\b|\bstring set\b/i.test(item)

/** List the lots of the rack that a build takes from, those that have come into the shop. */
function lotsTaken({take = []}: BuildValues, lots: Context['lots'] = []): Lot[] {
  const named = new Set(take.map(({value}) => value))
  return lots.filter(({id}) => named.has(id))
}

/**
 * Give what is needed from the lots that are taken: as many as the design asks for and the lot has; of what it asks for
 * by no name as many as are usual, or one. `left` is what is still to be got.
 */
function fromLots(
  needed: readonly Needed[],
  lots: readonly Lot[],
  usual: readonly Pick<Needed, 'count' | 'isCalled'>[],
): {rows: BillRow[]; left: Needed[]} {
  let left = [...needed]
  const rows = lots.map((lot) => {
    const inSet = left.filter(({isCalled, isInSet}) => !isCalled(lot.item) && isInSet?.(lot.item))
    const of = left.find(({isCalled}) => isCalled(lot.item))
    const {count: wanted} = of ?? usual.find(({isCalled}) => isCalled(lot.item)) ?? {count: 1}
    const count = Math.min(wanted, lot.count)
    left = of
      ? left.flatMap((one) => (one === of ? lessBy(one, count) : [one]))
      : left.filter((one) => !inSet.includes(one))
    return totalled({item: lot.item, count, from: 'stock', lot: lot.id}, lot.each)
  })
  return {rows, left}
}

const lessBy = (one: Needed, count: number): Needed[] =>
  one.count > count ? [{...one, count: one.count - count}] : []

const words = {tuners: /tuner|machine head/i, ferrules: /ferrule/i, pins: /\bpins?\b/i} as const

/** What every string has one of, also where the file says nothing of it. */
const oneAString = ({strings}: BuildValues): Pick<Needed, 'count' | 'isCalled'>[] =>
  Object.values(words).map((word) => ({
    count: strings?.length || 1,
    isCalled: (listed) => word.test(listed),
  }))

/** List the hardware that the design asks for, counted: tuners, anchors, screws, fret wire, rods, wiring, extras. */
function impliedItems({values}: Settled, {screws: driven = [], wireMm}: Asked): Needed[] {
  const {tuners, anchors, screws, nut, bridge, pickup, extras, head, frets} = values
  const strings = values.strings?.length ?? 0
  const need = (item: BillItem, count: number, from: string, word: RegExp): Needed[] =>
    count > 0 ? [{item, count, from, isCalled: (listed) => word.test(listed)}] : []
  // What is neither rod nor bolt is filed or carved out of a blank.
  const names = {rod: /\brods?\b/i, bolt: /\bbolts?\b/i}
  const shaped = {nut: /\bnuts?\b/i, bridge: /\b(?:bridge|saddle)\b/i}
  const stood = (of: 'nut' | 'bridge', kind: string | undefined, diameterMm?: number) => {
    if (kind === 'rod' || kind === 'bolt')
      return need({is: kind, for: of, diameterMm: diameterMm || undefined}, 1, of, names[kind])
    return kind === 'flat' || kind === 'saddle' ? need({is: 'blank', for: of}, 1, of, shaped[of]) : []
  }
  const anchor = anchors?.kind?.value
  return [
    ...need({is: 'tuners'}, tuners ? strings : 0, 'tuners', words.tuners),
    ...need({is: 'ferrules'}, anchor === 'ferrule' ? strings : 0, 'anchors', words.ferrules),
    ...need({is: 'pins'}, anchor === 'pins' ? strings : 0, 'anchors', words.pins),
    ...need({is: 'tailpiece'}, anchor === 'tailpiece' ? 1 : 0, 'anchors', /tailpiece/i),
    ...(screws ?? []).flatMap((row, i) =>
      need(
        {is: 'screws', size: row.size && String(row.size.value), lengthMm: row.length?.mm},
        driven.filter(({of}) => of === `screws.${i + 1}`).length,
        `screws.${i + 1}`,
        /screw/i,
      ),
    ),
    ...stood('nut', nut?.kind?.value, nut?.diameter?.mm),
    ...stood('bridge', bridge?.kind?.value),
    ...need({is: 'retainer screw'}, head?.retainer?.value === 'screw' ? 1 : 0, 'head.retainer', /retainer/i),
    ...(wireMm === undefined ? [] : need(wireItem(wireMm, frets), 1, 'frets', /fret ?wire/i)),
    ...need(
      {is: 'pickup', kind: pickup?.kind?.value},
      pickup ? 1 : 0,
      'pickup',
      /pickup|piezo|disc|coil|microphone/i,
    ),
    ...need({is: 'jack'}, pickup?.jack ? 1 : 0, 'pickup.jack', /\bjack/i),
    ...(extras ?? []).map(({value}, i): Needed => {
      const isCalled = (listed: string) => listed.toLowerCase().includes(value.toLowerCase())
      // Holes are proposed for two.
      const count = /strap buttons/i.test(value) ? 2 : 1
      return {item: value, count, from: `extras.${i + 1}`, isCalled}
    }),
  ]
}

function wireItem(mm: number, frets: BuildValues['frets']): BillItem {
  return {is: 'fret wire', mm, metal: frets?.material?.value, widthMm: frets?.['wire-width']?.mm}
}

/** List the pieces that are cut, with what they cost where that is known, and the boards still to be bought. */
function woodItems({values}: Settled, cuts: Cuts | undefined, pieces: Context['pieces']): BillRow[] {
  if (!cuts) return []
  const counts = new Map<string, {wood: string; count: number}>()
  for (const {stockId, wood} of cuts.pieces) {
    const known = counts.get(stockId)
    counts.set(stockId, {wood, count: (known?.count ?? 0) + 1})
  }
  const cost = (id: string) =>
    values.stock?.find((piece, i) => pieceId(piece, i) === id)?.cost?.amount ??
    pieces.find((piece) => piece.id === id)?.cost
  return [
    ...[...counts].map(([id, {wood, count}]) =>
      totalled({item: {is: 'wood', wood, id}, count, from: 'stock'}, cost(id)),
    ),
    ...cuts.bought.map(
      ({wood, nominal, widthMm, count}): BillRow => ({
        item: {is: 'board', wood, nominal, widthMm},
        count,
        from: 'to buy',
      }),
    ),
  ]
}

/** Put the price of one and of all beside an item; without a price neither. */
function totalled(row: Omit<BillRow, 'each' | 'total'>, each: number | undefined): BillRow {
  return each === undefined ? row : {...row, each, total: money(row.count * each)}
}
