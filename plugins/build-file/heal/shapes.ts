import {isMap, isPair, isScalar, isSeq, type Node} from 'yaml'
import {textOf} from '../reading/reading-context.ts'
import {asScalar, meaningOf, type Setting} from '../reading/trial.ts'
import type {Kind, ListOf, RecordOf} from '../schema/kinds.ts'
import {choicesFor} from './keys.ts'
import {byFields, leafTexts, noteForms, noteToken, partsOf, type Shape, shortForms} from './short-forms.ts'
import {numbers} from './spellings.ts'
import {readTuning} from './tuning.ts'

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

/** So many strings, and no more, are read where they are spelt. */
const mostSpelt = 8

const numberWord = (text: string): string | undefined => {
  const at = numbers.slice(0, mostSpelt).indexOf(text.toLowerCase().replace(/\s*strings?$/, ''))
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
