import {type ChildProcess, spawn, spawnSync} from 'node:child_process'
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join, resolve} from 'node:path'
import {pathToFileURL} from 'node:url'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readsDifferently} from '../../site/journal/last-version.ts'
import '../support/slow.ts'

/*
 * A journal of one's own: the packed file in an empty folder, with nothing of the project but the libraries that the
 * package says it needs. They are linked, so that no registry is asked; what only the project's work needs is not there.
 */

const project = resolve('.')
let home = ''
let bin = ''

beforeAll(() => {
  home = realpathSync(mkdtempSync(join(tmpdir(), 'own-journal-')))
  const packed = spawnSync('npm', ['pack', '--silent', '--pack-destination', home], {
    cwd: project,
    encoding: 'utf8',
  })
  expect(packed.stderr).toBe('')
  const modules = join(home, 'node_modules')
  const own = join(modules, 'nut-to-bridge')
  mkdirSync(own, {recursive: true})
  const tarball = join(home, packed.stdout.trim())
  spawnSync('tar', ['-xzf', tarball, '-C', own, '--strip-components=1'])
  rmSync(tarball)
  linkLibraries(modules)
  const {bin: bins} = JSON.parse(readFileSync(join(own, 'package.json'), 'utf8'))
  bin = join(own, bins['nut-to-bridge'])
})
afterAll(() => rmSync(home, {recursive: true, force: true}))

/** Link every library that is no one's but the project's work. */
function linkLibraries(modules: string): void {
  const {packages} = JSON.parse(readFileSync('package-lock.json', 'utf8')) as {
    packages: Record<string, {dev?: true; devOptional?: true}>
  }
  for (const [path, {dev, devOptional}] of Object.entries(packages)) {
    const name = /^node_modules\/((?:@[^/]+\/)?[^/]+)$/.exec(path)?.[1]
    if (!name || dev || devOptional || !existsSync(path)) continue
    mkdirSync(dirname(join(modules, name)), {recursive: true})
    symlinkSync(join(project, path), join(modules, name))
  }
}

function node(...words: string[]) {
  const {NODE_OPTIONS: _, INIT_CWD: __, ...env} = process.env
  const {status, stdout, stderr} = spawnSync(process.execPath, words, {
    cwd: home,
    encoding: 'utf8',
    env: {...env, NO_COLOR: '1'},
  })
  return {status, stdout, stderr}
}
const run = (...words: string[]) => node(bin, ...words)
const built = expect.stringMatching(/^1 build on \d+ pages in _site\/\n$/)
const builds = () =>
  readdirSync(join(home, 'builds')).map((name) => [name, readFileSync(join(home, 'builds', name), 'utf8')])

/** The block of the README in a language that names this package. */
const fromReadme = (language: string) =>
  [...readFileSync('README.md', 'utf8').matchAll(new RegExp(`^\`\`\`${language}\\n(.*?)^\`\`\``, 'gms'))]
    .map(([, block]) => block!)
    .find((block) => block.includes("from 'nut-to-bridge'"))!

test('nothing of the package is a test, a source in another language, or what it is made with', () => {
  const files = readdirSync(join(home, 'node_modules/nut-to-bridge'), {recursive: true, encoding: 'utf8'})
  const strange = files.filter((name) => /(?<!\.d)\.ts$|test\/|^builds|^site\b/.test(name))
  expect(strange).toEqual([])
  for (const name of ['tsx', 'typescript', 'vitest'])
    expect(existsSync(join(home, 'node_modules', name))).toBe(false)
})

test('says how it is used, and what may have been meant', () => {
  expect(run()).toMatchObject({status: 0, stdout: expect.stringContaining('nut-to-bridge start')})
  expect(run('biuld')).toMatchObject({status: 2, stderr: expect.stringContaining('was build meant?')})
  expect(run('check', '--help').stdout).toMatch(/^nut-to-bridge check FILE …\s+looks at these files/m)
})

describe('a journal of one’s own', () => {
  test('begins, grows and is looked at', () => {
    expect(run('new', '--empty')).toMatchObject({status: 0, stderr: ''})
    expect(run('new', 'gull-box').stdout).toBe(
      'builds/gull-box.md is there, ready to fill. nut-to-bridge start shows its page at /builds/gull-box/\n',
    )
    expect(builds().map(([name]) => name)).toEqual(['gull-box.md', 'journal.yaml'])
    expect(run('check')).toMatchObject({status: 0, stdout: '1 file: nothing to mend\n'})
  })
  test('is built, with all that its pages need', () => {
    const before = builds()
    expect(run('build')).toMatchObject({status: 0, stdout: built, stderr: ''})
    const page = readFileSync(join(home, '_site/builds/gull-box/index.html'), 'utf8')
    const style = /href="(\/assets\/style[^"]*)"/.exec(page)![1]!
    expect(readFileSync(join(home, '_site', style), 'utf8')).toContain('.woff2')
    const files = readdirSync(join(home, '_site'), {recursive: true, encoding: 'utf8'})
    for (const kind of [/\.woff2$/, /assets\/page-\w+\.js$/, /\.pdf$/, /\.dxf$/, /\.svg$/])
      expect(files.filter((name) => kind.test(name))).not.toEqual([])
    expect(builds()).toEqual(before)
  })
  test('is shown while it is written', async () => {
    const server = spawn(process.execPath, [bin, 'start'], {cwd: home})
    const address = await addressOf(server)
    const page = await fetch(`${address}/builds/gull-box/`).then((answer) => answer.text())
    server.kill('SIGTERM')
    await new Promise((done) => server.once('exit', done))
    expect(page).toContain('<h1>Gull box</h1>')
  })
  test('stays as it is when the program is another version, which says what reads differently', () => {
    const file = join(home, 'node_modules/nut-to-bridge/package.json')
    const written = JSON.parse(readFileSync(file, 'utf8'))
    const before = builds()
    writeFileSync(file, JSON.stringify({...written, version: '99.0.0'}))
    writeFileSync(
      join(home, 'node_modules/nut-to-bridge/CHANGELOG.md'),
      '## 99.0.0\n\n### Reads differently\n\n- A bare angle is in degrees.\n',
    )
    const first = run('build').stdout
    expect(first).toContain('This is version 99.0.0; this journal was last made by')
    expect(first).toContain('What reads differently:\n- A bare angle is in degrees.\n')
    expect(run('build').stdout).toEqual(built)
    expect(builds()).toEqual(before)
    writeFileSync(file, JSON.stringify(written))
  })
})

describe('for other programs', () => {
  test('the computing library gives what the command prints', () => {
    const printed = run('plan', 'builds/gull-box.md')
    expect(printed).toMatchObject({status: 0, stderr: ''})
    writeFileSync(
      join(home, 'library.mjs'),
      `import {readFileSync} from 'node:fs'
import {checks, planBuild, planJson, readBody, readBuild, settle} from 'nut-to-bridge/plan'
const {build, problems} = readBuild(readFileSync('builds/gull-box.md', 'utf8'), {slug: 'gull-box', body: readBody})
const settled = settle(build)
const plan = planBuild(settled, {journal: {}, pieces: []})
process.stdout.write(planJson(plan, [...problems, ...checks(settled, plan)]))
`,
    )
    expect(node('library.mjs')).toEqual(printed)
  })
  test('the README’s command for an editor tells of a text that is typed', async () => {
    const [, settings] = /^```json\n(.*?)^```/ms.exec(readFileSync('README.md', 'utf8'))!
    const {command, args} = JSON.parse(settings!).languageserver['nut-to-bridge']
    expect([command, args.slice(0, 1)]).toEqual(['npx', ['nut-to-bridge']])
    const server = spawn(process.execPath, [bin, ...args.slice(1)], {cwd: home})
    const uri = (path: string) => pathToFileURL(join(home, path)).href
    const send = (message: object) => {
      const text = JSON.stringify({jsonrpc: '2.0', ...message})
      server.stdin.write(`Content-Length: ${Buffer.byteLength(text)}\r\n\r\n${text}`)
    }
    const told = new Promise<string>((done) => {
      let all = ''
      server.stdout.on('data', (text: Buffer) => {
        all += text
        if (/publishDiagnostics.*\}$/s.test(all)) done(all)
      })
    })
    const workspaceFolders = [{uri: uri('.'), name: 'journal'}]
    send({
      id: 1,
      method: 'initialize',
      params: {processId: null, rootUri: null, capabilities: {}, workspaceFolders},
    })
    send({method: 'initialized', params: {}})
    const text = '---\ntitle: A\nscale: 24 inn\n---\n'
    const textDocument = {uri: uri('builds/gull-box.md'), languageId: 'markdown', version: 1, text}
    send({method: 'textDocument/didOpen', params: {textDocument}})
    expect(await told).toContain('"data":{"expected":["24 in"]}')
    server.kill()
  })
  test('the README’s ten lines give a page in any pipeline', () => {
    const block = fromReadme('js')
    expect(block.trim().split('\n').length).toBeLessThanOrEqual(10)
    writeFileSync(join(home, 'pipeline.mjs'), block)
    const {status, stdout, stderr} = node('pipeline.mjs')
    expect([status, stderr]).toEqual([0, ''])
    expect(stdout).toContain('<h2 id="strings">')
    expect(stdout).toContain('<svg')
  })
  test('has types', () => {
    writeFileSync(
      join(home, 'typed.ts'),
      `import {remarkBuild} from 'nut-to-bridge'
import {planBuild, readBuild, settle} from 'nut-to-bridge/plan'
import {unified} from 'unified'
unified().use(remarkBuild, {slug: 'a'})
const bridge: number | undefined = planBuild(settle(readBuild('', {slug: 'a'}).build), {journal: {}, pieces: []}).bridge?.stationMm
// @ts-expect-error: a slug is a text
unified().use(remarkBuild, {slug: 1})
console.log(bridge)
`,
    )
    const options = ['--noEmit', '--strict', '--skipLibCheck', '--module', 'nodenext', '--target', 'es2023']
    const {stdout} = node(join(project, 'node_modules/typescript/bin/tsc'), ...options, 'typed.ts')
    expect(stdout).toBe('')
  })
})

test('what reads differently is told of later versions alone', () => {
  const versions = ['0.10.0', '0.2.1', '0.2.0', '0.1.0'].map(
    (version) => `## ${version}\n\n- A page is new.\n\n### Reads differently\n\n- Told of ${version}.\n`,
  )
  const log = `# Changelog\n\n${versions.join('\n')}`
  expect(readsDifferently(log, '0.2.0')).toEqual(['- Told of 0.10.0.', '- Told of 0.2.1.'])
  expect(readsDifferently(log, '0.10.0')).toEqual([])
  expect(readsDifferently('', '0.1.0')).toEqual([])
})

/** Wait until a server says where it is. */
function addressOf(server: ChildProcess): Promise<string> {
  return new Promise((found, failed) => {
    let said = ''
    server.once('exit', () => failed(new Error(said)))
    for (const stream of [server.stdout!, server.stderr!])
      stream.on('data', (text: Buffer) => {
        said += text
        const address = /http:\/\/localhost:\d+/.exec(said)?.[0]
        if (address) found(address)
      })
  })
}
