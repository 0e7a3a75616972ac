import {existsSync, mkdirSync, readdirSync, realpathSync, rmdirSync, rmSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {setTimeout as pause} from 'node:timers/promises'
import sharp from 'sharp'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {cacheOf} from '../../site/kit/journal-cache.ts'
import {type PlannedSite, planSite} from '../../site/make/plan-site.ts'
import {readAtRest} from '../../site/publish/at-rest.ts'
import {madeFrom} from '../../site/publish/last-build.ts'
import {watchFolder} from '../../site/serve/watch-folder.ts'
import {type Refreshed, WritingSession} from '../../site/serve/writing-session.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, type TempJournal, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

// A version control changes all files of a journal within a moment, while it is shown or built: then it is shown as on
// that branch, and nothing of the other is left.

type Branch = ReadonlyMap<string, string | Buffer>

const count = 40
const picture = (background: string) =>
  sharp({create: {width: 60, height: 40, channels: 3, background}})
    .png({compressionLevel: 0})
    .toBuffer()
/** Of as many bytes. */
const [red, green] = await Promise.all([picture('#a00'), picture('#0a0')])

/** The files of a branch: some alone there, some of another text, name or picture, and some alike. */
function branch(isOther: boolean): Branch {
  const files = new Map<string, string | Buffer>()
  const name = isOther ? 'other' : 'one'
  files.set('builds/journal.yaml', `title: The ${name} loft\n`)
  for (let at = 0; at < count; at++) {
    const file = `builds/box-${at}.md`
    const inFolder = `builds/box-${at}/index.md`
    const text = (words: string) =>
      `---\ntitle: Box ${at} ${words}\nstatus: sold\n---\n\nBeside [another](box-${(at + 7) % count}.md).\n\n`
    const pictured = `${text('alike')}![Front](front.png)\n\n[Heard](song.mp3)\n`
    const kinds: (() => void)[] = [
      () => files.set(isOther ? inFolder : file, text('alike')),
      () => files.set(isOther ? file : inFolder, text('alike')),
      () => isOther || files.set(file, text('alone')),
      () => isOther && files.set(file, text('alone')),
      () => files.set(file, text(name)),
      () => files.set(file, text('alike')),
      () => {
        files.set(inFolder, pictured)
        files.set(`builds/box-${at}/front.png`, isOther ? green : red)
        files.set(`builds/box-${at}/song.mp3`, name)
      },
      () => {
        files.set(inFolder, pictured)
        if (isOther) files.set(`builds/box-${at}/front.png`, red)
      },
    ]
    kinds[at % kinds.length]!()
  }
  const copied = `status: sold\nbased-on: box-${isOther ? 5 : 4}\n`
  files.set('builds/copy.md', fourLines(`A copy ${name}`, copied))
  return files
}

const [one, other] = [branch(false), branch(true)]
const isAlike = (file: string) => Buffer.from(one.get(file) ?? '').equals(Buffer.from(other.get(file) ?? ''))

/** Change one branch for another as a version control does: what differs goes first, and then comes anew. */
function checkOut({root, write}: TempJournal, to: Branch): void {
  const differs = [...new Set([...one.keys(), ...other.keys()])].filter((file) => !isAlike(file))
  for (const file of differs) {
    rmSync(join(root, file), {force: true})
    const folder = dirname(join(root, file))
    if (existsSync(folder) && readdirSync(folder).length === 0) rmdirSync(folder)
  }
  for (const file of differs) if (to.has(file)) write(file, to.get(file)!)
}

const journals: TempJournal[] = []
const journalOf = (files: Branch) => {
  const journal = tempJournal(Object.fromEntries(files))
  journals.push(journal)
  return journal
}
afterAll(() => {
  for (const journal of journals) journal.remove()
})

/** A site that is shown while somebody writes. */
function shown({root}: TempJournal) {
  const folder = join(root, 'shown')
  mkdirSync(folder)
  const found: Refreshed[] = []
  const standing = {folder: realpathSync(folder), files: {}}
  const session = new WritingSession(root, standing, {found: (what) => void found.push(what)})
  return {session, found, files: () => filesOf(folder)}
}

let anew: {branch: Branch; files: Record<string, string>; found: Refreshed | undefined}[]
beforeAll(async () => {
  anew = []
  for (const each of [one, other]) {
    const {session, files} = shown(journalOf(each))
    const found = await session.refresh()
    anew.push({branch: each, files: files(), found})
  }
})

describe('a check-out', () => {
  test('while the journal is shown leaves nothing of the other branch', async () => {
    const journal = journalOf(one)
    const {session, found, files} = shown(journal)
    let last: Promise<unknown> = session.refresh()
    const watch = await watchFolder(join(journal.root, 'builds'), (paths) => {
      last = session.refresh(() => {}, paths).catch((error: unknown) => found.push(error as Refreshed))
    })
    const asked = [
      '/',
      '/search.json',
      '/builds/box-4/',
      '/builds/box-14/',
      '/builds/box-3/',
      '/builds/copy/',
    ]
    const ways = [[other], [one], [other, one], [one, other, one, other]]
    for (const [at, way] of ways.entries()) {
      for (const each of way) {
        checkOut(journal, each)
        await pause(40 * at)
        await Promise.race([pause(100), Promise.all(asked.map((address) => session.ready(address)))])
      }
      const right = anew.find(({branch}) => branch === way.at(-1))!
      const wrong = () => {
        const now = files()
        const all = [...new Set([...Object.keys(now), ...Object.keys(right.files)])]
        return all.filter((name) => now[name] !== right.files[name])
      }
      await expect.poll(wrong, {timeout: 60_000}).toEqual([])
      await last
      expect(wrong()).toEqual([])
      expect(found.at(-1)).toEqual(right.found)
    }
    watch.end()
  })

  test('while the journal is read has it read once more, as it lies there then', async () => {
    const journal = journalOf(one)
    const plan = async (at: TempJournal, told = () => {}) =>
      planSite(at.root, {prefix: '/', isWriting: false, assets: {}}, await cacheOf(at.root), told)
    const shows = ({shown, problems, around}: PlannedSite) => ({
      shown: shown.map(({file, text, looked}) => ({
        file,
        text,
        pictures: looked.pictures,
        files: looked.files.map((each) => each.file),
      })),
      problems,
      unread: around.unread,
    })
    const lies = () => madeFrom(journal.root, '/')
    const to = [other, one]
    const {read, from} = await readAtRest(await lies(), lies, () => {
      let heard = 0
      return plan(journal, () => {
        if (++heard === 30 && to.length > 0) checkOut(journal, to.shift()!)
      })
    })
    expect(to).toEqual([])
    expect(from.key).toBe((await lies()).key)
    expect(shows(read)).toEqual(shows(await plan(journalOf(one))))
  })

  test('that does not end has what lies there read', async () => {
    let times = 0
    const changing = async () => ({key: String(times++)})
    let readings = 0
    const resting = async () => ({key: String(Math.min(readings, 2))})
    expect(await readAtRest(await resting(), resting, async () => ++readings)).toEqual({
      read: 3,
      from: {key: '2'},
    })
    const {from} = await readAtRest(
      await changing(),
      async () => ({key: String(readings)}),
      async () => ++readings,
    )
    expect(Number(from.key)).toBeLessThan(readings)
  })

  test('while the site is made is told by the build, which leaves the last site where a picture is gone', async () => {
    const journal = journalOf(one)
    const [site, versions] = ['_site', '.site'].map((name) => join(journal.root, name)) as [string, string]
    const built = async (change: () => void) => {
      const build = journal.start('build')
      let said = ''
      build.stderr?.on('data', (data: Buffer) => {
        said += data
      })
      const ended = new Promise((resolve) => build.on('close', resolve))
      // All is read, and the pages are made.
      while (!existsSync(versions) || readdirSync(versions).length === 0) await pause(2)
      change()
      return {status: await ended, said}
    }
    const torn = await built(() => checkOut(journal, other))
    expect(torn.status).toBe(1)
    expect(torn.said).toContain(
      'Nothing was written: builds/ was changed meanwhile. The last good site stays',
    )
    expect(existsSync(site)).toBe(false)
    rmSync(join(journal.root, '.cache'), {recursive: true})
    rmSync(versions, {recursive: true, force: true})
    const late = await built(() => journal.write('builds/box-5.md', fourLines('Another')))
    expect(late.status).toBe(0)
    expect(late.said).toContain('builds/ was changed meanwhile: build again to show it as it is now')
    expect(journal.run('build').stderr).not.toContain('meanwhile')
    expect(filesOf(site)['builds/box-5/index.html']).toContain('Another')
  })
})
