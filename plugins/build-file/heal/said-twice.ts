import {isScalar, isSeq, type Node, type Pair} from 'yaml'
import {whatWouldDo} from '../quantities/reading.ts'
import {nameOf, type Slip, textOf} from '../reading/reading-context.ts'
import {digits, mostAsked, readable} from '../reading/trial.ts'
import type {ReaderRule} from '../rules/rules.ts'
import type {Problem} from '../schema/problem.ts'
import {shapesOf} from './shapes.ts'
import type {Healing, Mend} from './source.ts'

/** Take out of a list what is not to be told. */
export const drop = <T>(list: T[], isGone: (one: T) => boolean): void => {
  list.splice(0, Number.POSITIVE_INFINITY, ...list.filter((one) => !isGone(one)))
}

export function put(problem: Problem<ReaderRule>, mend: Mend, why: string): void {
  problem.expected = mend.texts.length > 0 ? [...mend.texts] : undefined
  if (mend.isSure && mend.texts.length === 1) problem.sure = true
  if (mend.edits) problem.edits = mend.edits
  if (mend.at) Object.assign(problem, mend.at)
  problem.message = mend.message ?? why + whatWouldDo(mend.texts)
}

/**
 * Where a list as a whole can be read in another way, its items' problems are one: `[D3, .030w, A3, .020w]`,
 * `{D3 .030w, A3 .020w}`.
 */
export function mergeLists({context, source}: Healing): void {
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
export function mergeRecords({context, source}: Healing): void {
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
export function healTwice({problem, key, node, map, why}: Slip, {source}: Healing): Mend | undefined {
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
