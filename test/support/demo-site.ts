import {randomBytes} from 'node:crypto'
import {cpSync, existsSync, readdirSync, realpathSync, renameSync, rmSync} from 'node:fs'
import {join, resolve} from 'node:path'
import {keyOf} from '../../site/kit/cache.ts'
import {program} from '../../site/program.js'
import {answer} from '../../site/serve/answer.ts'
import {listen} from '../../site/serve/listen.ts'
import {filesOf} from './site-files.ts'
import {journalAt, type TempJournal} from './temp-journal.ts'

/** The path that the site lies under. */
export const demoPrefix = '/journal/'

/**
 * Make the project's own journal and its site, once for all tests that look at it: by what it is made from, so that
 * two workers never write the same folder. It is only read.
 */
export function demoJournal(): TempJournal & {site: string} {
  const key = keyOf(program, ...Object.entries(filesOf('builds')).flat())
  const home = resolve('.cache/demo')
  const to = join(home, key)
  if (!existsSync(to)) {
    const beside = join(home, randomBytes(8).toString('hex'))
    cpSync('builds', join(beside, 'builds'), {recursive: true})
    const {status, stderr} = journalAt(beside).run('build', `--path-prefix=${demoPrefix}`)
    if (status !== 0) throw new Error(stderr)
    try {
      renameSync(beside, to)
    } catch {
      rmSync(beside, {recursive: true})
    }
    const older = readdirSync(home).filter((name) => name.length === key.length && name !== key)
    for (const name of older) rmSync(join(home, name), {recursive: true})
  }
  return {...journalAt(to), site: join(to, '_site')}
}

export interface Served {
  /** The address of the home page. */
  home: string
  close: () => void
}

/** Serve a site on a free port from `from` on, below the path that it was made for. */
export async function serveSite(site: string, from: number, prefix = demoPrefix): Promise<Served> {
  const folder = realpathSync(site)
  const {port, close} = await listen(
    (request, response) => void answer({folder, prefix}, request, response),
    from,
  )
  return {home: `http://localhost:${port}${prefix}`, close}
}
