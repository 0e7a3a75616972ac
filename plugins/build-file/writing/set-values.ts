import {type Document, isMap, isScalar, isSeq, type Node, Pair, parseDocument, stringify} from 'yaml'
import {plainLines, splitFrontMatter} from '../reading/front-matter.ts'
import {asScalar} from '../reading/trial.ts'
import type {Build} from '../schema/build.ts'
import {leavesOf, ownAt} from '../schema/path.ts'
import type {Edit, Place} from '../schema/problem.ts'
import {applied} from '../yaml/apply-edits.ts'
import {deleteAt, hasAt, scalarOf, setText, stepsOf} from './edit-yaml.ts'

/** Values to set in a build file, by their paths, lists from 1; an empty text takes the key out. */
type ValueChanges = ReadonlyMap<string, string>

const style = {lineWidth: 0, flowCollectionPadding: false}

/**
 * Set values in a build file, whose reading is `build`. Where a value stands in the text, its signs alone are changed;
 * a key that comes or goes has the lines of its own first key written anew, remarks kept, and all others stay as they
 * are. A list takes one more item; what cannot be set is left out.
 */
export function setValues(text: string, build: Build, changes: ValueChanges): string {
  if (changes.size === 0) return text
  const plain = plainLines(text)
  const {front} = splitFrontMatter(plain)
  if (!front) return text
  const lines = plain.split('\n')
  let doc: Document | undefined
  const edits: Edit[] = []
  const added: string[] = []
  for (const [key, group] of byFirstKey(changes)) {
    const inPlace = group.map(([path, value]) => editInPlace(lines, ownAt(build.places, path), value))
    if (inPlace.every((edit) => edit !== undefined)) {
      edits.push(...inPlace)
      continue
    }
    doc ??= parseDocument(front.yaml, {prettyErrors: false, uniqueKeys: false})
    if (doc.contents && !isMap(doc.contents)) return text
    const before = pairOf(doc, key)
    const start = before && firstLineOf(front.yaml, before)
    for (const [path, value] of group) setOrDrop(doc, path, value)
    const after = pairOf(doc, key)
    const written = after ? `${pairText(after)}\n` : ''
    if (start === undefined) added.push(written)
    else edits.push(linesEdit(lines, start + front.firstLine, doc, written))
  }
  const end = {line: front.bodyLine - 1, column: 1, endLine: front.bodyLine - 1, endColumn: 1}
  if (added.length > 0) edits.push({...end, text: added.join('')})
  // A record that one value stands for may be set by its own path and by that of the value: the last counts.
  const placed = new Map(edits.map((edit) => [`${edit.line} ${edit.column}`, edit]))
  return applied(text, [...placed.values()])
}

/** Give every value of a build's file as it is written, by its path. */
export const textsOf = ({values}: Build): Map<string, string> =>
  new Map(leavesOf(values).map(([path, {text}]) => [path, text] as const))

function byFirstKey(changes: ValueChanges): Map<string, [path: string, text: string][]> {
  const groups = new Map<string, [string, string][]>()
  for (const [path, text] of changes) {
    const key = path.split('.')[0]!
    groups.set(key, [...(groups.get(key) ?? []), [path, text]])
  }
  return groups
}

/** Change the signs of a value that stands in one line by itself; undefined where it does not. */
function editInPlace(lines: readonly string[], place: Place | undefined, text: string): Edit | undefined {
  if (!place || text === '' || place.line !== place.endLine) return undefined
  const was = lines[place.line - 1]?.slice(place.column - 1, place.endColumn - 1) ?? ''
  if (was === '' || /^[[{|>&*!]/.test(was)) return undefined
  return {...place, text: asScalar(text, true)}
}

/** A key that was just set is a word, one that was read a node. */
type Pairing = Pair<Node | string, Node | null>

const pairOf = (doc: Document, key: string): Pairing | undefined =>
  isMap<Node | string, Node | null>(doc.contents)
    ? doc.contents.items.find((pair) => String(isScalar(pair.key) ? pair.key.value : pair.key) === key)
    : undefined

function firstLineOf(yaml: string, {key}: Pairing): number | undefined {
  const at = typeof key === 'string' ? undefined : key.range?.[0]
  return at === undefined ? undefined : yaml.slice(0, at).split('\n').length - 1
}

/** Write one key of the first level, without the remarks that stand before it. */
function pairText(pair: Pairing): string {
  const alone = parseDocument('{}')
  if (!isMap(alone.contents)) return ''
  alone.contents.flow = false
  const {key, value} = pair
  const bare = typeof key === 'string' ? key : (key.clone() as Node)
  if (typeof bare !== 'string') {
    delete bare.commentBefore
    delete bare.spaceBefore
  }
  alone.contents.items = [new Pair(bare, value)] as typeof alone.contents.items
  return alone.toString(style).trimEnd()
}

/** The lines from a key of the first level to the next, without the remarks that stand before that one. */
function linesEdit(lines: readonly string[], line: number, doc: Document, text: string): Edit {
  const isFlow = isMap(doc.contents) && doc.contents.flow === true
  const close = lines.findIndex((each, i) => i > 0 && /^---[ \t]*$/.test(each)) + 1
  // A whole file within braces is written anew.
  if (isFlow) return {line: 2, column: 1, endLine: close, endColumn: 1, text: doc.toString(style)}
  let end = line + 1
  while (end < close && !/^[^\s#\-\]}]/.test(lines[end - 1]!)) end += 1
  while (end > line + 1 && /^(?:#.*|\s*)$/.test(lines[end - 2]!)) end -= 1
  return {line, column: 1, endLine: end, endColumn: 1, text}
}

function setOrDrop(doc: Document, path: string, text: string): void {
  if (text !== '') {
    setText(doc, path, text, true)
    return
  }
  // A short form is written out first, so that a part of it can go.
  if (!hasAt(doc, path)) setText(doc, path, '0')
  deleteAt(doc, path)
  for (let around = stepsOf(path).slice(0, -1); around.length > 0; around = around.slice(0, -1)) {
    const left = doc.getIn(around, true)
    if (!(isMap(left) || isSeq(left)) || left.items.length > 0) return
    doc.deleteIn(around)
  }
}

type Tree = {[key: string]: Tree | Tree[] | object} | object

/**
 * Write keys of a build as lines of its front matter, a line a key, as far as the file says or the build is proposed
 * to have it: what is assumed is left out. A key that the file has is written whole, and takes its line's place.
 */
export function writeLines({values}: Pick<Build, 'values'>, keys: readonly string[]): string[] {
  return keys.map((key) => {
    const tree = saidOf((values as Record<string, unknown>)[key])
    return stringify({[key]: tree}, {collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false})
      .replace(/^\{(.*)\}\n$/s, '$1')
      .trimEnd()
  })
}

/** Take the texts of what is said, in their lists and records. */
function saidOf(value: unknown): Tree | undefined {
  if (typeof value !== 'object' || value === null) return undefined
  if ('place' in value) {
    const {text, assumed} = value as unknown as {text: string; assumed?: true}
    return assumed ? undefined : scalarOf(text)
  }
  if (Array.isArray(value)) return value.map(saidOf)
  const said = Object.entries(value).flatMap(([key, item]) => {
    const tree = saidOf(item)
    return tree === undefined || (isEmpty(tree) && !isEmpty(item)) ? [] : [[key, tree] as const]
  })
  return Object.fromEntries(said)
}

const isEmpty = (tree: object): boolean => !('value' in tree) && Object.keys(tree).length === 0
