import {spawnSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import type {Measure} from '../bench.ts'
import {asWritten} from '../support/commands.ts'

const project = resolve('.')

/**
 * Measure the whole site at 100 and 1,000 generated builds, made anew and made from what is kept, each against a
 * bare Eleventy that renders the same Markdown in the same run.
 */
export async function bench(): Promise<Measure[]> {
  return [100, 1000].flatMap(measure)
}

function measure(count: number): Measure[] {
  const root = mkdtempSync(join(tmpdir(), 'bench-'))
  writeJournal(root, count)
  const bare = timed(
    root,
    ['node_modules/@11ty/eleventy/cmd.cjs'].map((file) => join(project, file)),
    ['--input=builds', '--output=bare', '--formats=md', '--quiet'],
  )
  const build = asWritten('build')
  const anew = timed(root, build, [])
  const kept = timed(root, build, [])
  rmSync(root, {recursive: true})
  const told = (took: number) => `${seconds(took)} against ${seconds(bare)} of a bare Eleventy`
  return [
    {name: `the whole site, ${count} builds, made anew`, ratio: anew / bare, detail: told(anew)},
    {name: `the whole site, ${count} builds, all kept`, ratio: kept / bare, detail: told(kept)},
  ]
}

/** Write builds like the journal's fullest one, each a little other than the next, so that none is kept for another. */
function writeJournal(root: string, count: number): void {
  mkdirSync(join(root, 'builds'))
  const text = readFileSync(join(project, 'builds/lantern-pier/index.md'), 'utf8')
  writeFileSync(
    join(root, 'builds/needle-box-one.md'),
    readFileSync(join(project, 'builds/needle-box-one.md')),
  )
  for (let at = 0; at < count; at++) {
    const own = text
      .replace(/^title: .*$/m, `title: Pier ${at}`)
      .replace(/^( {2}length: )24 1\/4$/m, `$1${24 + (at % 16) / 32}`)
      .replace(/^based-on: .*\n/m, '')
    writeFileSync(join(root, `builds/pier-${at}.md`), own)
  }
}

function timed(cwd: string, program: string[], words: string[]): number {
  const started = performance.now()
  const {status, stderr} = spawnSync(process.execPath, [...program, ...words], {cwd, encoding: 'utf8'})
  if (status !== 0) throw new Error(`${program.at(-1)} failed: ${stderr.slice(0, 2000)}`)
  return performance.now() - started
}

const seconds = (ms: number) => `${(ms / 1000).toFixed(1)} s`
