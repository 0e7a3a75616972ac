import {isMap, isScalar, type Node, type Pair} from 'yaml'
import {otherKeys} from '../../tables/other-names.ts'
import {readValue} from '../reading/read-value.ts'
import {type Slip, textOf} from '../reading/reading-context.ts'
import {asScalar, meaningOfNode} from '../reading/trial.ts'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import {isSlip, nearest} from '../schema/nearest.ts'
import {leafAt, quantityPaths} from '../schema/path.ts'
import {buildSchema} from '../schema/schema.ts'
import {countIn, healCountKey, moveInto} from './counts.ts'
import {folded, keysFor, placesFor, present} from './keys.ts'
import type {Healing, Mend} from './source.ts'
import {readTuning} from './tuning.ts'

const most = 4

/** Find the key that was meant: one of the same record, one of another, or a way of saying what another key says. */
export function healKey(slip: Slip, healing: Healing): Mend | undefined {
  const {context, source} = healing
  const {key, node, map, kind, why} = slip
  if (!key || !isScalar(key)) return undefined
  const name = textOf(key)
  if (!map || kind?.is !== 'record') return healPath(slip, name, healing)
  const pair = map.items.find((each) => each.key === key) as Pair
  const isRoot = map === source.root
  // At the first level a point is part of the name.
  const above = isRoot ? '' : slip.path.split('.').slice(0, -1).join('.')
  const record = above.replace(/\.\d+(?=\.|$)/g, '')
  const glued = healColon(slip, name, kind, healing)
  if (glued) return glued
  if (isRoot && /^tunings?$/i.test(name) && isScalar(node))
    return healTuning(slip, textOf(node), pair, healing)
  if (isRoot && name.includes('.')) {
    const [head = '', ...rest] = name.split('.')
    const target = (buildSchema.fields as Record<string, Kind>)[head]
    if (target?.is === 'record' && rest.length === 1 && Object.hasOwn(target.fields, rest[0]!))
      return moveInto(slip, pair, {places: [[head, rest[0]!]]}, healing)
  }
  const below = isRoot ? healBelow(slip, map.items, healing) : undefined
  if (below) return below
  const counted = healCountKey(slip, pair, record, healing)
  if (counted) return counted
  const taken = present(map.items)
  // How many frets there are also says that there are frets.
  if (record === 'scale' && /^frets?$/i.test(name) && node && !taken.has('lines')) {
    const [from, to] = source.extentOf(pair)
    const gap = map.flow ? ', ' : `\n${indentOf(source.text, from)}`
    const lines = [
      `lines: ${source.sourceOf(countIn(node) ?? node)}`,
      ...(taken.has('fretted') ? [] : ['fretted: true']),
    ]
    const message = `${why}; ${lines.join(' and ')} would do`
    return {texts: [lines.join(gap)], isSure: true, at: source.place(from, to), message}
  }
  // A name that is a key elsewhere, letter by letter, is no misspelling of one here.
  const elsewhere = isRoot && node ? placesFor(name, node, context.units) : []
  const isOther = otherKeys.some((one) => one.in === record && folded(one.says) === folded(name))
  const isOwn = Object.keys(kind.fields).some((field) => folded(field) === folded(name))
  if (elsewhere.length > 0 && !isOther && !isOwn)
    return moveInto(slip, pair, {places: elsewhere.slice(0, most)}, healing)
  const keys = keysFor({name, node, record, kind, taken, units: context.units})
  if (keys.length > 0) {
    const [only] = keys
    if (keys.length === 1 && node && !meaningOfNode(node, kind.fields[only!]!, context.units)) {
      const own = slip.path.slice(0, slip.path.length - name.length) + only
      readValue(node, kind.fields[only!]!, own, context)
    }
    const last = keys.length > 1 ? `${keys.slice(0, -1).join(', ')} or ${keys.at(-1)}` : only
    return {texts: keys.slice(0, most), isSure: keys.length === 1, message: `${why}; was ${last} meant?`}
  }
  return undefined
}

/** Keys that stand at the edge below a key without a value, and are keys of it, want two blanks before them. */
function healBelow({key}: Slip, items: readonly Pair[], {source, context}: Healing): Mend | undefined {
  const fields = buildSchema.fields as Record<string, Kind>
  const nameOf = (pair: Pair) => (isScalar(pair.key) ? textOf(pair.key) : '')
  const at = items.findIndex((each) => each.key === key)
  const above = items.findLastIndex((each, i) => i < at && Object.hasOwn(fields, nameOf(each)))
  const head = items[above]
  const kind = head && fields[nameOf(head)]
  const isEmpty = !head?.value || (isScalar(head.value) && head.value.value === null)
  if (!head || !isEmpty || kind?.is !== 'record') return undefined
  const after = items.slice(above + 1)
  const last = after.findIndex(
    (each) =>
      Object.hasOwn(fields, nameOf(each)) ||
      !Object.hasOwn(kind.fields, nameOf(each)) ||
      (each.value &&
        meaningOfNode(each.value as Node, kind.fields[nameOf(each)]!, context.units) === undefined),
  )
  const run = after.slice(0, last < 0 ? undefined : last)
  if (!run.some((each) => each.key === key)) return undefined
  if (run[0]!.key !== key) return {texts: [], isSure: false, isTold: false}
  const [from] = source.extentOf(run[0]!)
  const [, to] = source.extentOf(run.at(-1)!)
  const text = source.text.slice(from, to).replace(/^(?=.)/gm, '  ')
  return {
    texts: [text],
    isSure: true,
    at: source.place(from, to),
    message: `${nameOf(head)} is empty, and what belongs to it stands at the edge below it; two blanks before each line would do`,
  }
}

const indentOf = (text: string, at: number): string => text.slice(text.lastIndexOf('\n', at - 1) + 1, at)

/** A blank that is missing behind the colon makes one key of both: `{length:24}`. */
function healColon({key, why}: Slip, name: string, kind: RecordOf, {source}: Healing): Mend | undefined {
  const [, word = '', value = ''] = /^([\w -]+?)\s*[:=]\s*(\S.*)$/.exec(name) ?? []
  const [field] = Object.keys(kind.fields).filter((each) => each === word || folded(each) === folded(word))
  if (!field || value === '') return undefined
  const text = `${field}: ${asScalar(value, source.isInBraces(key!))}`
  return {
    texts: [text],
    isSure: true,
    message: `${why}: a blank is missing behind the colon; ${text} would do`,
  }
}

/** What is measured and is no path of the front matter. */
const ownOfMeasured: readonly string[] = ['on', 'resonance', 'lines', 'cents']

/** A measure that stands under no path of the file. */
function healPath({key, why}: Slip, name: string, {context}: Healing): Mend | undefined {
  const paths = [...quantityPaths(), ...ownOfMeasured]
  const word = folded(name)
  const own = otherKeys.find((one) => one.in === 'measured' && folded(one.says) === word)
  if (own) return {texts: [own.is], isSure: true, message: `${why}; was ${own.is} meant?`}
  const near = nearest(name, paths)
  const same = paths.filter((path) => folded(path) === word || (path === near && isSlip(name, path)))
  const ends = paths.filter((path) => folded(path).endsWith(` ${word}`) && !/\d/.test(path))
  const found = (same.length > 0 ? same.slice(0, 1) : ends).filter(
    (path) => leafAt(path) || ownOfMeasured.includes(path),
  )
  if (!key || found.length === 0 || found.length > most || context.keys[`measured.${found[0]}`])
    return undefined
  const said = found.length > 1 ? `${found.slice(0, -1).join(', ')} or ${found.at(-1)}` : found[0]
  return {texts: found, isSure: same.length > 0, message: `${why}; was ${said} meant?`}
}

/** A tuning said apart goes into the strings. */
function healTuning({why}: Slip, said: string, pair: Pair, {source}: Healing): Mend | undefined {
  if (!isMap(source.root)) return undefined
  const own = source.root.items.find((each) => isScalar(each.key) && textOf(each.key) === 'strings')
  const strings = own?.value as Node | null | undefined
  const count = isScalar(strings) && /^\d+$/.test(textOf(strings)) ? Number(textOf(strings)) : undefined
  if (strings && count === undefined) {
    // The strings have their notes already.
    const [from, to] = source.extentOf(pair)
    return {
      texts: [`# ${source.text.slice(from, to)}`],
      isSure: false,
      at: source.place(from, to),
      message: `${why}: each string says its own note; take this line out, or make a remark of it`,
    }
  }
  const tunings = readTuning(said, count).filter((notes) => count === undefined || notes.length === count)
  const texts = tunings.map((notes) => `strings: [${notes.join(', ')}]`)
  const [from, to] = source.extentOf(pair)
  if (texts.length === 0)
    return {
      texts: [],
      isSure: false,
      message: `${why}; each string says its note, as in strings: [D3, A3, D4]`,
    }
  const message = `${why}: each string says its note; ${texts.join(' or ')} would do`
  if (!own || !strings) return {texts, isSure: texts.length === 1, at: source.place(from, to), message}
  const [start, end] = source.extentOf(own)
  return {
    texts,
    isSure: texts.length === 1,
    message,
    edits: texts.map((text) => [source.edit(start, end, text), source.removal(pair, {flow: false})]),
  }
}
