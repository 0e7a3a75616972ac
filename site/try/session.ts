import {isScalar, parseDocument} from 'yaml'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import {plainLines} from '../../plugins/build-file/reading/front-matter.ts'
import type {Build} from '../../plugins/build-file/schema/build.ts'
import {kindAt, ownAt, textAt} from '../../plugins/build-file/schema/path.ts'
import type {Place, Problem} from '../../plugins/build-file/schema/problem.ts'
import {setValues, textsOf} from '../../plugins/build-file/writing/set-values.ts'
import {applied, editsOf} from '../../plugins/build-file/yaml/apply-edits.ts'
import {planInstrument} from '../../plugins/plan/instrument.ts'
import type {Context} from '../../plugins/plan/kit/context.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {checks} from './later.ts'

/** What a build's plan depends on besides its front matter. */
export interface Around {
  context: Context
  /** What its prose says: the days, and the tasks that are ticked. */
  body: Pick<Build, 'days' | 'ticked'>
}

/** What a build is called that started from none of the journal. */
export const blankSlug = 'new-build'

/** A build file that somebody changes: where it started, and how it stands. */
export interface Session {
  slug: string
  around: Around
  start: Reading
  /** The text that the changes are made on: the start, or what was written or mended by hand since. */
  base: Reading
  changes: ReadonlyMap<string, string>
  now: Reading
  /** The values that were asked for a field. */
  asked: readonly string[]
}

/** A text, read and planned. */
export interface Reading {
  text: string
  /** As written, nothing assumed. */
  build: Build
  settled: Settled
  plan: Plan
  /** What would not work, looked for once somebody asks. */
  readonly problems: readonly Problem[]
  /** What the reader found, before the checks. */
  unread: readonly Problem[]
  /** What exists is to be built anew as the text has it: it is as grave as on a new one, and nobody has measured it. */
  toBuild: boolean
}

/**
 * Read a text, plan the instrument and check it as the command line does; its prose is not here, and what making it
 * takes is planned apart.
 */
export function look(
  text: string,
  {slug, around: {context, body}}: Pick<Session, 'slug' | 'around'>,
  toBuild = false,
): Reading {
  const {journal} = context
  const {build: read, problems: unread} = readBuild(text, {slug, journal})
  const build = {...read, ...body}
  const settled = settle(build, journal)
  return checked({text, build, settled, plan: planInstrument(settled, context), unread, toBuild})
}

/** Let what would not work be asked for: a drawing does not wait for it. */
export function checked(reading: Omit<Reading, 'problems'>): Reading {
  let found: readonly Problem[] | undefined
  return {
    ...reading,
    get problems() {
      found ??= problemsOf(reading)
      return found
    },
  }
}

function problemsOf({text, settled, plan, unread, toBuild}: Omit<Reading, 'problems'>): Problem[] {
  const {measured: _, ...unmeasured} = settled.values
  const found = toBuild
    ? checks({...settled, values: unmeasured}, {...plan, status: 'idea', asBuilt: undefined})
    : checks(settled, plan)
  // What is found in the prose stands past the end.
  const lines = plainLines(text).split('\n').length
  const own = found.filter(({line}) => line < lines)
  return inOrder<string>([...unread, ...own])
}

/** Open a build file for change. */
export function openSession(text: string, slug: string, around: Around): Session {
  const start = look(text, {slug, around})
  return {slug, around, start, base: start, changes: new Map(), now: start, asked: []}
}

/** Look at all its texts anew: with what is known by now. */
export function lookAgain(session: Session): Session {
  const known = new Map<Reading, Reading>()
  const anew = (old: Reading): Reading => {
    const now = known.get(old) ?? look(old.text, session, old.toBuild)
    known.set(old, now)
    return now
  }
  return {...session, start: anew(session.start), base: anew(session.base), now: anew(session.now)}
}

/** Set values by their paths; one that is set back to what it was leaves no trace. */
export function setIn(session: Session, values: readonly (readonly [path: string, text: string])[]): Session {
  const {base} = session
  const changes = new Map(session.changes)
  for (const [path, given] of values) {
    const text = given.trim()
    if (!kindAt(path)) continue
    if (text === shownText(base, path)) changes.delete(path)
    else changes.set(path, text)
  }
  return {...session, changes, now: standing(session, setValues(base.text, base.build, changes))}
}

/** Take the whole text as somebody wrote it. */
export function writeIn(session: Session, text: string): Session {
  const now = standing(session, text)
  return {...session, base: now, changes: new Map(), now}
}

/** Do what a problem of the text proposes. */
export function mendIn(session: Session, problem: Problem, way: number): Session {
  const {now} = session
  const text = problem.expected?.[way]
  if (text === undefined) return session
  // What is about a key changes the text.
  const path = pathAt({...now.build, keys: {}}, problem)
  const isPlain = !problem.edits?.[way] && problem.line === problem.endLine && /^[^[{"'|>&*!#\n]+$/.test(text)
  const set = path && isPlain ? setIn(session, [[path, text]]) : session
  if (set.now.text !== now.text) return set
  return writeIn(session, applied(now.text, editsOf(problem, way)))
}

/** Go back to where it started. */
export const startAgain = (session: Session): Session => ({
  ...session,
  base: session.start,
  changes: new Map(),
  now: session.start,
})

function standing({slug, around, start, base, now}: Session, text: string): Reading {
  const known = [start, base, now].find((reading) => reading.text === text)
  return known ?? look(text, {slug, around}, true)
}

/** Find the path of the value that a problem is about; of its key where it has none. */
export function pathAt({places, keys}: Build, place: Place): string | undefined {
  const isThere = (other: Place | undefined) =>
    other?.line === place.line && other.column === place.column && other.endColumn === place.endColumn
  const among = (all: Build['places']) =>
    Object.keys(all)
      .reverse()
      .find((path) => isThere(all[path]))
  return among(places) ?? among(keys)
}

/** Give a value as the file has it, readable or not; empty where it has none. */
export function shownText({text, build}: Reading, path: string): string {
  const read = textAt(build.values, path)
  const place = ownAt(build.places, path)
  if (read !== undefined || !place || place.line !== place.endLine) return read ?? ''
  const line = plainLines(text).split('\n')[place.line - 1] ?? ''
  const raw = line.slice(place.column - 1, place.endColumn - 1)
  return /^[[{]/.test(raw) ? '' : unquoted(raw)
}

/** Take the quotes off a scalar, and what they escape. */
function unquoted(raw: string): string {
  const node = parseDocument(raw, {prettyErrors: false}).contents
  return isScalar(node) && typeof node.value === 'string' ? node.value : raw
}

/** List what is otherwise than at the start, by path; an empty text where the file no longer has it. */
export function changedValues({start, now, changes}: Session): [path: string, text: string][] {
  const [was, is] = [textsOf(start.build), textsOf(now.build)]
  // What was set and cannot be read; a record that one value stands for is read below its path.
  const unread = [...changes.keys()].filter(
    (path) => ![...is.keys()].some((one) => `${one}.`.startsWith(`${path}.`)),
  )
  const paths = new Set([...was.keys(), ...is.keys(), ...unread])
  return [...paths].flatMap((path): [string, string][] => {
    const text = is.get(path) ?? changes.get(path) ?? ''
    return text === (was.get(path) ?? '') ? [] : [[path, text]]
  })
}
