import {spawnSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import type {Measure} from '../bench.ts'
import {largeBuilds, largeSettings} from '../support/large-files.ts'
import type {Cost} from '../support/show-once.ts'
import {fourLines} from '../support/temp-journal.ts'

const project = resolve('.')
const tsx = join(project, 'node_modules/tsx/dist/esm/index.mjs')
/** What a file may cost beyond a journal without it: processor time, and memory at its highest. */
const most = {seconds: 5, megabytes: 500}
/** Around where the limits of a file's prose lie, and as large as a file may be. */
const sizes = [60_000, 150_000, 980_000]

/**
 * Show a journal with one file of each shape that a stranger may think of, in a process of its own, and say what it
 * took beyond the journal alone, as the operating system counts it, against the most that it may.
 */
export async function bench(): Promise<Measure[]> {
  const alone = costOf('needle-box.md', fourLines('Needle box'))
  const files = [
    ...Object.entries(largeBuilds).map(([name, text]) => ({name, file: 'large.md', text})),
    ...Object.entries(largeSettings).map(([name, one]) => ({name, ...one})),
  ]
  const measures = files.map(({name, file, text}) => {
    const texts = new Set(sizes.map(text))
    const costs = [...texts].map((one) => costOf(file, one))
    const seconds = Math.max(...costs.map((cost) => cost.seconds)) - alone.seconds
    const megabytes = Math.max(...costs.map((cost) => cost.megabytes)) - alone.megabytes
    return {
      name: `a file of ${name}, against ${most.seconds} s and ${most.megabytes} MB`,
      ratio: Math.max(seconds / most.seconds, megabytes / most.megabytes),
      detail: `${seconds.toFixed(1)} s, ${megabytes.toFixed(0)} MB`,
    }
  })
  const over = measures.filter(({ratio}) => ratio > 1).length
  return [
    ...measures,
    {name: 'files that take more than they may, of all', ratio: over / measures.length, detail: `${over}`},
  ]
}

function costOf(file: string, text: string): Cost {
  const root = mkdtempSync(join(tmpdir(), 'bench-'))
  mkdirSync(join(root, 'builds'))
  writeFileSync(join(root, 'builds/needle-box.md'), fourLines('Needle box'))
  writeFileSync(join(root, 'builds', file), text)
  const words = ['--import', tsx, join(project, 'test/support/show-once.ts')]
  const {stdout} = spawnSync(process.execPath, words, {cwd: root, encoding: 'utf8', timeout: 120_000})
  rmSync(root, {recursive: true})
  const line = stdout.trim().split('\n').at(-1)
  return line ? (JSON.parse(line) as Cost) : {seconds: Infinity, megabytes: Infinity, problems: 0}
}
