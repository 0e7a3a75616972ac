import {readFile} from 'node:fs/promises'
import {join} from 'node:path'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {readJournal, readRack} from '../../plugins/build-file/read.ts'
import type {StockPiece} from '../../plugins/build-file/schema/wood.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'

/** A journal's settings and rack, and what is wrong with either file. */
interface Settings {
  settings: JournalSettings
  rack: StockPiece[]
  problems: {file: string; problems: Problem[]}[]
}

/** The files of a journal that are no builds. */
export const settingsFiles: readonly string[] = ['journal.yaml', 'rack.yaml']

/** Read `journal.yaml` and `rack.yaml` of a folder; a file that is not there has nothing to say. */
export async function readSettings(folder: string): Promise<Settings> {
  const [journalText, rackText] = await Promise.all(settingsFiles.map((name) => readText(join(folder, name))))
  const journal = journalText === undefined ? {settings: {}, problems: []} : readJournal(journalText)
  const rack = rackText === undefined ? {pieces: [], problems: []} : readRack(rackText, journal.settings)
  return {
    settings: journal.settings,
    rack: rack.pieces,
    problems: [
      {file: 'journal.yaml', problems: journal.problems},
      {file: 'rack.yaml', problems: rack.problems},
    ].filter(({problems}) => problems.length > 0),
  }
}

/** Read a file as UTF-8, or nothing where it is not there; bytes that are no UTF-8 show as U+FFFD. */
export async function readText(path: string): Promise<string | undefined> {
  try {
    return await readFile(path, 'utf8')
  } catch (error) {
    if (['ENOENT', 'ENOTDIR', 'EISDIR'].includes((error as NodeJS.ErrnoException).code ?? ''))
      return undefined
    throw error
  }
}
