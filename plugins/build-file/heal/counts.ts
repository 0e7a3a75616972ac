import {isMap, isScalar, type Node, type Pair, type Scalar} from 'yaml'
import {type Slip, textOf} from '../reading/reading-context.ts'
import {asScalar, meaningOfNode, nodeOf, readable} from '../reading/trial.ts'
import type {Kind} from '../schema/kinds.ts'
import {buildSchema} from '../schema/schema.ts'
import {folded} from './keys.ts'
import {shapesOf} from './shapes.ts'
import {braces, type Healing, type Mend, type Source} from './source.ts'

const pairOf = (source: Source, name: string): Pair | undefined =>
  isMap(source.root) ? source.root.items.find(({key}) => isScalar(key) && textOf(key) === name) : undefined

/** A count where sizes belong: `frets: 20` counts the lines of the scale, `tuners: 3` the strings. */
export function healCount(slip: Slip, healing: Healing): Mend | undefined {
  const {node, path, why} = slip
  const {source} = healing
  const beside = isScalar(node) ? /^(\d{1,2})\s+(\S+ .+)$/.exec(textOf(node)) : null
  if (beside && node && isOfStrings(path)) return healBeside(slip, beside, healing)
  const count = isScalar(node) ? /^(\d{1,2})\s*(?:[a-z]+)?$/i.exec(textOf(node))?.[1] : undefined
  if (!count) return undefined
  const pair = pairOf(source, path)
  if (!pair) return undefined
  if (path === 'frets') return healFrets(slip, pair, healing)
  if (!isOfStrings(path)) return undefined
  const [from, to] = source.extentOf(pair)
  const place = source.place(from, to)
  const message = oneForEach(why.split(':')[0]!)
  if (!pairOf(source, 'strings')) {
    const text = `strings: ${count}`
    return {texts: [text], isSure: true, at: place, message: `${message}; ${text} would do`}
  }
  const strings = pairOf(source, 'strings')!.value as Node | null
  const own = isMap(strings) || !strings ? undefined : countOf(strings)
  return {
    texts: [`# ${source.text.slice(from, to)}`],
    isSure: own === Number(count),
    at: place,
    message: `${message}; take the line out, or make a remark of it`,
  }
}

const oneForEach = (name: string): string =>
  `${name}: there is one for each string, so their number is not said here`

/** How many frets there are goes to the scale, which may say another number already. */
function healFrets(slip: Slip, pair: Pair, healing: Healing): Mend {
  const why = `frets: the wire's sizes stand here, and how many frets there are is said by the scale`
  const move = {places: [['scale', 'lines']], also: ['fretted', 'true']} as const
  const count = isScalar(slip.node) ? textOf(slip.node).replace(/\D/g, '') : ''
  const message = `${why}, as lines: ${count}; write it there, and take it out here`
  return moveInto({...slip, why}, pair, move, healing) ?? {texts: [], isSure: false, message}
}

/** The count in what is nothing else: `{count: 20}`. */
export function countIn(node: Node | null | undefined): Scalar | undefined {
  if (!isMap(node) || node.items.length !== 1) return undefined
  const {key, value} = node.items[0]!
  return isScalar(key) && isCount(textOf(key)) && isScalar(value) && isNumber(value) ? value : undefined
}

const isCount = (name: string): boolean =>
  /^(?:count|number|amount|quantity|how many|lines|frets|tuners|anchors)$/.test(folded(name))

const isNumber = (node: Scalar): boolean => /^\d{1,2}$/.test(textOf(node))

/** A count among sizes: `frets: {count: 20}` counts the lines of the scale, `tuners: {count: 3}` the strings. */
export function healCountKey(slip: Slip, pair: Pair, record: string, healing: Healing): Mend | undefined {
  const {map, node, key} = slip
  const own = pairOf(healing.source, record)
  if (!map || !own || !isScalar(node) || !isNumber(node) || !isCount(textOf(key as Scalar))) return undefined
  const whole = map.items.length === 1 ? own : pair
  if (record === 'frets') return healFrets(slip, whole, healing)
  if (!isOfStrings(record)) return undefined
  const edits = [healing.source.removal(whole, {flow: whole === pair && map.flow === true})]
  return {texts: [''], edits: [edits], isSure: false, message: `${oneForEach(record)}; take it out`}
}

const isOfStrings = (path: string): boolean => path === 'tuners' || path === 'anchors'

/** A count before what is said of each: `tuners: 3 on the bass side`. */
function healBeside(
  {kind, node, why}: Slip,
  [, count, said = '']: RegExpExecArray,
  {source, context}: Healing,
): Mend | undefined {
  const setting = {units: context.units, inBraces: false, sourceOf: source.sourceOf}
  const text =
    kind && readable(shapesOf(nodeOf(JSON.stringify(said), false)!, kind, setting), kind, setting)[0]
  if (!text) return undefined
  const strings = pairOf(source, 'strings')?.value as Node | null | undefined
  const isOwn = strings && !isMap(strings) && countOf(strings) === Number(count)
  return {
    texts: [text],
    isSure: Boolean(isOwn),
    at: source.place(node!.range![0], source.endOf(node!)),
    message: `${oneForEach(why.split(':')[0]!)}; ${text} would do`,
  }
}

function countOf(node: Node): number | undefined {
  if ('items' in node) return (node.items as unknown[]).length
  return isScalar(node) && /^\d+$/.test(textOf(node)) ? Number(textOf(node)) : 1
}

/** Move a pair to a record of the first level, as one of some keys there, perhaps with another pair that it implies. */
export function moveInto(
  {node, why, map}: Slip,
  pair: Pair,
  {places, also}: {places: readonly (readonly [string, string])[]; also?: readonly [string, string]},
  {source, context}: Healing,
): Mend | undefined {
  if (!node) return undefined
  const value = isScalar(node) ? asScalar(textOf(node), true) : source.sourceOf(node)
  const [start, end] = source.extentOf(pair)
  const isNested = !isMap(source.root) || !source.root.items.includes(pair)
  const taken = source.removal(pair, {flow: isNested && map?.flow === true})
  const ways = places.flatMap(([record, field]) => {
    const kind = (buildSchema.fields as Record<string, Kind>)[record]
    if (kind?.is !== 'record') return []
    const there = pairOf(source, record)
    const target = there?.value as Node | null | undefined
    const said = isMap(target) ? (target.get(field, true) as Node | undefined) : undefined
    const pairs = [[field, value] as const, ...(also && !hasKey(target, also[0]) ? [also] : [])]
    const line = `${record}: ${braces(pairs)}`
    if (!there || !target)
      return isNested ? [] : [{text: line, edits: [source.edit(start, end, line)], record}]
    if (said) {
      const isSame =
        meaningOfNode(said, kind.fields[field]!, context.units) ===
        meaningOfNode(node, kind.fields[field]!, context.units)
      return isSame ? [{text: '', edits: [taken], record}] : []
    }
    const into = source.insertion(record, kind, pairs)
    if (!into) return []
    const text = into.text.startsWith('{')
      ? `${record}: ${into.text}`
      : pairs.map((each) => each.join(': ')).join(', ')
    return [{text, edits: [into, taken], record}]
  })
  if (ways.length === 0) return undefined
  const told = ways.map(({text, record}) =>
    text === '' || text.startsWith(`${record}: `) ? text : `${text} under ${record}`,
  )
  return {
    texts: ways.map(({text}) => text),
    edits: ways.map(({edits}) => edits),
    isSure: ways.length === 1,
    at: source.place(start, end),
    message: told.includes('')
      ? `${why}; ${ways[0]!.record} says so already, so take it out here`
      : `${why}; ${told.join(' or ')} would do`,
  }
}

const hasKey = (node: Node | null | undefined, key: string): boolean => isMap(node) && node.has(key)
