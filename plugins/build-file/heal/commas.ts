import {isScalar, type Node, type Pair} from 'yaml'
import {type Slip, textOf} from '../reading/reading-context.ts'
import {asScalar, nodeOf, readable} from '../reading/trial.ts'
import type {Kind} from '../schema/kinds.ts'
import {present} from './keys.ts'
import {shapesOf} from './shapes.ts'
import {leafTexts} from './short-forms.ts'
import type {Healing, Mend} from './source.ts'

/**
 * A comma inside braces that has made keys of the rest of a value: the whole may be a text that wants quotes, a list
 * that wants brackets, a decimal comma, or sizes that follow a word (`wood: cedar, 9 x 6`).
 */
export function healComma({key, map, kind, why}: Slip, {context, source}: Healing): Mend | undefined {
  if (!key || !map || kind?.is !== 'record') return undefined
  const items = map.items as Pair<Node, Node | null>[]
  const glued = (each: Pair<Node, Node | null>) =>
    isScalar(each.key) ? /^([\w -]+?)\s*[:=]\s*(\S.*)$/.exec(textOf(each.key)) : null
  const isGlued = (each: Pair<Node, Node | null>) => Object.hasOwn(kind.fields, glued(each)?.[1] ?? ' ')
  const isBare = (each: Pair<Node, Node | null>) =>
    !isGlued(each) && (!each.value || (isScalar(each.value) && each.value.value === null))
  const isKnown = (pair: Pair<Node, Node | null>) =>
    isScalar(pair.key) && Object.hasOwn(kind.fields, textOf(pair.key))
  const at = items.findIndex((each) => each.key === key)
  const first = items.findLastIndex((each, i) => i < at && (isKnown(each) || !isBare(each)))
  // A key with its colon, but no blank behind it.
  if (isGlued(items[at]!)) {
    const [said, word = '', rest = ''] = glued(items[at]!)!
    const text = `${word}: ${asScalar(rest, true)}`
    return {
      texts: [text],
      isSure: true,
      message: `"${said}" wants a blank behind its colon; ${text} would do`,
    }
  }
  const [, word = '', rest = ''] = /^([\w-]+)\s+(\S.*)$/.exec(textOf(key as never)) ?? []
  if (Object.hasOwn(kind.fields, word) && !present(items).has(word)) {
    const text = `${word}: ${asScalar(rest, true)}`
    return {texts: [text], isSure: true, message: `"${word} ${rest}" wants a colon; ${text} would do`}
  }
  if (first < at - 1) return {texts: [], isSure: false, isTold: false}
  const setting = {units: context.units, inBraces: true, sourceOf: source.sourceOf}
  const head = items[first]
  const name = textOf(key as never)
  const last = items.findIndex((each, i) => i > at && (isKnown(each) || !isBare(each)))
  const run = items.slice(at, last < 0 ? undefined : last)
  const sizes = sizesOf(name, kind.short?.keys ?? [], present(items))
  const own = head && isKnown(head) ? kind.fields[textOf(head.key as never)] : undefined
  const isText = own?.is === 'leaf' && own.leaf === 'text'
  if (sizes && !isText)
    return {texts: [sizes], isSure: true, message: `"${name}" has no key; ${sizes} would do`}
  if (!head?.value || !own) {
    const set = fieldsOf(name, kind, present(items), setting)
    return set ? {texts: [set], isSure: false, message: `"${name}" has no key; ${set} would do`} : undefined
  }
  const from = head.value.range![0]
  const [, to] = source.extentOf(run.at(-1)!)
  const whole = source.text.slice(from, to)
  const texts = readable(wholeTexts(whole, own, setting), own, setting)
  if (texts.length === 0) return undefined
  return {
    texts,
    isSure: texts.length === 1,
    at: source.place(from, to),
    message: `${why}; ${texts.join(' or ')} would do`,
  }
}

function wholeTexts(whole: string, kind: Kind, setting: Parameters<typeof shapesOf>[2]): string[] {
  const quoted = JSON.stringify(whole.replace(/["“”]/g, '').replace(/\s*\n\s*/g, ' '))
  if (kind.is === 'leaf' && (kind.leaf === 'text' || kind.leaf === 'wood')) return [quoted]
  const node = nodeOf(quoted, true)
  if (!node) return []
  const ownLeaf = kind.is === 'leaf' ? leafTexts(whole, kind, setting) : []
  return [...ownLeaf, ...shapesOf(node, kind, setting)]
}

/** Sizes without their keys take the keys of the short form that are free. */
function sizesOf(text: string, keys: readonly string[], taken: ReadonlySet<string>): string | undefined {
  if (!/^[\d./\s¼½¾⅛⅜⅝⅞"″inm-]+(?:[x×][\d./\s¼½¾⅛⅜⅝⅞"″inm-]+)+$/i.test(text)) return undefined
  const parts = text.split(/\s*[x×]\s*/i)
  if (parts.length > keys.length || keys.slice(0, parts.length).some((key) => taken.has(key)))
    return undefined
  return parts.map((part, at) => `${keys[at]}: ${part}`).join(', ')
}

/** A bare word or figure first in the braces: the key that it can be the value of. */
function fieldsOf(
  name: string,
  kind: Extract<Kind, {is: 'record'}>,
  taken: ReadonlySet<string>,
  setting: Parameters<typeof shapesOf>[2],
): string | undefined {
  const node = nodeOf(JSON.stringify(name), true)
  const found = node ? readable(shapesOf(node, kind, setting), kind, setting) : []
  const inner = found.map((text) => /^\{(.*)\}$/.exec(text)?.[1]).find((text) => text !== undefined)
  const key = inner?.split(':')[0]
  return key && !taken.has(key) ? inner : undefined
}
