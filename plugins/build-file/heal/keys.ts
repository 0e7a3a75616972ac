import {isScalar, type Node, type Pair} from 'yaml'
import {otherKeys, otherWords} from '../../tables/other-names.ts'
import {textOf} from '../reading/reading-context.ts'
import {meaningOfNode} from '../reading/trial.ts'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import {isSlip, nearest} from '../schema/nearest.ts'
import {buildSchema} from '../schema/schema.ts'

/** Fold what people do not mean by case, blanks, hyphens and quotes. */
export const folded = (word: string): string =>
  word
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()

const close = (word: string): string => folded(word).replaceAll(' ', '')

/** Find which of some words another one means: itself in another spelling, another word for it, or the nearest. */
export function choicesFor(said: string, of: readonly string[]): string[] {
  const word = folded(said)
  if (word === '') return []
  const same = of.filter((one) => close(one) === close(said) || `${close(one)}s` === close(said))
  if (same.length > 0) return same.slice(0, 1)
  const other = of.filter((one) => otherWords[one]?.some((each) => folded(each) === word))
  if (other.length > 0) return other.slice(0, 1)
  const words = word.split(' ')
  const held = of.filter((one) =>
    folded(one)
      .split(' ')
      .every((each) => words.some((own) => own === each || (each.length > 3 && own.startsWith(each)))),
  )
  if (held.length === 1) return held
  const near = nearest(word, of)
  if (near !== undefined) return [near]
  const begun = of.filter((one) => word.length > 2 && folded(one).startsWith(word))
  if (begun.length > 0) return begun
  const meant = of.filter((one) => otherWords[one]?.some((each) => nearest(word, [each]) !== undefined))
  return meant.length > 0 ? meant : held
}

const isSame = (a: string, b: string): boolean =>
  close(a) === close(b) || `${close(a)}s` === close(b) || close(a) === `${close(b)}s`

/** The keys that a mapping has already. */
export const present = (items: readonly Pair[]): Set<string> =>
  new Set(items.flatMap(({key}) => (isScalar(key) ? [textOf(key)] : [])))

/** What is known of a key that its record does not have. */
interface LostKey {
  name: string
  node: Node | null | undefined
  /** The record's path without the numbers of list items. */
  record: string
  kind: RecordOf
  taken: ReadonlySet<string>
  units: 'in' | 'mm'
}

/** Find the keys of the same record that a name may mean; one alone is certain. */
export function keysFor({name, node, record, kind, taken, units}: LostKey): string[] {
  const free = Object.keys(kind.fields).filter((field) => !taken.has(field))
  const same = free.filter((field) => isSame(field, name))
  if (same.length > 0) return same.slice(0, 1)
  const other = otherKeys.find((one) => one.in === record && isSame(one.says, name))
  if (other && free.includes(other.is)) return [other.is]
  const reads = (field: string) =>
    !node || meaningOfNode(node, kind.fields[field] as Kind, units) !== undefined
  const others = otherKeys.filter((one) => one.in === record && free.includes(one.is))
  const near = nearest(name, free) ?? others.find(({says}) => says.length > 4 && isSlip(name, says, 1))?.is
  const rivals = free.filter((field) => field !== near && nearest(name, [field]) !== undefined)
  if (near && (reads(near) || !rivals.some(reads))) return [near]
  const nearer = rivals.filter(reads)
  if (nearer.length > 0) return nearer
  const word = close(name)
  return free.filter((field) => word.length > 2 && close(field).startsWith(word) && reads(field))
}

/** Find where else in a build a key may belong: a record of the first level, and the key there. */
export function placesFor(
  name: string,
  node: Node | null | undefined,
  units: 'in' | 'mm',
): [string, string][] {
  const joined: [string, string][] = []
  const lone: [string, string][] = []
  for (const [record, kind] of Object.entries(buildSchema.fields) as [string, Kind][]) {
    if (kind.is !== 'record') continue
    for (const [field, of] of Object.entries(kind.fields)) {
      const isJoined = isSame(`${record}${field}`, name) || isSame(`${field}${record}`, name)
      if (!isJoined && !isSame(field, name)) continue
      if (node && meaningOfNode(node, of, units) === undefined) continue
      if (isJoined) joined.push([record, field])
      else lone.push([record, field])
    }
    const other = otherKeys.find((one) => one.in === record && isSame(`${record}${one.says}`, name))
    if (other) joined.push([record, other.is])
  }
  if (joined.length > 0) return joined
  // Any words can be a text: what reads a figure is likelier.
  const isText = ([record, field]: [string, string]) => {
    const kind = ((buildSchema.fields as Record<string, Kind>)[record] as RecordOf).fields[field]
    return kind?.is === 'leaf' && kind.leaf === 'text'
  }
  const figures = lone.filter((one) => !isText(one))
  return figures.length > 0 ? figures : lone
}
