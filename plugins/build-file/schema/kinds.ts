import type {LeafName, LeafTypes, MeasuredValues, Words} from './values.ts'

/** What a leaf may be restricted by; ranges are in the kind's own unit (mm, degrees, …), ends included. */
export interface Limits {
  /** May lie on either side, so may be negative. */
  signed?: true
  min?: number
  max?: number
  whole?: true
}

export interface Leaf<N extends LeafName = LeafName> {
  is: 'leaf'
  leaf: N
  says: string
  limits: Limits
}
export interface Choice<T extends string = string> {
  is: 'choice'
  of: readonly T[]
  says: string
}
export interface ListOf<K = unknown> {
  is: 'list'
  item: K
  says: string
  /** `strings: 3` stands for three items of which nothing else is known. */
  countable?: true
  /** Exactly this many items. */
  length?: number
  /** At most this many items; more is a slip. */
  most?: number
}
interface ShortForm<K extends string> {
  keys: readonly K[]
  between: ' x ' | ' ' | ''
  /** The first is the larger, so that the other way round is asked about: a board 1 1/2 x 3/4. */
  isFalling?: true
}
interface Fields {
  [key: string]: Kind
}
export interface RecordOf<F extends Fields = Fields> {
  is: 'record'
  fields: F
  says: string
  /** The keys that one line of text stands for, in order, and what parts them. */
  short?: ShortForm<keyof F & string>
  /** The word `none` says that there is none. */
  none?: true
}
/** A mapping with keys of the maker's own: rule names, line labels, paths. */
export interface MapOf<K = unknown> {
  is: 'map'
  keys: 'rule' | 'label' | 'path' | 'score'
  value: K
  says: string
}
/** The first kind that fits. */
export interface Either<A = unknown, B = unknown> {
  is: 'either'
  first: A
  second: B
  says: string
}
/** As-built values: `on`, `lines`, `cents`, `resonance`, `strings.<note>.tension`, or any path of the schema; or a list of such. */
export interface Measured {
  is: 'measured'
  says: string
}

export type Kind = Leaf | Choice | ListOf<Kind> | RecordOf | MapOf<Kind> | Either<Kind, Kind> | Measured

export type Infer<K> =
  K extends Leaf<infer N>
    ? LeafTypes[N]
    : K extends Choice<infer T>
      ? Words<T>
      : K extends ListOf<infer I>
        ? Infer<I>[]
        : K extends RecordOf<infer F>
          ? {[P in keyof F]?: Infer<F[P]>}
          : K extends MapOf<infer V>
            ? Record<string, Infer<V>>
            : K extends Either<infer A, infer B>
              ? Infer<A> | Infer<B>
              : K extends Measured
                ? MeasuredValues
                : never

const leaf =
  <N extends LeafName>(name: N) =>
  (says: string, limits: Limits = {}): Leaf<N> => ({
    is: 'leaf',
    leaf: name,
    says,
    limits,
  })

export const angle = leaf('angle')
export const capacitance = leaf('capacitance')
export const date = leaf('date')
export const density = leaf('density')
export const duration = leaf('duration')
export const flag = leaf('flag')
export const force = leaf('force')
export const gauge = leaf('gauge')
export const label = leaf('label')
export const length = leaf('length')
export const massPerLength = leaf('massPerLength')
export const money = leaf('money')
export const number = leaf('number')
export const pitch = leaf('pitch')
export const step = leaf('step')
export const stiffness = leaf('stiffness')
export const text = leaf('text')
export const wood = leaf('wood')

export const choice = <const T extends string>(of: readonly T[], says: string): Choice<T> => ({
  is: 'choice',
  of,
  says,
})

/** More items than this are no list that somebody wrote. */
const mostItems = 1000

export const list = <K extends Kind>(
  item: K,
  says: string,
  more: {countable?: true; length?: number; most?: number} = {},
): ListOf<K> => ({is: 'list', item, says, most: mostItems, ...more})

export const record = <F extends Fields>(
  says: string,
  fields: F,
  more: {
    short?: ShortForm<keyof F & string>
    none?: true
  } = {},
): RecordOf<F> => ({is: 'record', fields, says, ...more})

export const map = <K extends Kind>(keys: MapOf['keys'], value: K, says: string): MapOf<K> => ({
  is: 'map',
  keys,
  value,
  says,
})

export const either = <A extends Kind, B extends Kind>(first: A, second: B, says: string): Either<A, B> => ({
  is: 'either',
  first,
  second,
  says,
})

export const measured = (says: string): Measured => ({is: 'measured', says})

const leafExamples: Record<LeafName, string> = {
  angle: 'an angle in degrees such as 13',
  capacitance: 'a capacitance such as 20 nF',
  date: 'a date such as 2026-03-07',
  density: 'a density such as 672 kg/m3',
  duration: 'a duration such as 1 h 30 min',
  flag: 'true or false',
  force: 'a force such as 60 N',
  gauge: 'a gauge such as .017 or .032w',
  label: 'the number of a line such as 7 or 6 1/2',
  length: 'a length such as 3/4 or 19 mm',
  massPerLength: 'a mass per length such as 5.8 g/m',
  money: 'an amount of money such as 2.10',
  number: 'a number',
  pitch: 'a pitch such as D3 or F#3',
  step: 'cents such as 702 or a ratio such as 3/2',
  stiffness: 'a stiffness such as 12.6 GPa',
  text: 'a text',
  wood: 'the name of a wood',
}

/** Word what a kind of value looks like, for a message. */
export function exampleOf(kind: Kind): string {
  switch (kind.is) {
    case 'leaf':
      return leafExamples[kind.leaf]
    case 'choice':
      return `one of ${kind.of.join(', ')}`
    case 'list':
      return kind.countable ? 'a list in square brackets, or a number,' : 'a list in square brackets'
    case 'record':
      return kind.short && kind.short.keys.length > 1
        ? `${kind.short.keys.join(kind.short.between)}, or keys such as ${Object.keys(kind.fields).slice(0, 3).join(', ')},`
        : `keys such as ${Object.keys(kind.fields).slice(0, 3).join(', ')}`
    case 'map':
      return 'keys with values'
    case 'measured':
      return 'keys with values, or a list of such,'
    case 'either':
      return `${exampleOf(kind.first)}, or ${exampleOf(kind.second)},`
  }
}
