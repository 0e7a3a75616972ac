import {existsSync} from 'node:fs'
import {join} from 'node:path'
import {readJournal, readRack} from '../../plugins/build-file/read.ts'
import {type Place, type Problem, wholeFile} from '../../plugins/build-file/schema/problem.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import type {RackEntry} from '../../plugins/build-file/schema/wood.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {namesOfEach} from '../../plugins/plan/kit/context.ts'
import {realPathOf} from './at-once.ts'
import {type FileFault, readPlainFile} from './plain-file.ts'

/** A journal's settings and rack, and what is wrong with either file. */
interface Settings {
  settings: JournalSettings
  rack: RackEntry[]
  problems: {file: string; problems: Problem[]}[]
}

/** The files of a journal that are no builds. */
export const settingsFiles: readonly string[] = ['journal.yaml', 'rack.yaml']

/** Those that lie beside the folder of builds (absolute), where they are not read, and not in it. */
export const settingsBeside = (folder: string): string[] =>
  settingsFiles.filter((name) => existsSync(join(folder, '..', name)) && !existsSync(join(folder, name)))

/**
 * Read `journal.yaml` and `rack.yaml` of a folder (absolute); a file that is not there has nothing to say, and one
 * that cannot be read is named.
 */
export async function readSettings(folder: string): Promise<Settings> {
  const [journalText, rackText] = await Promise.all(settingsFiles.map((name) => readText(folder, name)))
  const journal =
    'text' in journalText! ? readJournal(journalText.text) : {settings: {}, problems: notRead(journalText!)}
  const {settings, problems: ofSite} = withSoundSite(journal.settings)
  const rack =
    'text' in rackText! ? readRack(rackText.text, settings) : {pieces: [], problems: notRead(rackText!)}
  return {
    settings,
    rack: rack.pieces,
    problems: [
      {file: 'journal.yaml', problems: [...journal.problems, ...ofSite]},
      {file: 'rack.yaml', problems: [...rack.problems, ...namedTwice(rack.pieces)]},
    ].filter(({problems}) => problems.length > 0),
  }
}

/** The most bytes of a text that are read: a million characters, none of which is longer than four bytes. */
const mostBytes = 4e6

/** Read a plain file of a folder as UTF-8; bytes that are no UTF-8 show as U+FFFD. */
export async function readText(folder: string, name: string): Promise<{text: string} | {trouble: FileFault}> {
  const read = await readPlainFile(join(folder, name), mostBytes, realPathOf(folder) ?? folder)
  return 'bytes' in read ? {text: read.bytes.toString('utf8')} : read
}

const faults: Readonly<Record<Exclude<FileFault, 'missing'>, string>> = {
  unreadable: 'cannot be read; look at its rights and where its link leads',
  'no file': 'is no plain file; a folder, a pipe or a device is not read',
  'leads out': 'is a link that leads out of its folder; copy the file here',
  'too large': 'is larger than 4 MB; dimensions and notes are small',
}

/** Tell why a text was not read; nothing is wrong with one that is not there. */
export const notRead = ({trouble}: {trouble: FileFault}): Problem<RuleName>[] =>
  trouble === 'missing'
    ? []
    : [{rule: 'file-unreadable', severity: 'error', ...wholeFile, message: `this file ${faults[trouble]}`}]

/** Tell of each piece on the rack that has the name of an earlier one, or of one of several alike. */
function namedTwice(pieces: readonly RackEntry[]): Problem<RuleName>[] {
  const places = new Map<string, Place>()
  const ids = new Set(pieces.map(({id}) => id?.value))
  return pieces.flatMap(({id, item, count}): Problem<RuleName>[] => {
    if (!id) return []
    const names = [id.value, ...namesOfEach(id.value, item ? 1 : (count?.value ?? 1))]
    const there = names.find((name) => places.has(name))
    const cause = there === undefined ? undefined : places.get(there)
    if (!cause) {
      for (const name of names) places.set(name, id.place)
      return []
    }
    const [, stem = `${id.value}-`, number = '1'] = /^(.*?)(\d+)$/.exec(id.value) ?? []
    let free = Number(number) + 1
    while (ids.has(`${stem}${free}`)) free++
    const message = `${there} is the name of another piece on the rack; give this one its own, such as ${stem}${free}`
    return [
      {rule: 'rack-name-twice', severity: 'fault', ...id.place, message, expected: [`${stem}${free}`], cause},
    ]
  })
}

/** Leave out an address of the site that a browser would not go to: it would stand in every link of the feed. */
function withSoundSite(given: JournalSettings): {settings: JournalSettings; problems: Problem<RuleName>[]} {
  const {site, ...settings} = given
  if (!site || isSiteAddress(site.value)) return {settings: given, problems: []}
  const message = `${site.value} is no address of a site, and is not used; write it as https://journal.example`
  return {settings, problems: [{rule: 'site-address', severity: 'warning', ...site.place, message}]}
}

const isSiteAddress = (text: string): boolean =>
  URL.canParse(text) && /^https?:$/.test(new URL(text).protocol) && /^https?:\/\/[^\s<>"]+$/i.test(text)
