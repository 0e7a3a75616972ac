import {isMap, isPair, isScalar, isSeq, type Node} from 'yaml'
import type {Kind, ListOf, RecordOf} from '../kinds.ts'
import {textOf} from '../reading-context.ts'
import {choicesFor} from './keys.ts'
import {spellings} from './spellings.ts'
import {asScalar, meaningOf, type Setting} from './trial.ts'
import {readTuning} from './tuning.ts'

/** What is looked at to find a value's shape. */
export interface Shape extends Setting {
  /** The text of a node as the file has it. */
  sourceOf: (node: Node) => string
}

/** Write a value in every shape that its writer may have meant, the likeliest first; what cannot be read is among them. */
export function shapesOf(node: Node, kind: Kind, shape: Shape): string[] {
  if (kind.is === 'either') return [kind.first, kind.second].flatMap((each) => shapesOf(node, each, shape))
  if (isSeq(node) && node.items.length === 1 && kind.is !== 'list') {
    const item = node.items[0] as Node
    const own = shape.sourceOf(item)
    if (meaningOf(own, kind, shape) !== undefined) return [own]
    const pairs = kind.is === 'record' ? [merged([item], shape)] : []
    return [...shapesOf(item, kind, shape), ...pairs].filter((text) => text !== '')
  }
  if (kind.is === 'record') return recordShapes(node, kind, shape)
  if (kind.is === 'list') return listShapes(node, kind, shape)
  if (kind.is === 'leaf' && isScalar(node)) return leafTexts(textOf(node), kind, shape)
  if (kind.is === 'choice' && isScalar(node)) return choicesFor(textOf(node), kind.of)
  return []
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

const between = /\s*(?:[x×X*,;]|\bby\b|\band\b|\s[-–/]\s|\bmal\b)\s*/
const partsOf = (text: string): string[] =>
  text
    .split(between)
    .map((part) => part.trim())
    .filter((part) => part !== '')

function recordShapes(node: Node, kind: RecordOf, shape: Shape): string[] {
  if (isSeq(node)) {
    const items = node.items as Node[]
    const isPairs = items.every((item) => isMap(item) || isPair(item))
    if (isPairs) return [merged(items, shape)]
    if (!items.every((item) => isScalar(item))) return []
    return shortForms(
      items.map((item) => textOf(item)),
      kind,
      shape,
    )
  }
  if (isMap(node)) {
    // Blank values: `{10 x 7 x 2}`, `{bolt}`.
    const only = node.items.length === 1 ? node.items[0]! : undefined
    const isBare = only && isScalar(only.key) && (!only.value || (isScalar(only.value) && !only.value.source))
    return isBare ? [textOf(only.key as never), ...recordShapes(only.key as Node, kind, shape)] : []
  }
  if (!isScalar(node)) return []
  const text = textOf(node)
  if (kind.none && /^(?:no|-|n\/a|nothing|without|false|0)$/i.test(text)) return ['none']
  return [...shortForms(partsOf(text), kind, shape), ...byFields(text, kind, shape)]
}

/** Put the sources of single pairs into one pair of braces. */
function merged(items: readonly unknown[], {sourceOf}: Shape): string {
  const pairs = items.flatMap((item) =>
    isMap(item)
      ? item.items.map(
          (pair) => `${sourceOf(pair.key as Node)}: ${pair.value ? sourceOf(pair.value as Node) : ''}`,
        )
      : [],
  )
  return pairs.length > 0 ? `{${pairs.join(', ')}}` : ''
}

/** Write parts as the one line that stands for a record; a unit behind the last one goes for all. */
function shortForms(parts: readonly string[], kind: RecordOf, shape: Shape): string[] {
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

const noteToken =
  /(?<![\p{L}\d#.])([A-Ha-h](?:\s?[#b♯♭](?!\p{L})|is(?=\s?\d)|\s(?:sharp|flat))?\s?-?\d)(?![\p{L}\d./])/gu

/** Read "note gauge" in whatever order and with whatever between. */
function noteForms(text: string, kind: RecordOf, shape: Shape): string[] {
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
function byFields(text: string, kind: RecordOf, shape: Shape): string[] {
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

function listShapes(node: Node, kind: ListOf<Kind>, shape: Shape): string[] {
  const inside = {...shape, inBraces: true}
  const short = kind.item.is === 'record' ? kind.item.short : undefined
  if (short?.between === ' ') {
    const regrouped = noteLists(node, kind, inside)
    if (regrouped.length > 0) return regrouped
  }
  if (isMap(node)) {
    const keys = node.items.map((pair) => pair.key as Node)
    const isBare = node.items.every(({value}) => !value || (isScalar(value) && !value.source))
    return isBare ? [`[${keys.map(shape.sourceOf).join(', ')}]`] : []
  }
  if (!isScalar(node)) return []
  const text = textOf(node)
  const count = kind.countable ? (/^(\d+)\s*[a-z]*$/i.exec(text)?.[1] ?? numberWord(text)) : undefined
  if (count) return [count]
  const parts = text
    .replace(/^[([{\s]+|[)\]}\s]+$/g, '')
    .split(/\s*(?:[;|]|,(?!\d)|\band\b|&|\s\/\s)\s*|,(?=\d)/)
    .filter((part) => part !== '')
  const byBlanks = /[;|,]/.test(text) ? [] : text.split(/\s+/)
  return [parts, byBlanks]
    .filter((each) => each.length > 1)
    .map((each) => each.map((part) => mendedItem(part, kind.item, inside)))
    .map((each) => `[${each.join(', ')}]`)
}

const mendedItem = (part: string, kind: Kind, setting: Setting): string =>
  meaningOf(asScalar(part, true), kind, setting) === undefined
    ? (leafTexts(part, kind, setting)[0] ?? asScalar(part, true))
    : asScalar(part, true)

const numberWord = (text: string): string | undefined => {
  const at = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'].indexOf(
    text.toLowerCase().replace(/\s*strings?$/, ''),
  )
  return at < 0 ? undefined : String(at + 1)
}

/** Read a whole list as notes, each with what follows it up to the next. */
function noteLists(node: Node, kind: ListOf<Kind>, shape: Shape): string[] {
  const text = shape.sourceOf(node).replace(/^[[({\s]+|[\])}\s]+$/g, '')
  if (/:\s/.test(text) && /\b(?:note|gauge)\b/.test(text)) return []
  const notes = [...text.matchAll(noteToken)]
  if (notes.length === 0 && isScalar(node))
    return readTuning(textOf(node), undefined).map((tuning) => `[${tuning.join(', ')}]`)
  if (notes.length === 0) return []
  const isLast = /^\s*[\d.]/.test(text) && notes[0]!.index > 0
  const items = notes.map((note, at) => {
    const from = isLast ? (notes[at - 1] ? notes[at - 1]!.index + notes[at - 1]![0].length : 0) : note.index
    const to = isLast ? note.index + note[0].length : (notes[at + 1]?.index ?? text.length)
    return text.slice(from, to).replace(/["'\s,;|/&-]+$|^["'\s,;|/&-]+/g, '')
  })
  const record = kind.item as RecordOf
  const written = items.map((item) =>
    meaningOf(asScalar(item, true), record, shape) === undefined
      ? noteForms(item.replaceAll('\n', ' '), record, shape)[0]
      : asScalar(item, true),
  )
  return written.every((each) => each !== undefined) ? [`[${written.join(', ')}]`] : []
}
