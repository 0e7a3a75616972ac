import {isAlias, isMap, isScalar, isSeq, type Node} from 'yaml'
import {placedAsWritten} from './heal/as-written.ts'
import {healSlips} from './heal/heal.ts'
import {choicesFor} from './heal/keys.ts'
import {healYaml} from './heal/yaml-lines.ts'
import {
  plainLines,
  secondDocument,
  splitFrontMatter,
  titleInRemark,
  titleMissing,
} from './reading/front-matter.ts'
import {readValue} from './reading/read-value.ts'
import {beginReading, report, textOf} from './reading/reading-context.ts'
import type {ReaderRule} from './rules/rules.ts'
import {type Body, type Build, emptyBuild, type Surroundings} from './schema/build.ts'
import type {Kind, RecordOf} from './schema/kinds.ts'
import {ownAt} from './schema/path.ts'
import type {Problem} from './schema/problem.ts'
import {type BuildValues, buildSchema, type JournalSettings, journalSchema} from './schema/schema.ts'
import {type RackEntry, rackSchema} from './schema/wood.ts'
import {type YamlTree, yamlTree} from './yaml/yaml-tree.ts'

// Seen as kinds only: what each is read as is named where it is read.
const schemas = {
  build: buildSchema as unknown as RecordOf,
  journal: journalSchema as unknown as RecordOf,
  rack: rackSchema as unknown as RecordOf,
}

/** What the reader must know besides the text. */
interface ReadOptions {
  slug: string
  /** Gives the unit of bare numbers where the build does not. */
  journal?: JournalSettings | undefined
  surroundings?: Surroundings | undefined
  /** Finds days, links and directives in the prose of the whole text; without it the build has none. */
  body?: (text: string) => Body
}

/**
 * Read a build file: front matter into values with places, body into days and links.
 * Never throws for bad input; every problem of the file is reported together, in the order of the file.
 */
export function readBuild(
  source: string,
  {slug, journal, surroundings, body}: ReadOptions,
): {build: Build; problems: Problem<ReaderRule>[]} {
  const text = plainLines(source)
  const {front, problems} = splitFrontMatter(text)
  const empty: Build = {...emptyBuild(slug), surroundings}
  if (!front) return {build: empty, problems}
  const read = readYaml<BuildValues>(front.yaml, front.firstLine, schemas.build, {
    journalUnits: journal?.units?.value,
  })
  const second = secondDocument(front.body, front.bodyLine)
  if (second) read.problems.push(second)
  // Where the YAML breaks off before the title, the title is not what is missing.
  const isMeant = read.problems.some(
    ({rule, expected}) => rule === 'unknown-key' && expected?.[0] === 'title',
  )
  if (read.sound && !read.values?.title && !isMeant)
    read.problems.push(titleInRemark(text, read.keys.title) ?? titleMissing(slug))
  return {
    build: {...empty, values: read.values ?? {}, places: read.places, keys: read.keys, ...body?.(text)},
    problems: inOrder(withAccepted(read.problems, read.values?.accept)),
  }
}

/** A warning of the text that its writer accepts is a remark with the reason, and nothing to mend. */
function withAccepted(
  problems: readonly Problem<ReaderRule>[],
  accept: BuildValues['accept'],
): Problem<ReaderRule>[] {
  return problems.map((problem) => {
    const reason = problem.severity === 'warning' ? ownAt(accept, problem.rule) : undefined
    if (!reason) return problem
    const {sure: _, ...told} = problem
    return {...told, severity: 'remark', message: `${told.message} (accepted: ${reason.value})`}
  })
}

/** Read the settings of a journal (`journal.yaml`, no fences). */
export function readJournal(source: string): {settings: JournalSettings; problems: Problem<ReaderRule>[]} {
  const read = readYaml<JournalSettings>(plainLines(source), 1, schemas.journal)
  return {settings: read.values ?? {}, problems: inOrder(read.problems)}
}

/** Read a rack (`rack.yaml`, no fences): a list of pieces, or a list under `pieces`. */
export function readRack(
  source: string,
  journal: JournalSettings = {},
): {pieces: RackEntry[]; problems: Problem<ReaderRule>[]} {
  const text = plainLines(source)
  const read = readYaml<{pieces?: RackEntry[]}>(text, 1, schemas.rack, {
    journalUnits: journal.units?.value,
    listAs: 'pieces',
  })
  return {pieces: read.values?.pieces ?? [], problems: inOrder(read.problems)}
}

interface YamlRead<T> {
  values: T | undefined
  places: Build['places']
  keys: Build['keys']
  problems: Problem<ReaderRule>[]
  sound: boolean
}

/** Read a YAML text by a schema; `listAs` names the field that a bare list stands for. */
function readYaml<T>(
  text: string,
  firstLine: number,
  schema: RecordOf,
  {journalUnits, listAs}: {journalUnits?: 'in' | 'mm' | undefined; listAs?: string} = {},
): YamlRead<T> {
  const asWritten = yamlTree(text, firstLine)
  const isBroken =
    asWritten.problems.some(({rule, expected}) => rule === 'unreadable-yaml' && !expected) &&
    !isBomb(asWritten)
  const healed = isBroken ? healYaml(text, schema, unitsSaid(text) ?? journalUnits ?? 'in') : undefined
  const mended = healed && yamlTree(healed.text, firstLine)
  const isHealed = mended?.soundUpToLine === Number.POSITIVE_INFINITY
  const tree = isHealed ? mended : asWritten
  const {doc, targetOf, placeOf, problems, soundUpToLine} = tree
  const sound = soundUpToLine === Number.POSITIVE_INFINITY
  const units = unitsOf(doc.contents, targetOf) ?? journalUnits ?? 'in'
  const context = beginReading({readValue, targetOf, placeOf, units})
  const root = doc.contents as Node | null
  let values: unknown
  if (isSeq(root) && listAs)
    values = {[listAs]: readValue(root, schema.fields[listAs] as Kind, listAs, context)}
  else if (isMap(root)) values = soundUpToLine > 0 ? readValue(root, schema, '', context) : undefined
  else if (root && sound)
    report(
      context,
      {rule: 'front-matter-not-keys', place: placeOf(root)},
      `the dimensions must be keys with values, such as "title: Needle box", not ${isSeq(root) ? 'a list' : 'a text'}`,
    )
  delete context.places['']
  if (sound) healSlips(context, {text: isHealed ? healed!.text : text, tree, schema})
  problems.push(...context.problems.filter((problem) => problem.line < soundUpToLine))
  if (isHealed)
    problems.splice(0, Number.POSITIVE_INFINITY, ...placedAsWritten(problems, text, healed!, firstLine))
  return {
    values: values as T | undefined,
    places: context.places,
    keys: context.keys,
    problems,
    sound: sound && !isHealed && (isMap(root) || !root),
  }
}

/** A text that unfolds past all reason is not looked into. */
const isBomb = ({problems}: YamlTree): boolean => problems.some(({rule}) => rule === 'alias-bomb')

/** The units that a text says, where it is no YAML yet. */
function unitsSaid(text: string): 'in' | 'mm' | undefined {
  const said = /^units?\s*[:=]\s*["']?(\w+)/m.exec(text)?.[1]
  return said === undefined ? undefined : (choicesFor(said, ['in', 'mm'])[0] as 'in' | 'mm' | undefined)
}

function unitsOf(root: unknown, targetOf: YamlTree['targetOf']): 'in' | 'mm' | undefined {
  if (!isMap(root)) return undefined
  const named = root.items.find(({key}) => isScalar(key) && choicesFor(textOf(key), ['units']).length > 0)
  const node: unknown = root.get('units', true) ?? named?.value
  const scalar = isAlias(node) ? targetOf(node) : node
  const [said] = isScalar(scalar) ? choicesFor(textOf(scalar), ['in', 'mm']) : []
  return said === 'in' || said === 'mm' ? said : undefined
}

/** Sort problems by place; of one place, the gravest first. */
export function inOrder<Rule extends string>(problems: readonly Problem<Rule>[]): Problem<Rule>[] {
  const grave = {error: 0, fault: 1, warning: 2, remark: 3}
  return [...problems].sort(
    (a, b) =>
      a.line - b.line ||
      a.column - b.column ||
      grave[a.severity] - grave[b.severity] ||
      (a.rule < b.rule ? -1 : a.rule > b.rule ? 1 : 0),
  )
}
