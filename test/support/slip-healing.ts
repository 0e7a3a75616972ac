import {readdirSync, readFileSync} from 'node:fs'
import {type MendReading, mendText} from '../../plugins/build-file/heal/mend.ts'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import {leavesOf} from '../../plugins/build-file/schema/path.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {newBuild} from '../../plugins/build-file/writing/new-build.ts'
import {applied, editsOf} from '../../plugins/build-file/yaml/apply-edits.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {usualKinds} from '../../plugins/tables/usual-kinds.ts'
import {soundBuilds} from './sound-builds.ts'

/** Builds of every kind: the demo journal, the usual kinds in both units, one for each joint, and the shortest. */
export function manyBuilds(): string[] {
  const demo = readdirSync('builds', {recursive: true, encoding: 'utf8'})
    .filter((file) => file.endsWith('.md'))
    .sort()
    .map((file) => readFileSync(`builds/${file}`, 'utf8'))
  const kinds = Object.values(usualKinds).flatMap((kind) =>
    (['in', 'mm'] as const).map((units) => newBuild(kind, {title: 'Needle box', units})),
  )
  const joints = Object.values(soundBuilds).map((front) => `---\n${front}---\n`)
  const shortest =
    '---\ntitle: Needle box\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]\n---\n'
  const named = ['The "good" box', "Fisherman's box", 'Box 3: the first', 'Needle box #2'].map((title) =>
    shortest.replace('Needle box', /[:#]/.test(title) ? JSON.stringify(title) : title),
  )
  return [...demo, ...kinds, ...joints, shortest, ...named]
}

/** Read a build without planning it, where only what is certain of its reading is looked for. */
export function readOnly(text: string): MendReading {
  const {build, problems} = readBuild(text, {slug: 'needle-box', body: readBody})
  return {problems, values: build.values}
}

/** Read a build as the commands do. */
export function readAll(text: string): MendReading & {plan: string} {
  const {build, problems} = readBuild(text, {slug: 'needle-box', body: readBody})
  const settled = settle(build)
  const plan = planBuild(settled, {journal: {}, pieces: []})
  return {
    problems: inOrder([...problems, ...checks(settled, plan)]),
    values: build.values,
    plan: JSON.stringify(plan, (key, value) => (key === 'place' || key === 'text' ? undefined : value)),
  }
}

/** What became of a file with slips. */
export interface Healing {
  /** As the command leaves it, and after one round of pasting. */
  mended: string
  pasted: string
  isHealed: boolean
  /** What is still told, where it is not healed. */
  left: readonly Problem[]
}

/**
 * Mend a file as the command does, then paste once what each problem left expects: the maker knows what was meant, and
 * takes of several values the one that says it, or none.
 */
export function heal(slipped: string, meant: string): Healing {
  const {text: mended} = mendText(slipped, readOnly)
  // What was mended is most often what was meant, and what is left after pasting.
  const known = new Map<string, ReturnType<typeof readAll>>()
  const readOnce = (text: string) => {
    const read = known.get(text) ?? readAll(text)
    known.set(text, read)
    return read
  }
  const target = readOnce(meant)
  const wanted = sizes(target.values)
  const pasted = [...readOnce(mended).problems]
    .filter(({expected}) => expected)
    .sort((a, b) => b.line - a.line || b.column - a.column)
    .reduce((text, problem) => {
      const now = missing(text, wanted)
      const ways = problem.expected!.map((_, way) => applied(text, editsOf(problem, way)))
      const best = ways.map((way) => ({way, off: missing(way, wanted)})).sort((a, b) => a.off - b.off)[0]!
      return best.off < now ? best.way : text
    }, mended)
  const after = readOnce(pasted)
  return {mended, pasted, isHealed: after.plan === target.plan, left: after.problems}
}

/** How many values of a text are not those that were meant. */
function missing(text: string, wanted: ReadonlyMap<string, string>): number {
  const is = sizes(readBuild(text, {slug: 'needle-box'}).build.values)
  const paths = new Set([...wanted.keys(), ...is.keys()])
  return [...paths].filter((path) => wanted.get(path) !== is.get(path)).length
}

const sizes = (values: unknown): Map<string, string> =>
  new Map(leavesOf(values).map(([path, {text: _, place: __, ...value}]) => [path, JSON.stringify(value)]))
