import {spawnSync} from 'node:child_process'
import {
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {join, resolve} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {commandHere} from '../support/command-here.ts'
import {asWritten, compiled} from '../support/commands.ts'
import '../support/slow.ts'

const root = resolve('.')
let home = ''
beforeAll(() => {
  home = mkdtempSync(join(tmpdir(), 'journal-'))
  cpSync(join(root, 'test/journals/long-example/builds'), join(home, 'builds'), {recursive: true})
})
afterAll(() => rmSync(home, {recursive: true}))

/** Run a command with the journal's folder, or another, as the project's root. */
const run = (name: string, ...words: string[]) => runIn(home, name, ...words)
const runIn = (cwd: string, name: string, ...words: string[]) => commandHere(name, words, cwd)

/** Run a command as a process of its own. */
function runAside(how: typeof compiled, name: string, ...words: string[]) {
  const {INIT_CWD: _, ...env} = process.env
  const {status, stdout, stderr} = spawnSync(process.execPath, [...how(name), ...words], {
    cwd: home,
    encoding: 'utf8',
    env: {...env, NO_COLOR: '1'},
  })
  return {status, stdout, stderr}
}

describe('check', () => {
  test('the long example and the four lines bring no problem', async () => {
    const ran = runAside(asWritten, 'check')
    expect(ran).toMatchObject({status: 0, stdout: '2 files: nothing to mend\n'})
    expect(await run('check')).toEqual(ran)
  })
  test('on the bench, where nothing is softened, none above a remark', async () => {
    const text = readFileSync(join(home, 'builds/lantern-pier/index.md'), 'utf8').replace(
      'status: strung up',
      'status: on the bench',
    )
    mkdirSync(join(home, 'builds/on-the-bench'))
    cpSync(join(home, 'builds/lantern-pier'), join(home, 'builds/on-the-bench'), {recursive: true})
    writeFileSync(join(home, 'builds/on-the-bench/index.md'), text)
    const {status, stdout} = await run('check', 'builds/on-the-bench/index.md', '--json')
    expect(status).toBe(0)
    const {files} = JSON.parse(stdout) as {files: {problems: {severity: string}[]}[]}
    expect(files[0]?.problems.filter(({severity}) => severity !== 'remark')).toEqual([])
    rmSync(join(home, 'builds/on-the-bench'), {recursive: true})
  })
  test('prints line, column, severity, message and rule under the file’s name, then a count', async () => {
    writeFileSync(join(home, 'slip.md'), '---\ntitle: A\nscale: 24 inn\n---\n')
    const {status, stdout} = await run('check', 'slip.md')
    expect(status).toBe(1)
    expect(stdout).toBe(
      'slip.md\n  3:8 error scale length: "24 inn" is not a length: "inn" is no unit of length; 24 in would do unreadable-length\n\n1 file: 1 error\n',
    )
  })
  test('the rack is looked at as a rack', async () => {
    mkdirSync(join(home, 'other'))
    writeFileSync(
      join(home, 'other/rack.yaml'),
      '- {id: A, wood: beech, length: 24, width: 3, thickness: 1, clear: 2}\n',
    )
    const {status, stdout} = await run('check', 'other/rack.yaml')
    expect(status).toBe(1)
    expect(stdout).toBe(
      'other/rack.yaml\n  1:67 error pieces 1 clear: 1 given, where exactly 2 can be; write them in square brackets, with commas between out-of-range\n\n1 file: 1 error\n',
    )
  })
  test('a file that is not there is named, with the nearest one that is', () => {
    expect(runAside(compiled, 'check', 'builds/needle-box-on.md')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringContaining('needle-box-one.md'),
    })
  })
})

describe('plan', () => {
  test('prints one JSON object and nothing else', () => {
    const {status, stdout} = runAside(compiled, 'plan', 'builds/needle-box-one.md')
    expect(status).toBe(0)
    expect(JSON.parse(stdout)).toMatchObject({slug: 'needle-box-one', title: 'Needle box', problems: []})
  })
  test('ends quietly where its reader has had enough', () => {
    const [command] = compiled('plan')
    const line = `"${process.execPath}" "${command}" builds/needle-box-one.md | head -c 1`
    const {stdout, stderr} = spawnSync('sh', ['-c', line], {cwd: home, encoding: 'utf8'})
    expect([stdout, stderr]).toEqual(['{', ''])
  })
  test('also for a file that cannot be read as YAML', async () => {
    writeFileSync(join(home, 'broken.md'), '---\ntitle: {A\n---\n')
    const {status, stdout, stderr} = await run('plan', 'broken.md')
    expect(status).toBe(1)
    expect(JSON.parse(stdout)).toMatchObject({slug: 'broken', problems: [{rule: 'unreadable-yaml'}]})
    expect(stderr).toContain('unreadable-yaml')
  })
  test('shows what a terminal would obey as its number, and is JSON all the same', async () => {
    const title = 'A\u009b31m\u202eB\u2066C'
    writeFileSync(join(home, 'signs.md'), `---\ntitle: ${title}\n---\n`)
    const {stdout, stderr} = await run('plan', 'signs.md')
    expect(stdout + stderr).not.toMatch(/[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/)
    expect(JSON.parse(stdout)).toMatchObject({title})
  })
  test('leaves with 2, and nothing on standard output, where the file is not there', async () =>
    expect(await run('plan', 'nowhere.md')).toMatchObject({status: 2, stdout: ''}))
  test('says how it is used', async () =>
    expect(await run('plan')).toMatchObject({
      status: 2,
      stdout: '',
      stderr: expect.stringContaining('npm run --silent plan -- FILE'),
    }))
})

describe('new', () => {
  test('from the four lines, with another scale', async () => {
    expect(
      runAside(compiled, 'new', 'second-tide', '--from', 'needle-box-one', '--scale', '23'),
    ).toMatchObject({status: 0})
    const text = readFileSync(join(home, 'builds/second-tide.md'), 'utf8')
    expect(text).toContain('title: Second tide\nbased-on: needle-box-one\nstatus: idea')
    expect(await run('check', 'builds/second-tide.md')).toMatchObject({status: 0})
  })
  test('never overwrites', async () => {
    expect(await run('new', 'needle-box-one')).toMatchObject({status: 1})
    expect(await run('new', 'lantern-pier')).toMatchObject({status: 1})
  })
  test('leaves no file behind where it cannot write one', async () => {
    symlinkSync('nowhere/at-all.md', join(home, 'builds/dangling.md'))
    expect(await run('new', 'dangling')).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('is there already'),
    })
    expect(existsSync(join(home, 'builds/nowhere'))).toBe(false)
    rmSync(join(home, 'builds/dangling.md'))
    writeFileSync(join(home, 'builds/broken-past.md'), '---\ntitle: {A\n---\n')
    expect(await run('new', 'after-it', '--from', 'broken-past')).toMatchObject({
      status: 1,
      stderr: expect.stringContaining('cannot be read'),
    })
    expect(existsSync(join(home, 'builds/after-it.md'))).toBe(false)
    rmSync(join(home, 'builds/broken-past.md'))
  })
  test('--empty asks, moves what is there aside as a whole, and deletes nothing', async () => {
    const own = mkdtempSync(join(tmpdir(), 'journal-'))
    const runThere = (...words: string[]) => runIn(own, 'new', ...words)
    const files = (folder: string) =>
      readdirSync(join(own, folder), {recursive: true, encoding: 'utf8'}).sort()
    cpSync(join(home, 'builds'), join(own, 'builds'), {recursive: true})
    const before = files('builds')
    // Without a terminal there is nobody to ask.
    expect(await runThere('--empty')).toMatchObject({
      status: 1,
      stdout: '',
      stderr: expect.stringContaining('Nothing was moved'),
    })
    expect(files('builds')).toEqual(before)
    expect(await runThere('--empty', '--yes')).toMatchObject({status: 0, stderr: ''})
    expect([files('builds'), files('builds-before')]).toEqual([['journal.yaml'], before])
    expect(await runThere('--empty', '--yes')).toMatchObject({status: 0})
    expect([files('builds'), files('builds-before'), files('builds-before-2')]).toEqual([
      ['journal.yaml'],
      before,
      ['journal.yaml'],
    ])
    expect(await runIn(own, 'check')).toMatchObject({status: 0, stdout: '0 files: nothing to mend\n'})
    rmSync(join(own, 'builds'), {recursive: true})
    expect(await runThere('--empty')).toMatchObject({status: 0})
    expect(await runThere('first')).toMatchObject({status: 0})
    expect(files('builds')).toEqual(['first.md', 'journal.yaml'])
    rmSync(own, {recursive: true})
  })
  test.each([
    [['Big Box'], 'big-box'],
    [['readme'], 'never a build'],
    [['a'.repeat(121)], 'at most 120 characters'],
    [['a', '--kind', 'diatnic'], 'was diatonic meant?'],
    [['a', '--from', 'lantern-peer'], 'was lantern-pier meant?'],
    [['a', '--scale', '24 inn'], '24 in would do'],
    [['a', '--scale', '610'], 'were 610 mm meant? Then write --scale "610 mm"'],
    [['a', '--from', 'needle-box-one', '--scale', '590'], 'were 590 mm meant?'],
    [['a', '--units', 'ft'], 'in or mm'],
    [['a', '--size', '3'], 'npm run new'],
  ])('%s is used wrongly', async (words, hint) => {
    const {status, stderr} = await run('new', ...words)
    expect(status).toBe(2)
    expect(stderr).toContain(hint === 'big-box' ? 'is no slug' : hint)
  })
})
