import {rmSync} from 'node:fs'
import {realpath} from 'node:fs/promises'
import {join} from 'node:path'
import {clearVersions} from '../publish/clear-versions.ts'
import {newVersion} from '../publish/site-folder.ts'
import {answer} from '../serve/answer.ts'
import {Changes, changesPath} from '../serve/changes.ts'
import {listen} from '../serve/listen.ts'
import {watchFolder} from '../serve/watch-folder.ts'
import {WritingSession} from '../serve/writing-session.ts'
import {report} from './report.ts'
import {readArguments} from './usage.ts'

const usage = `npm start    shows the journal at http://localhost:8080/ (or another free port) while you write

Every save is shown at once; problems appear in the page and here. End it with Ctrl+C.`

readArguments(usage, {}, {most: 0})
const root = process.cwd()
const place = join(root, 'start')
await clearVersions(place)
const folder = await realpath(await newVersion(place))
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) process.once(signal, () => process.exit(0))
process.once('exit', () => rmSync(folder, {recursive: true, force: true}))

const session = new WritingSession(root, folder)
const changes = new Changes()
let reported = ''
let ready = refresh()

/** Show what the journal is now. A fault of this program is told and leaves the last state standing. */
async function refresh(): Promise<void> {
  try {
    const {changed, problems} = await session.refresh()
    changes.announce(changed)
    const text = report(problems)
    if (text !== reported) console.log(text)
    reported = text
  } catch (error) {
    console.error(`This save could not be shown: ${(error as Error).message}`)
  }
}

const {port} = await listen(async (request, response) => {
  const url = new URL(request.url ?? '/', 'http://localhost')
  if (url.pathname === changesPath) {
    changes.wait(response, url.searchParams.get('at') ?? '/', Number(url.searchParams.get('since')))
  } else {
    await ready
    await answer({folder, prefix: '/'}, request, response)
  }
}, 8080)
watchFolder(join(root, 'builds'), () => {
  ready = refresh()
  return ready
})
await ready
console.log(`The journal is at http://localhost:${port}/ and follows every save; Ctrl+C ends it.`)
