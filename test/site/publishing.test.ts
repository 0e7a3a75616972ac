import {spawnSync} from 'node:child_process'
import {cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, symlinkSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {afterAll, beforeAll, expect, test} from 'vitest'
import {parse} from 'yaml'
import '../support/slow.ts'

/*
 * The workflow that the README gives, run step by step in a clean folder. In the place of `npm ci` the libraries that it
 * would install are linked; what a code host's own steps do is done here as they say: `.cache` alone is kept.
 */

interface Step {
  uses?: string
  run?: string
  with?: {path?: string; key?: string; 'restore-keys'?: string}
}

const [, text] = /^```yaml\n(on: .*?)^```/ms.exec(readFileSync('README.md', 'utf8'))!
const {steps} = (parse(text!) as {jobs: {site: {steps: Step[]}}}).jobs.site
const runs = steps.flatMap(({run}) => run ?? [])
let home = ''

beforeAll(async () => {
  home = mkdtempSync(join(tmpdir(), 'publishing-'))
  for (const name of ['package.json', 'package-lock.json', 'plugins', 'site', 'tsconfig.json'])
    cpSync(name, join(home, name), {recursive: true})
  cpSync('test/journals/long-example/builds', join(home, 'builds'), {recursive: true})
  // As after the installing: a picture that was written just now is looked at, and known again only later.
  await pause(2100)
})
afterAll(() => rmSync(home, {recursive: true}))

function runWorkflow(): Map<string, Buffer> {
  for (const command of runs) {
    if (command === 'npm ci') {
      symlinkSync(resolve('node_modules'), join(home, 'node_modules'))
      continue
    }
    const {status, stderr} = spawnSync('sh', ['-ec', command], {cwd: home, encoding: 'utf8'})
    expect([command, status, stderr]).toEqual([command, 0, ''])
  }
  const site = join(home, steps.find(({uses}) => uses?.includes('upload'))!.with!.path!)
  const names = readdirSync(site, {recursive: true, encoding: 'utf8'}).sort()
  const files = names.filter((name) => statSync(join(site, name)).isFile())
  return new Map(files.map((name) => [name, readFileSync(join(site, name))]))
}

/** What was kept, with when it was written. */
const kept = () =>
  readdirSync(join(home, '.cache/site'), {recursive: true, encoding: 'utf8'})
    .filter((name) => /\.(json|bytes)$/.test(name))
    .map((name) => `${name} ${statSync(join(home, '.cache/site', name)).mtimeMs}`)
    .sort()

test('keeps the cache from run to run, also where nothing was kept for this very state', () => {
  const {
    path,
    key = '',
    'restore-keys': restore = '-',
  } = steps.find(({uses}) => uses?.includes('cache@'))!.with!
  expect([path, key.startsWith(restore)]).toEqual(['.cache', true])
  expect(runs[0]).toBe('npm ci')
})

test('gives the site under its path; a second run, of the cache alone, gives the same and makes nothing anew', () => {
  const first = runWorkflow()
  expect(String(first.get('index.html'))).toContain('href="/journal/builds/lantern-pier/"')
  const cache = kept()
  expect(cache).not.toEqual([])
  for (const name of ['_site', '.site', 'node_modules']) rmSync(join(home, name), {recursive: true})
  const second = runWorkflow()
  expect([...second.keys()]).toEqual([...first.keys()])
  for (const [name, bytes] of second) expect(bytes.equals(first.get(name)!), name).toBe(true)
  expect(kept()).toEqual(cache)
})
