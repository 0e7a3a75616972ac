import {execFileSync} from 'node:child_process'
import {once} from 'node:events'
import {cpSync, existsSync, rmSync, writeFileSync} from 'node:fs'
import {connect} from 'node:net'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {secret} from './support/journal-holds.ts'
import {drawFrom, mutateJournal} from './support/mutate-journal.ts'
import {fourLines, tempJournal} from './support/temp-journal.ts'

// Shows a journal and harms its files meanwhile, while others ask for odd things in odd ways, many at once, and hang up
// at any moment: the server goes on, gives away nothing that is not the site's, and shows the journal once it is whole
// again. Run in a process of its own: the seed, and the seconds.

// Rights mean nothing to root.
if (process.getuid?.() === 0) {
  process.setegid!(65_534)
  process.seteuid!(65_534)
}
const [seed, seconds] = process.argv.slice(2).map(Number) as [number, number]
const draw = drawFrom(seed)
const until = Date.now() + seconds * 1000
const journal = tempJournal({'secret.txt': secret})
const builds = join(journal.root, 'builds')
const whole = join(journal.root, 'whole')
cpSync('builds', whole, {recursive: true})
writeFileSync(join(whole, 'oar-box.md'), fourLines('Oar box'))
cpSync(whole, builds, {recursive: true})

const child = journal.start('start')
let said = ''
for (const stream of [child.stdout!, child.stderr!])
  stream.on('data', (part: Buffer) => {
    said = (said + String(part)).slice(-5000)
  })
child.on('exit', (code) => fails(`the server ends with ${code}: ${said}`))
const port = await seen('the journal shown', () => /http:\/\/localhost:(\d+)\//.exec(said)?.[1])

const paths = [
  '/',
  '/builds/oar-box/',
  '/builds/oar-box/plan.json',
  '/rack/',
  '/search.json',
  '/builds/',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/builds/..\\..\\secret.txt',
  '/%00',
  '/builds/%ff',
  '/%',
  '//secret.txt',
  '/../secret.txt',
  `/${'a'.repeat(9000)}`,
  `/${'a/'.repeat(2000)}`,
  `/${'%41'.repeat(3000)}`,
  'http://elsewhere.example/builds/oar-box/',
  '*',
  '/~changes?at=/&state=x',
  '/~changes?at=%00&state=9-9',
  '/~new-build',
  '/.unfinished',
  '/?'.padEnd(12_000, 'q'),
]
const methods = [
  'GET',
  'GET',
  'GET',
  'HEAD',
  'POST',
  'PUT',
  'DELETE',
  'OPTIONS',
  'TRACE',
  'CONNECT',
  'get',
  'FOO',
]
const hosts = [
  'localhost',
  '127.0.0.1',
  '[::1]',
  'elsewhere.example',
  'localhost.elsewhere.example',
  '',
  'localhost:x',
]
const more = [
  '',
  '',
  'Range: bytes=0-9\r\n',
  'Range: bytes=-1\r\n',
  'Range: bytes=99999999999999999999-\r\n',
  `Range: bytes=${'0-1,'.repeat(500)}\r\n`,
  'Content-Length: 99999\r\n',
  'Content-Length: -1\r\n',
  'Transfer-Encoding: chunked\r\n',
  'Expect: 100-continue\r\n',
  'Upgrade: websocket\r\nConnection: Upgrade\r\n',
  `X: ${'y'.repeat(20_000)}\r\n`,
  'Origin: https://elsewhere.example\r\n',
]

let [requests, rounds] = [0, 0]
for (; Date.now() < until; rounds++) {
  mutateJournal(builds, draw)
  const asked = Array.from({length: 1 + draw.below(60)}, oddRequest)
  await Promise.all(asked)
  if (rounds % 4 !== 3) continue
  const title = `Oar box ${rounds}`
  makeWhole(title)
  await seen(`${title} shown`, async () => {
    const answer = await fetch(`http://127.0.0.1:${port}/builds/oar-box/`)
    return answer.status === 200 && (await answer.text()).includes(title)
  })
}
child.removeAllListeners('exit')
child.kill('SIGTERM')
await once(child, 'exit')
console.log(`${requests} odd requests, ${rounds} harmed journals shown`)
giveRights(journal.root)
journal.remove()

/** Put the journal back, in the place of whatever became of it. */
function makeWhole(title: string): void {
  if (existsSync(builds)) giveRights(builds)
  rmSync(builds, {recursive: true, force: true})
  cpSync(whole, builds, {recursive: true})
  journal.write('builds/oar-box.md', fourLines(title))
}

/** What was harmed may have been taken away, or moved, without the right to be written. */
function giveRights(folder: string): void {
  execFileSync('chmod', ['-R', 'u+rwX', folder])
}

/** Ask for something, and hang up when the answer is there, or before. */
async function oddRequest(): Promise<void> {
  const head = `${draw.of(methods)} ${draw.of(paths)} HTTP/1.1\r\nHost: ${draw.of(hosts)}\r\n${draw.of(more)}`
  const isHasty = draw.below(4) === 0
  const socket = connect(Number(port), '127.0.0.1')
  let answer = ''
  socket.on('data', (part) => {
    answer += part.toString('latin1')
  })
  socket.on('error', () => {})
  const closed = once(socket, 'close').catch(() => {})
  socket.write(`${head}Connection: close\r\n\r\n`)
  await Promise.race([closed, pause(isHasty ? draw.below(20) : 500)])
  socket.destroy()
  requests++
  if (answer.includes(secret)) fails(`${head} is answered by what lies outside`)
  const status = Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1] ?? 0)
  if (status >= 500) fails(`${head} is answered by ${status}`)
  if (/elsewhere/.test(/Host: (.*)/.exec(head)![1]!) && status === 200) fails(`${head} is answered`)
}

/** Wait until something is seen, as long as nobody would. */
async function seen<T>(
  what: string,
  look: () => T | undefined | false | Promise<T | undefined | false>,
): Promise<T> {
  for (let tries = 0; tries < 3000; tries++) {
    const found = await Promise.resolve()
      .then(look)
      .catch(() => undefined)
    if (found) return found
    await pause(100)
  }
  return fails(`${what} is never seen`)
}

function fails(why: string): never {
  console.log(`seed ${seed}: ${why} after ${rounds} rounds; the journal is ${journal.root}; said:\n${said}`)
  child.kill('SIGKILL')
  process.exit(1)
}
