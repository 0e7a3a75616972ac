import {isScalar, type Node} from 'yaml'
import {likelyDays} from '../quantities/read-date.ts'
import {whatWouldDo} from '../quantities/reading.ts'
import {type ReadingContext, type Slip, textOf} from '../reading/reading-context.ts'
import {digits, mostAsked, readable} from '../reading/trial.ts'
import type {ReaderRule} from '../rules/rules.ts'
import type {Kind, RecordOf} from '../schema/kinds.ts'
import type {Problem} from '../schema/problem.ts'
import type {YamlTree} from '../yaml/yaml-tree.ts'
import {healComma} from './commas.ts'
import {healCount} from './counts.ts'
import {healKey} from './lost-keys.ts'
import {drop, healTwice, mergeLists, mergeRecords, put} from './said-twice.ts'
import {sampleOf} from './samples.ts'
import {shapesOf} from './shapes.ts'
import {leafTexts} from './short-forms.ts'
import {type Healing, type Mend, Source} from './source.ts'
import {tellUnits} from './units.ts'

/** More slips than these of one file are not looked into: they are of one kind, or the file is none of a build. */
const mostLooked = 40

/**
 * Look for what the writer of each slip meant, by reading what it may have been against the schema and the rest of the
 * file: what would do is put to the problem, and where one reading alone is left the problem says so.
 */
export function healSlips(
  context: ReadingContext,
  {text, tree, schema}: {text: string; tree: YamlTree; schema: RecordOf},
): void {
  const healing: Healing = {context, source: new Source(text, tree)}
  tellUnits(healing, schema)
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

function mendOf(slip: Slip, healing: Healing): Mend | undefined {
  const {rule} = slip.problem
  if (rule === 'comma-in-braces') return healComma(slip, healing)
  if (rule === 'unknown-key') return healKey(slip, healing)
  if (rule === 'key-twice') return healTwice(slip, healing)
  const {node, kind} = slip
  if (!node || !kind) return undefined
  return healCount(slip, healing) ?? healValue(slip, node, kind, healing)
}

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
