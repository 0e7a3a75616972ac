import {isMap, isScalar, type Node, parseDocument} from 'yaml'
import type {Kind} from '../schema/kinds.ts'
import {readValue} from './read-value.ts'
import {beginReading, type ReadingContext, textOf} from './reading-context.ts'

const nowhere = {line: 1, column: 1, endLine: 1, endColumn: 1}

/** How a text would stand in the file. */
export interface Setting {
  units: 'in' | 'mm'
  /** Within braces or square brackets, where a comma parts. */
  inBraces: boolean
}

/** Parse a text as it would be read behind a key; undefined where it is no one value. */
export function nodeOf(text: string, inBraces: boolean): Node | undefined {
  const doc = parseDocument(inBraces ? `{k: ${text}}` : `k: ${text}\n`, {prettyErrors: false})
  if (doc.errors.length > 0 || doc.warnings.length > 0 || !isMap(doc.contents)) return undefined
  if (doc.contents.items.length !== 1) return undefined
  const node = doc.contents.get('k', true) as Node | undefined
  return node ?? undefined
}

/** A reading that tells nobody. */
export const trialContext = (units: 'in' | 'mm'): ReadingContext =>
  beginReading({readValue, targetOf: () => undefined, placeOf: () => nowhere, units})

/** Say what a text of the file means as a kind of value; undefined where it cannot be read without a problem. */
export function meaningOf(text: string, kind: Kind, {units, inBraces}: Setting): string | undefined {
  const node = nodeOf(text, inBraces)
  return node && meaningOfNode(node, kind, units)
}

/** Say what a node means as a kind of value, whatever its spelling; undefined where it cannot be read. */
export function meaningOfNode(node: Node, kind: Kind, units: 'in' | 'mm'): string | undefined {
  const context = trialContext(units)
  const value = readValue(node, kind, 'k', context)
  if (context.problems.length > 0 || value === undefined) return undefined
  return JSON.stringify(value, (key, item) => (key === 'place' || key === 'text' ? undefined : item))
}

/** Write a text so that YAML reads it as it stands: plain where that does, else in double quotes. */
export function asScalar(text: string, inBraces: boolean): string {
  const node = nodeOf(text, inBraces)
  const isPlain = isScalar(node) && node.type === 'PLAIN' && !node.comment && textOf(node) === text
  return isPlain ? text : JSON.stringify(text)
}

/** Of some texts, those that can be read, one for each meaning, the first first. */
export function readable(texts: Iterable<string>, kind: Kind, setting: Setting): string[] {
  const found = new Map<string, string>()
  for (const text of texts) {
    const meaning = meaningOf(text, kind, setting)
    if (meaning !== undefined && !found.has(meaning)) found.set(meaning, text)
  }
  return [...found.values()]
}

/** The figures of a text, with letters that are taken for figures. */
export const digits = (text: string): string =>
  [...text.replace(/[lI|](?=[\d/ ]|$)/g, '1').replace(/[^1-9]/g, '')].sort().join('')

/** More values than this are no question that somebody answers. */
export const mostAsked = 6
