import {type Document, isCollection, isMap, isSeq, type Node, parseDocument, type YAMLError} from 'yaml'
import {readValue} from '../reading/read-value.ts'
import type {ReadingContext} from '../reading/reading-context.ts'
import {trialContext} from '../reading/trial.ts'
import type {RecordOf} from '../schema/kinds.ts'
import {isSlip} from '../schema/nearest.ts'
import type {Rewriting, rewritings} from './line-slips.ts'

/** Find what the parser says first of some lines; an indent before the first key is a slip too. */
export const slipOf = (lines: readonly string[]): YAMLError | undefined => firstSlip(parsed(lines), lines)

function firstSlip(
  {errors, warnings, contents}: Document.Parsed,
  lines: readonly string[],
): YAMLError | undefined {
  const [own] = [...errors, ...warnings].sort((a, b) => a.pos[0] - b.pos[0])
  if (own || !contents) return own
  // A line without a colon is a text of its own.
  if (!isCollection(contents))
    return {code: 'MISSING_CHAR', message: 'followed by map values', pos: [0, 1]} as YAMLError
  const first = lines.find((line) => !/^\s*(?:#.*)?$/.test(line)) ?? ''
  return /^\s/.test(first) ? ({code: 'BAD_INDENT', message: '', pos: [0, 1]} as YAMLError) : undefined
}

const parsed = (lines: readonly string[]) =>
  parseDocument(lines.join('\n'), {prettyErrors: false, uniqueKeys: false, keepSourceTokens: false})

export interface Setting {
  schema: RecordOf
  units: 'in' | 'mm'
  known: Parameters<typeof rewritings>[2]
}

const nowhere = -1

export interface Way extends Rewriting {
  /** Where reading breaks off, in signs from the start; past all where it does not, before all in what are no keys. */
  reads: number
  /** How much of what is read the schema does not know. */
  wrong: number
  meaning: string
  /** The words that are read as texts. */
  texts: string[]
  isSure: boolean
}

/** The lines in which the slip may lie: where the parser stumbles and those round it, in a short key all. */
export function suspects({lines, reads}: Way): number[] {
  if (reads === nowhere) return []
  const line = lines.join('\n').slice(0, reads).split('\n').length - 1
  const texts = lines.flatMap((each, at) => (/^\s*[^\s#]/.test(each) ? [at] : []))
  if (texts.length <= 6) return [...texts].sort((a, b) => Math.abs(a - line) - Math.abs(b - line))
  const before = texts.findLast((at) => at < line)
  const after = texts.find((at) => at > line)
  const around = [line, before, after, texts[0], texts.at(-1)]
  return [...new Set(around)].filter((at): at is number => at !== undefined && texts.includes(at))
}

/** A key where it does not belong tells more against a rewriting than a value that cannot be read. */
const ofShape = new Set(['unknown-key', 'wrong-shape', 'comma-in-braces', 'key-twice'])

export const shapeWeight = 3

/** A key that only wants one letter is nearly the right one. */
function weightOf({rule, message, expected}: ReadingContext['problems'][number]): number {
  if (ofShape.has(rule) && expected?.length !== 1) return shapeWeight
  return rule !== 'unknown-key' || isSlip(message.split(' ')[0]!, expected![0]!, 1) ? 1 : 1.5
}

export function weigh(rewriting: Rewriting, {schema, units}: Setting): Way {
  const doc = parsed(rewriting.lines)
  const slip = firstSlip(doc, rewriting.lines)
  const list = isSeq(doc.contents) ? schema.fields.pieces : undefined
  if (slip || !(isMap(doc.contents) || list))
    return {...rewriting, reads: slip?.pos[0] ?? nowhere, wrong: 0, meaning: '', texts: [], isSure: false}
  const context = trialContext(units)
  const value = readValue(doc.contents as Node, list ?? schema, list ? 'pieces' : '', context)
  const texts: string[] = []
  const bareOf = (key: string, item: unknown) => {
    if (key === 'text' && typeof item === 'string' && /\p{L}/u.test(item)) texts.push(item)
    return key === 'place' || key === 'text' ? undefined : item
  }
  return {
    ...rewriting,
    reads: Number.POSITIVE_INFINITY,
    wrong: context.problems.reduce((sum, problem) => sum + weightOf(problem), 0),
    // A misspelt key belongs to what it may mean: it may stand at several depths.
    meaning: [
      JSON.stringify(value, bareOf),
      ...context.problems.flatMap(({rule, message, expected}) =>
        rule === 'unknown-key' && expected?.length === 1 ? [message] : [],
      ),
    ].join('\n'),
    texts,
    isSure: false,
  }
}
