import {spawn, spawnSync} from 'node:child_process'
import {mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {dirname, join} from 'node:path'
import {compiled} from './commands.ts'

export interface Ran {
  status: number | null
  stdout: string
  stderr: string
}

/** A journal in a folder of its own, to run commands in as if it were the project's root. */
export interface TempJournal {
  root: string
  /** Write a file of the journal, by its path from the root. */
  write: (path: string, content: string | Uint8Array) => void
  run: (name: string, ...words: string[]) => Ran
  /** Run a command that reads its answers from standard input. */
  answer: (answers: string, name: string, ...words: string[]) => Ran
  start: (name: string, ...words: string[]) => ReturnType<typeof spawn>
  remove: () => void
}

/** Make a journal of files, by their paths from its root. */
export function tempJournal(files: Readonly<Record<string, string | Uint8Array>> = {}): TempJournal {
  const journal = journalAt(realpathSync(mkdtempSync(join(tmpdir(), 'journal-'))))
  for (const [path, content] of Object.entries(files)) journal.write(path, content)
  return journal
}

/** The journal that lies in a folder. */
export function journalAt(root: string): TempJournal {
  const {INIT_CWD: _, ...rest} = process.env
  const env = {...rest, NO_COLOR: '1'}
  const write: TempJournal['write'] = (path, content) => {
    mkdirSync(dirname(join(root, path)), {recursive: true})
    writeFileSync(join(root, path), content)
  }
  const answer: TempJournal['answer'] = (input, name, ...words) => {
    const {status, stdout, stderr} = spawnSync(process.execPath, [...compiled(name), ...words], {
      cwd: root,
      encoding: 'utf8',
      env,
      input,
    })
    return {status, stdout, stderr}
  }
  return {
    root,
    write,
    run: (name, ...words) => answer('', name, ...words),
    answer,
    start: (name, ...words) => spawn(process.execPath, [...compiled(name), ...words], {cwd: root, env}),
    remove: () => rmSync(root, {recursive: true, force: true}),
  }
}

/** The four lines that are a whole build. */
export const fourLines = (title: string, more = ''): string =>
  `---\ntitle: ${title}\nbox: 10 1/8 x 7 x 2\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]\n${more}---\n`
