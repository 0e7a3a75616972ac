import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {StringPlan} from '../strings/strings.ts'
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

/** What the design asks for, wood apart. */
export interface Asked {
  strings: readonly StringPlan[] | undefined
  /** A row of the build file each. */
  screws: readonly {of: string}[] | undefined
  /** The fret wire to buy. */
  wireMm: number | undefined
}

/** Something to get, before it is known what it cost; `isCalled` knows it by what a cost list would call it. */
export interface Needed {
  item: BillItem
  count: number
  /** The path of the build file that asks for it. */
  from: string
  isCalled: (item: string) => boolean
  /** Of a set, one gives all that is needed. */
  isInSet?: (item: string) => boolean
}

/** List what the design asks for besides wood: strings and hardware. */
export const neededItems = (values: BuildValues, asked: Asked): Needed[] => [
  ...stringItems(asked.strings),
  ...hardwareItems(values, asked),
]

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

const words = {tuners: /tuner|machine head/i, ferrules: /ferrule/i, pins: /\bpins?\b/i} as const

/** What every string has one of, also where the file says nothing of it. */
export const oneAString = ({strings}: BuildValues): Pick<Needed, 'count' | 'isCalled'>[] =>
  Object.values(words).map((word) => ({
    count: strings?.length || 1,
    isCalled: (listed) => word.test(listed),
  }))

/** List the hardware that the design asks for, counted: tuners, anchors, screws, fret wire, rods, wiring, extras. */
function hardwareItems(values: BuildValues, {screws: driven = [], wireMm}: Asked): Needed[] {
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
