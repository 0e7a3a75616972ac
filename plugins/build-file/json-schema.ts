import type {Kind, Leaf} from './schema/kinds.ts'
import {quantityPaths} from './schema/path.ts'
import {buildSchema} from './schema/schema.ts'
import type {LeafName} from './schema/values.ts'

type Json = Record<string, unknown>

// What a text may look like; the reader is the judge, and says more. Written for JSON Schema, so without flags.
const vulgar = '[\\u00bc-\\u00be\\u2150-\\u215e]'
const fraction = '\\d+\\s?[/\\u2044]\\s?0*[1-9]\\d*'
const amount = `(?:\\d+[ -]${fraction}|\\d+\\s?${vulgar}|${fraction}|${vulgar}|\\d+(?:\\.\\d+)?|\\.\\d+)`
const sign = '[-+\\u2212]?\\s*'
const lengthUnit = `(?:in|inch|inches|ft|foot|feet|mm|cm|m|["\\u2033\\u201d'\\u2032\\u2019])`
const number = '[-+\\u2212]?(?:\\d+(?:\\.\\d+)?|\\.\\d+)'
const withUnit = (units: string) => `^\\s*${number}\\s*(?:${units})\\s*$`

const texts: Record<Exclude<LeafName, 'flag' | 'text' | 'wood'>, string> = {
  angle: `^\\s*${sign}${amount}\\s*(?:\\u00b0|deg(?:rees?)?)?\\s*$`,
  capacitance: withUnit('pF|nF|[u\\u00b5\\u03bc]F|F'),
  date: '^\\d{4}-(?:0[1-9]|1[0-2])-(?:0[1-9]|[12]\\d|3[01])$',
  density: withUnit('kg/m3|kg/m\\u00b3|g/cm3|g/cm\\u00b3|lb/ft3|lb/ft\\u00b3|lb/in3|lb/in\\u00b3'),
  duration: '^\\s*(?:[\\d.]+\\s*h(?:ours?)?)?\\s*(?:[\\d.]+\\s*min(?:utes?)?)?\\s*$',
  force: withUnit('N|lbf?|kgf'),
  gauge: `^\\s*${amount}\\s*(?:${lengthUnit})?\\s*w?\\s*$`,
  label: `^\\s*${amount}\\s*$`,
  length: `^\\s*${sign}${amount}\\s*${lengthUnit}?(?:\\s*${amount}\\s*${lengthUnit})?\\s*$`,
  massPerLength: withUnit('kg/m|g/m|mg/m|lb/in|lb/ft'),
  money: `^\\s*${number}\\s*$`,
  number: `^\\s*${number}\\s*$`,
  pitch: '^\\s*[A-Ga-g][#b\\u266f\\u266d]?-?\\d\\s*$',
  step: `^\\s*(?:\\d+(?:\\.\\d+)?\\s*[/:]\\s*0*[1-9]\\d*(?:\\.\\d+)?|${number}(?:\\s*c(?:ents?)?)?)\\s*$`,
  stiffness: withUnit('GPa|MPa|Mpsi|psi'),
}
const numeric: ReadonlySet<LeafName> = new Set<LeafName>([
  'angle',
  'gauge',
  'label',
  'length',
  'money',
  'number',
  'step',
])

function leafSchema({leaf, limits}: Leaf): Json {
  if (leaf === 'text' || leaf === 'wood') return {type: ['string', 'number', 'boolean']}
  if (leaf === 'flag') return {enum: [true, false, 'yes', 'no', 'true', 'false']}
  const text = {type: 'string', pattern: texts[leaf]}
  if (!numeric.has(leaf)) return text
  const plain = leaf === 'number' || leaf === 'money'
  const least = plain || leaf === 'angle' ? limits.min : leaf === 'length' && !limits.signed ? 0 : undefined
  const bounds = {
    ...(least === undefined ? {} : {minimum: least}),
    ...(plain && limits.max !== undefined ? {maximum: limits.max} : {}),
  }
  return {
    anyOf: [
      {type: limits.whole ? 'integer' : 'number', ...bounds},
      leaf === 'length' && !limits.signed ? {...text, not: {pattern: '^\\s*[-\\u2212]'}} : text,
    ],
  }
}

/** A key without a value is as good as left out, wherever it stands. */
const orEmpty = (schema: Json): Json => ({anyOf: [schema, {type: 'null'}]})

function recordSchema(kind: Extract<Kind, {is: 'record'}>): Json {
  const properties = Object.fromEntries(
    Object.entries(kind.fields).map(([key, field]) => [
      key,
      {description: field.says, ...orEmpty(schemaOf(field))},
    ]),
  )
  const keys: Json = {type: 'object', properties}
  const first = kind.short?.keys.length === 1 ? kind.fields[kind.short.keys[0]!] : undefined
  const short: Json[] = first ? [schemaOf(first)] : kind.short ? [{type: ['string', 'number']}] : []
  const none: Json[] = kind.none ? [{const: 'none'}] : []
  return short.length + none.length ? {anyOf: [keys, ...short, ...none]} : keys
}

function schemaOf(kind: Kind): Json {
  switch (kind.is) {
    case 'leaf':
      return leafSchema(kind)
    case 'choice':
      return {
        type: 'string',
        pattern: `^(?:${kind.of.map((word) => word.replace(/[a-z]/g, (letter) => `[${letter}${letter.toUpperCase()}]`)).join('|')})$`,
      }
    case 'list': {
      const item = schemaOf(kind.item)
      const items: Json = {type: 'array', items: orEmpty(item)}
      if (kind.countable) items.minItems = 1
      if (kind.length) Object.assign(items, {minItems: kind.length, maxItems: kind.length})
      else if (kind.most) items.maxItems = kind.most
      const count = kind.countable ? [{type: 'integer', minimum: 1, maximum: kind.most ?? 12}] : []
      return {anyOf: [items, ...count, ...(kind.countable ? [] : [item])]}
    }
    case 'record':
      return recordSchema(kind)
    case 'map':
      return {type: 'object', additionalProperties: orEmpty(schemaOf(kind.value))}
    case 'either':
      return {anyOf: [schemaOf(kind.first), schemaOf(kind.second)]}
    case 'measured':
      return {anyOf: [measuredDay(), {type: 'array', items: orEmpty(measuredDay())}]}
  }
}

function measuredDay(): Json {
  const byLine = (leaf: LeafName): Json => ({
    type: 'object',
    additionalProperties: orEmpty(leafSchema({is: 'leaf', leaf, says: '', limits: {signed: true}})),
  })
  const properties = {
    on: {type: 'string', pattern: texts.date},
    lines: byLine('length'),
    cents: byLine('number'),
    ...Object.fromEntries(
      quantityPaths()
        .filter((path) => !path.includes('.1'))
        .map((path) => [path, {type: ['string', 'number', 'null']}]),
    ),
  }
  return {type: 'object', properties}
}

/** Write the JSON Schema (draft 2020-12) of a build's front matter, for editors that complete and check YAML. */
export function jsonSchema(): Json {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'The front matter of a build file',
    ...schemaOf(buildSchema as unknown as Kind),
    required: ['title'],
  }
}
