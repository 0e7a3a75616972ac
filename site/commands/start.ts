import {realpath} from 'node:fs/promises'
import type {IncomingMessage, ServerResponse} from 'node:http'
import {join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import {tellNewVersion} from '../journal/last-version.ts'
import {clearSooner} from '../kit/clear-sooner.ts'
import {diskTrouble} from '../kit/disk-trouble.ts'
import {programVersion} from '../kit/journal-cache.ts'
import type {Unmade} from '../kit/page.ts'
import type {FileProblems} from '../kit/site-data.ts'
import {progressTo} from '../make/progress.ts'
import {nameOfJournal} from '../publish/last-build.ts'
import {leaveStanding, resumeStanding} from '../publish/standing.ts'
import {clearVersions, newVersion} from '../publish/versions.ts'
import {answer, decoded} from '../serve/answer.ts'
import {Changes, changesPath} from '../serve/changes.ts'
import {listen} from '../serve/listen.ts'
import {answerWaiting, waitOrTell} from '../serve/waiting-page.ts'
import {watchFolder} from '../serve/watch-folder.ts'
import {newBuildWriter} from '../serve/write-new-build.ts'
import {WritingSession} from '../serve/writing-session.ts'
import {newBuildPath} from '../try/new-build-path.ts'
import {printable, report, reportUnmade} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm start    shows the journal at http://localhost:8080/ (or another free port) while you write

Every save is shown at once; problems appear in the page and here. End it with Ctrl+C.`

/** Whoever starts is patient for so long, ms. */
const patienceMs = 500

readArguments(usage, {}, {most: 0})
clearSooner()
const root = process.cwd()
const place = join(root, 'start')
await clearVersions(place)
const folder = await newVersion(place).then(
  (made) => realpath(made),
  (error: unknown) => {
    console.error(`The journal cannot be shown: ${printable(diskTrouble(error, root, 'this journal'))}.`)
    process.exit(1)
  },
)
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => process.exit(0))
const standing = await resumeStanding(root, folder)
const version = await programVersion()
/** Names the journal that what stands is the whole site of, where it is. */
let made = () => standing.made
process.once('exit', () => leaveStanding(root, {...standing, made: made()}, version))

for (const line of await tellNewVersion(root)) console.log(line)
let progress = progressTo(process.stderr)
const session = new WritingSession(root, standing, {
  told: (...how) => progress.told(...how),
  found: tell,
})
const changes = new Changes()
const writeNewBuild = newBuildWriter(root)
let reported = ''

/** Show what the journal is now. A fault of this program is told and leaves the last state standing. */
async function refresh(paths: readonly string[] = [], isAsLeft = false): Promise<void> {
  try {
    progress = progressTo(process.stderr)
    await session.refresh((changed) => changes.announce(changed), paths, isAsLeft)
  } catch (error) {
    say(console.error, `This save could not be shown: ${printable(diskTrouble(error, root, 'this journal'))}`)
  }
  progress.end()
}

function tell({problems, unmade}: {problems: FileProblems[]; unmade: readonly Unmade[]}): void {
  const text = [report(problems), ...reportUnmade(unmade)].join('\n')
  if (text !== reported) say(console.log, text)
  reported = text
}

/** Write a line in the place of the one that says how far the work is. */
function say(write: (text: string) => void, text: string): void {
  progress.end()
  write(text)
}

/** Name the journal as it was looked at last. */
function seen(): string | undefined {
  const looked = watch.seen()
  return looked && nameOfJournal(root, looked.builds, looked.atMs)
}

async function respond(request: IncomingMessage, response: ServerResponse): Promise<void> {
  const url = new URL(request.url ?? '/', 'http://localhost')
  if (url.pathname === changesPath) {
    changes.wait(response, url.searchParams.get('at') ?? '/', url.searchParams.get('state') ?? '')
  } else if (url.pathname === newBuildPath) {
    await writeNewBuild(request, response)
  } else {
    const ready = session.ready(decoded(url.pathname) ?? '/')
    const isReady = await waitOrTell(ready, request, async () =>
      answerWaiting(
        response,
        {line: progress.line(), titles: await session.titles()},
        await session.around(),
      ),
    )
    if (isReady) await answer({folder, prefix: '/', state: changes.state()}, request, response)
  }
}

// Looked at before it is read, so that no change falls between the two.
const watch = await watchFolder(join(root, 'builds'), (paths) => void refresh(paths))
const isAsLeft = standing.made !== undefined && standing.made === seen()
made = () => (session.isWhole ? seen() : undefined)
const first = refresh([], isAsLeft)
const {port} = await listen((request, response) => {
  respond(request, response).catch(() => response.writeHead(400).end())
}, 8080)
// From here on whatever fails, the watching of a folder that is moved away included, ends nothing but itself.
process.on('uncaughtException', (error) => console.error(printable(error.message)))
// What is wrong with the journal stands above its address, unless it takes long.
await Promise.race([first, pause(patienceMs)])
say(console.log, `The journal is at http://localhost:${port}/ and follows every save; Ctrl+C ends it.`)
