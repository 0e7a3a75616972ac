import type {Node} from 'yaml'
import {asScalar, meaningOf, type Setting} from '../reading/trial.ts'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import {choicesFor} from './keys.ts'
import {spellings} from './spellings.ts'

/** Write parts as the one line that stands for a record; a unit behind the last one goes for all. */
export function shortForms(parts: readonly string[], kind: RecordOf, shape: Shape): string[] {
  const {keys, between: gap} = kind.short ?? {keys: [], between: ''}
  if (gap === ' ') return noteForms(parts.join(' '), kind, shape)
  if (keys.length < 2 || parts.length > keys.length || parts.length < 2) return []
  if (parts.length < keys.length)
    return [`{${parts.map((part, at) => `${keys[at]}: ${asScalar(part, true)}`).join(', ')}}`]
  const unit = /\s*(in|inch|inches|mm|cm|["”″])\.?$/i.exec(parts.at(-1)!)?.[0]
  const forAll = unit && parts.map((part) => (/[a-z"”″]\.?$/i.test(part) ? part : `${part}${unit}`))
  const mended = parts.map((part, at) => {
    const kindOfPart = kind.fields[keys[at]!]!
    const leaf = kindOfPart.is === 'record' ? kindOfPart.fields[kindOfPart.short?.keys[0] ?? ''] : kindOfPart
    const isRead = meaningOf(asScalar(part, shape.inBraces), kindOfPart, shape) !== undefined
    return isRead || !leaf ? part : (leafTexts(part, leaf, shape)[0] ?? part)
  })
  return [parts, forAll, mended]
    .filter((each) => each !== undefined && each !== '')
    .map((each) => asScalar((each as string[]).join(gap), shape.inBraces))
}

export const noteToken =
  /(?<![\p{L}\d#.])([A-Ha-h](?:\s?[#b♯♭](?!\p{L})|is(?=\s?\d)|\s(?:sharp|flat))?\s?-?\d)(?![\p{L}\d./])/gu

/** Read "note gauge" in whatever order and with whatever between. */
export function noteForms(text: string, kind: RecordOf, shape: Shape): string[] {
  const notes = [...text.matchAll(noteToken)]
  if (notes.length !== 1) return []
  const [note] = notes
  const before = text.slice(0, note!.index).replace(/[\s,;:=@(–-]+$/, '')
  const after = text.slice(note!.index + note![0].length).replace(/^[\s,;:=@(–-]+/, '')
  const gauge = (after || before).replace(/\)$/, '').trim()
  const [first, second] = kind.short!.keys.map((key) => kind.fields[key]!)
  const own = (part: string, of: Kind | undefined) =>
    part === '' || !of || meaningOf(asScalar(part, true), of, shape) !== undefined
      ? [part]
      : leafTexts(part, of, shape)
  return own(note![1]!.trim(), first).flatMap((n) =>
    own(gauge, second).map((g) => asScalar(`${n} ${g}`.trim(), shape.inBraces)),
  )
}

/** Find the keys of a record that a text, or the words and figures of one, can be the values of. */
export function byFields(text: string, kind: RecordOf, shape: Shape): string[] {
  const whole = fieldsFor(text, kind, shape).map(([key, value]) => `{${key}: ${value}}`)
  const words = splitWords(text)
  if (words.length < 2) return whole
  const taken = new Map<string, string>()
  const left: string[] = []
  for (const word of words) {
    const short = kind.short && kind.short.keys.length > 1 ? partsOf(word) : []
    if (short.length > 1 && short.length <= kind.short!.keys.length) {
      for (const [at, part] of short.entries()) taken.set(kind.short!.keys[at]!, part)
      continue
    }
    const [field] = fieldsFor(word, kind, shape).filter(([key]) => !taken.has(key))
    if (field) taken.set(...field)
    else left.push(word)
  }
  if (left.length > 0 || taken.size < 2) return whole
  const written = (pairs: [string, string][]) => `{${pairs.map((pair) => pair.join(': ')).join(', ')}}`
  // A lone figure beside a word is a diameter where there is one; else it may be the value of any key that reads it.
  const figures = words.filter((word) => /\d/.test(word) && partsOf(word).length === 1)
  const may = figures.length === 1 ? fieldsFor(figures[0]!, kind, shape) : []
  const rest = [...taken].filter(([key]) => key !== may[0]?.[0])
  const ways =
    may.length > 1 && may[0]![0] !== 'diameter' && rest.length < taken.size
      ? may.filter(([key]) => !rest.some(([own]) => own === key)).map((pair) => written([...rest, pair]))
      : [written([...taken])]
  return [...ways, ...whole]
}

const figure =
  /(?<![\p{L}\d])[-+]?[\d.¼½¾⅛⅜⅝⅞][\d\s./¼½¾⅛⅜⅝⅞]*(?:(?:in|mm|cm|inch|inches|deg|degrees)\b|["”″'°])?/giu

/** Part a text into its words and its figures, sizes such as 9 x 6 whole. */
function splitWords(text: string): string[] {
  const size = new RegExp(`${figure.source}(?:\\s*[x×]\\s*${figure.source})*`, 'giu')
  const sizes = [...text.matchAll(size)].map(([found]) => found.trim())
  const words = text
    .replace(size, ',')
    .split(/[,;]|\band\b/)
    .map((word) => word.trim())
    .filter((word) => /\p{L}/u.test(word))
  return sizes.length > 0 ? [...words, ...sizes] : partsOf(text)
}

/** The fields that can hold a text: words first those that choose, then woods, then texts; figures in the schema's order. */
function fieldsFor(text: string, {fields}: RecordOf, shape: Shape): [string, string][] {
  const isFigure = /\d/.test(text)
  const inside = {...shape, inBraces: true}
  const written = asScalar(text, true)
  const all = Object.entries(fields)
  const of = (want: (kind: Kind) => boolean) => all.filter(([, kind]) => want(kind))
  if (isFigure)
    return of((kind) => (kind.is === 'leaf' && !isLoose(kind)) || isShortOfOne(kind))
      .filter(([, kind]) => meaningOf(written, kind, inside) !== undefined)
      .map(([key]) => [key, written])
  const chosen = of((kind) => kind.is === 'choice').flatMap(([key, kind]): [string, string][] =>
    kind.is === 'choice'
      ? choicesFor(text, kind.of)
          .slice(0, 1)
          .map((word) => [key, word])
      : [],
  )
  if (chosen.length > 0) return chosen
  const woods = of((kind) => kind.is === 'leaf' && kind.leaf === 'wood')
  const texts = of((kind) => kind.is === 'leaf' && kind.leaf === 'text')
  return [...woods, ...texts].slice(0, 1).map(([key]) => [key, written])
}

const isShortOfOne = (kind: Kind): boolean => kind.is === 'record' && kind.short?.keys.length === 1

const isLoose = (kind: Kind): boolean => kind.is === 'leaf' && ['text', 'wood', 'flag'].includes(kind.leaf)

/** What is looked at to find a value's shape. */
export interface Shape extends Setting {
  /** The text of a node as the file has it. */
  sourceOf: (node: Node) => string
}

/** Spell a leaf's text as it may have been meant, as far as it can then be read. */
export function leafTexts(text: string, kind: Kind, setting: Setting): string[] {
  if (kind.is !== 'leaf') return []
  if (kind.leaf === 'text' || kind.leaf === 'wood')
    return [asScalar(text.replace(/^[“”„«]+|[“”»]+$/g, ''), setting.inBraces)]
  for (const ring of spellings(text, kind.leaf, setting.units)) {
    const good = ring
      .map((each) => asScalar(each, setting.inBraces))
      .filter((each) => meaningOf(each, kind, setting) !== undefined)
    if (good.length > 0) return good
  }
  return []
}

export const between = /\s*(?:[x×X*,;]|\bby\b|\band\b|\s[-–/]\s|\bmal\b)\s*/

export const partsOf = (text: string): string[] =>
  text
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== '')
