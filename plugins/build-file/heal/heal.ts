import {isScalar, isSeq, type Node, type Pair} from 'yaml'
import type {Kind} from '../kinds.ts'
import type {Problem} from '../problem.ts'
import {likelyDays} from '../quantities/read-date.ts'
import {whatWouldDo} from '../quantities/reading.ts'
import {nameOf, type ReadingContext, type Slip, textOf} from '../reading-context.ts'
import type {ReaderRule} from '../rules.ts'
import {healComma} from './commas.ts'
import {healCount} from './counts.ts'
import {healKey} from './lost-keys.ts'
import {leafTexts, shapesOf} from './shapes.ts'
import type {Healing, Mend} from './source.ts'
import {readable} from './trial.ts'

/** More slips than these of one file are not looked into: they are of one kind, or the file is none of a build. */
const mostLooked = 40

/**
 * Look for what the writer of each slip meant, by reading what it may have been against the schema and the rest of the
 * file: what would do is put to the problem, and where one reading alone is left the problem says so.
 */
export function healSlips(healing: Healing): void {
  const {context} = healing
  mergeLists(healing)
  // Reading a value under the key that was meant may bring further slips.
  for (let at = 0; at < Math.min(context.slips.length, mostLooked); at += 1) {
    const slip = context.slips[at]!
    const mend = mendOf(slip, healing)
    if (!mend) continue
    const {problem} = slip
    const {rule} = problem
    if (mend.isTold === false) {
      drop(context.problems, (one) => one === problem)
      continue
    }
    put(problem, mend, slip.why)
    if (rule === 'comma-in-braces') dropWithin(problem, context)
  }
  mergeRecords(healing)
}

/** What is wrong with a part of a value is not told where the whole is. */
function dropWithin(whole: Problem<ReaderRule>, {problems}: ReadingContext): void {
  const isWithin = (one: Problem<ReaderRule>) =>
    one !== whole &&
    one.line === whole.line &&
    one.endLine === whole.endLine &&
    one.column >= whole.column &&
    one.endColumn <= whole.endColumn
  drop(problems, isWithin)
}

/** Take out of a list what is not to be told. */
const drop = <T>(list: T[], isGone: (one: T) => boolean): void => {
  list.splice(0, Number.POSITIVE_INFINITY, ...list.filter((one) => !isGone(one)))
}

function put(problem: Problem<ReaderRule>, mend: Mend, why: string): void {
  problem.expected = mend.texts.length > 0 ? [...mend.texts] : undefined
  if (mend.isSure && mend.texts.length === 1) problem.sure = true
  if (mend.edits) problem.edits = mend.edits
  if (mend.at) Object.assign(problem, mend.at)
  problem.message = mend.message ?? why + whatWouldDo(mend.texts)
}

function mendOf(slip: Slip, healing: Healing): Mend | undefined {
  const {rule} = slip.problem
  if (rule === 'comma-in-braces') return healComma(slip, healing)
  if (rule === 'unknown-key') return healKey(slip, healing)
  if (rule === 'key-twice') return healTwice(slip, healing)
  const {node, kind} = slip
  if (!node || !kind) return undefined
  return healCount(slip, healing) ?? healValue(slip, node, kind, healing)
}

/** The figures of a text, with letters that are taken for figures. */
const digits = (text: string): string =>
  [...text.replace(/[lI|](?=[\d/ ]|$)/g, '1').replace(/[^1-9]/g, '')].sort().join('')

/** More values than this are no question that somebody answers. */
const mostAsked = 6

function healValue(slip: Slip, node: Node, kind: Kind, {context, source}: Healing): Mend | undefined {
  const {problem, text} = slip
  const setting = {units: context.units, inBraces: source.isInBraces(node), sourceOf: source.sourceOf}
  const written = text ?? (isScalar(node) ? textOf(node) : source.sourceOf(node))
  const own =
    text === undefined || kind.is !== 'leaf' ? shapesOf(node, kind, setting) : leafTexts(text, kind, setting)
  const isOwn = own.length > 0 && problem.rule !== 'out-of-range'
  const said = kind.is === 'choice' || isOwn ? [] : likeliest(problem.expected ?? [], written)
  const texts = readable([...own, ...said], kind, setting).slice(0, mostAsked)
  if (texts.length === 0) return withExample(slip, kind, context)
  const keepsAll = digits(texts[0]!) === digits(written) || !/\d/.test(written)
  const isOutOfRange = problem.rule === 'out-of-range' && kind.is === 'leaf'
  const isPart =
    kind.is === 'record' &&
    isScalar(node) &&
    (kind.short?.keys.length ?? 0) > partsIn(written) &&
    partsIn(written) > 1
  // Of a day whose month is a word, the figures are not all there.
  const isDay = kind.is === 'leaf' && kind.leaf === 'date' && likelyDays(written).length === 1
  const isSure =
    !isPart &&
    (keepsAll || isDay) &&
    problem.rule !== 'negative-length' &&
    !(isOutOfRange && /[a-z"']/i.test(written))
  return {texts, isSure, message: worded(slip, kind, texts)}
}

/** Word what would do: a word as a question, a value of another shape with its key. */
function worded({why, path, problem}: Slip, kind: Kind, texts: readonly string[]): string {
  if (kind.is === 'choice' || kind.is === 'either')
    return texts.length === 1 ? `${why}; was ${texts[0]} meant?` : why + whatWouldDo(texts)
  const key = path.split('.').at(-1)!
  const isLine = problem.rule === 'wrong-shape' && !/^\d+$/.test(key)
  return why + whatWouldDo(isLine ? texts.map((text) => `${key}: ${text}`) : texts)
}

const partsIn = (text: string): number => (/[\p{L}]{2}/u.test(text) ? 1 : text.split(/[x×]/i).length)

/** Of the same figure in several units, leave the centimetres out where another unit does. */
function likeliest(expected: readonly string[], written: string): readonly string[] {
  const others = expected.filter((one) => !/ cm$/.test(one))
  return others.length > 0 && !/[a-z]/i.test(written) ? others : expected
}

/** Where nothing that was written can be read, show what can stand there. */
function withExample(slip: Slip, kind: Kind, context: ReadingContext): Mend | undefined {
  if (slip.problem.rule !== 'wrong-shape') return undefined
  const sample = sampleOf(kind, context.units)
  const key = slip.path.split('.').findLast((step) => !/^\d+$/.test(step))
  if (!sample || !key) return undefined
  return {texts: [], isSure: false, message: `${slip.why}, as in ${key}: ${sample}`}
}

const samples: Readonly<Record<string, readonly [string, string]>> = {
  length: ['3/4', '19'],
  angle: ['13', '13'],
  gauge: ['.017', '0.43'],
  pitch: ['D3', 'D3'],
  wood: ['beech', 'beech'],
  text: ['"words in quotes"', '"words in quotes"'],
  number: ['12', '12'],
  flag: ['true', 'true'],
  date: ['2026-03-07', '2026-03-07'],
  money: ['2.10', '2.10'],
  label: ['12', '12'],
}

/** Write an example of a kind of value, with what is commonly said there. */
function sampleOf(kind: Kind, units: 'in' | 'mm'): string | undefined {
  switch (kind.is) {
    case 'leaf':
      return samples[kind.leaf]?.[units === 'in' ? 0 : 1]
    case 'choice':
      return kind.of[0]
    case 'list': {
      const item = sampleOf(kind.item, units)
      return item && `[${item}]`
    }
    case 'record': {
      const {short} = kind
      const keys = short ? short.keys : Object.keys(kind.fields).slice(0, 2)
      const parts = keys.map((key) => [key, sampleOf(kind.fields[key] as Kind, units)] as const)
      if (parts.some(([, text]) => text === undefined)) return undefined
      if (short) return parts.map(([, text]) => text).join(short.between)
      return `{${parts.map(([key, text]) => `${key}: ${text}`).join(', ')}}`
    }
    case 'either':
      return sampleOf(kind.second, units)
    default:
      return undefined
  }
}

/**
 * Where a list as a whole can be read in another way, its items' problems are one: `[D3, .030w, A3, .020w]`,
 * `{D3 .030w, A3 .020w}`.
 */
function mergeLists({context, source}: Healing): void {
  for (const {node, kind, path} of context.lists) {
    if (kind.item.is !== 'record' && !isScalar(node)) continue
    const setting = {units: context.units, inBraces: source.isInBraces(node), sourceOf: source.sourceOf}
    // Nothing that was written may fall out.
    const all = digits(source.sourceOf(node))
    const texts = readable(shapesOf(node, kind, setting), kind, setting)
      .filter((text) => all === '' || digits(text) === all)
      .slice(0, mostAsked)
    const count = isSeq(node) ? node.items.length : 1
    const isRegrouped = texts[0] !== undefined && texts[0].split(',').length !== count
    if (!isRegrouped && !/^\d+$/.test(texts[0] ?? '')) continue
    const why = isRegrouped
      ? `${nameOf(path)}: the items of a list stand in square brackets, with commas between them`
      : `${nameOf(path)}: "${source.sourceOf(node)}" is no list, and no number in figures`
    tellAsOne({node, path, texts, why}, {context, source})
  }
}

/** Tell one problem of a value in the place of those of its parts. */
function tellAsOne(
  {node, path, texts, why}: {node: Node; path: string; texts: string[]; why: string},
  {context, source}: Healing,
): void {
  const isPart = (slip: Slip) => slip.path === path || slip.path.startsWith(`${path}.`)
  const gone = new Set(context.slips.filter(isPart).map(({problem}) => problem))
  if (gone.size === 0) return
  const written = source.sourceOf(node)
  const place = source.place(node.range![0], source.endOf(node))
  const problem: Problem<ReaderRule> = {rule: 'wrong-shape', severity: 'error', ...place, message: why}
  const keepsAll = digits(texts[0]!) === digits(written) || !/\d/.test(written)
  put(problem, {texts, isSure: texts.length === 1 && keepsAll}, why)
  drop(context.problems, (one) => gone.has(one))
  drop(context.slips, (one) => gone.has(one.problem))
  context.problems.push(problem)
}

/** Where a part of one line is still open, the line as a whole may be words and sizes in another order. */
function mergeRecords({context, source}: Healing): void {
  for (const {node, kind, path} of context.records) {
    const parts = context.slips.filter((slip) => slip.path === path || slip.path.startsWith(`${path}.`))
    const isOpen = parts.some(
      ({problem: {rule, sure}}) => !sure && rule !== 'out-of-range' && rule !== 'negative-length',
    )
    if (!isOpen || !/\p{L}/u.test(textOf(node))) continue
    const setting = {units: context.units, inBraces: source.isInBraces(node), sourceOf: source.sourceOf}
    const written = textOf(node)
    const texts = readable(shapesOf(node, kind, setting), kind, setting)
      .filter((text) => digits(text) === digits(written))
      .slice(0, mostAsked)
    if (texts.length === 0) continue
    const why = `${nameOf(path)}: "${written}" cannot be read as it stands`
    tellAsOne({node, path, texts, why}, {context, source})
  }
}

/** A key given twice with the same value is taken out; of two values, the one that is not read becomes a remark. */
function healTwice({problem, key, node, map, why}: Slip, {source}: Healing): Mend | undefined {
  if (!key || !map) return undefined
  const pair = map.items.find((each) => each.key === key) as Pair<Node, Node | null>
  const first = map.items.find(
    (each) => isScalar(each.key) && textOf(each.key) === textOf(key as never) && each.key !== key,
  ) as Pair<Node, Node | null> | undefined
  const [from, to] = source.extentOf(pair)
  const written = source.text.slice(from, to)
  const isBraced = source.isInBraces(key)
  const isSame = Boolean(node && first?.value && source.sourceOf(node) === source.sourceOf(first.value))
  if (isSame)
    return {
      texts: [''],
      isSure: true,
      at: source.place(from, to),
      edits: [[source.removal(pair, {flow: isBraced})]],
      message: `${why}: both say the same`,
    }
  if (isBraced || written.includes('\n') || !problem.cause) return undefined
  return {texts: [`# ${written}`], isSure: false, at: source.place(from, to)}
}
