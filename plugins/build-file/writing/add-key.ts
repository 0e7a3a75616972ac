import {stringify} from 'yaml'
import type {Build} from '../schema/build.ts'
import {kindAt, leavesOf, ownAt, valueAt} from '../schema/path.ts'
import type {Edit, Place} from '../schema/problem.ts'
import {scalarOf} from './edit-yaml.ts'

/**
 * Say how a value comes to stand at a path that the file does not have: a line, a pair within braces, or the keys that
 * a short form stands for. All else stays as it is. Undefined where no such key can be added, as within a list.
 */
export function addingKey(build: Pick<Build, 'keys' | 'places' | 'values'>, path: string, text: string) {
  const steps = path.split('.')
  const depth = steps.findLastIndex(
    (_, at) => ownAt(build.keys, steps.slice(0, at + 1).join('.')) !== undefined,
  )
  const [around, rest] = [steps.slice(0, depth + 1).join('.'), steps.slice(depth + 1)]
  if (rest.length === 0 || ownAt(build.places, path) || rest.some((step) => /^\d+$/.test(step)))
    return undefined
  if (!kindAt(path)) return undefined
  const pair = written(nested(rest, scalarOf(text)))
  const title = ownAt(build.keys, 'title')
  if (around === '') return title && at(start(title), `${pair}\n`)
  const [key, value] = [ownAt(build.keys, around), ownAt(build.places, around)]
  if (!key || !value) return undefined
  const first = firstBelow(build, around)
  if (!first) return instead(build, around, {value, rest, text})
  const isBraced = value.line === key.line
  return at(start(first), isBraced ? `${pair}, ` : `${pair}\n${' '.repeat(first.column - 1)}`)
}

/** Write the keys that a short form stands for, with one more, in its place. */
function instead(
  build: Pick<Build, 'values'>,
  around: string,
  {value, rest, text}: {value: Place; rest: readonly string[]; text: string},
): Edit | undefined {
  if (kindAt(around)?.is !== 'record' || value.line !== value.endLine) return undefined
  const said = leavesOf(valueAt(build.values, around)).filter(
    ([, {assumed, proposed, place}]) => !assumed && !proposed && place,
  )
  if (said.length === 0 || said.some(([path]) => /(^|\.)\d/.test(path))) return undefined
  const own = said.map(([path, leaf]) => [shortest(around, path).split('.'), leaf.text] as const)
  const tree = [...own, [rest, text] as const]
    .map(([steps, each]) => nested(steps, scalarOf(each)))
    .reduce(merged, {})
  return {...value, text: `{${written(tree)}}`}
}

/** The path of a record that one value may stand for, where a path leads to that value. */
function shortest(around: string, path: string): string {
  const [above, key] = [path.slice(0, path.lastIndexOf('.')), path.slice(path.lastIndexOf('.') + 1)]
  const kind = path.includes('.') ? kindAt(`${around}.${above}`) : undefined
  return kind?.is === 'record' && kind.short?.keys.join() === key ? above : path
}

type Tree = {[key: string]: unknown}

const nested = (steps: readonly string[], value: unknown): Tree =>
  steps.reduceRight<unknown>((inner, step) => ({[step]: inner}), value) as Tree

function merged(one: Tree, other: Tree): Tree {
  const [[key, value]] = Object.entries(other) as [[string, unknown]]
  const isDeeper = Object.hasOwn(one, key) && Object.getPrototypeOf(value) === Object.prototype
  return {...one, [key]: isDeeper ? merged(one[key] as Tree, value as Tree) : value}
}

/** Write keys in one line, without braces. */
const written = (tree: Tree): string =>
  stringify(tree, {collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false})
    .trim()
    .replace(/^\{(.*)\}$/s, '$1')

const start = ({line, column}: Place): Place => ({line, column, endLine: line, endColumn: column})

const at = (place: Place, text: string): Edit => ({...place, text})

/** The first key of the file right below another. */
function firstBelow({keys}: Pick<Build, 'keys'>, around: string): Place | undefined {
  const below = Object.entries(keys).filter(
    ([path]) => path.startsWith(`${around}.`) && !path.slice(around.length + 1).includes('.'),
  )
  return below.map(([, place]) => place).sort((a, b) => a.line - b.line || a.column - b.column)[0]
}
