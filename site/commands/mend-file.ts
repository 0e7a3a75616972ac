import {readFile, rename, rm, stat, writeFile} from 'node:fs/promises'
import {basename, dirname, join} from 'node:path'
import {createInterface} from 'node:readline/promises'
import {type MendReading, mendBy, mendText} from '../../plugins/build-file/heal/mend.ts'
import type {Problem} from '../../plugins/build-file/problem.ts'
import {changeInWords, mendedInWords, unmendable} from '../../plugins/words/mends.ts'
import {printable} from './report.ts'

/** What a file is read as, and how its changes are shown. */
interface Mending {
  path: string
  /** Its name as it is printed. */
  file: string
  read: (text: string) => MendReading
  /** Asks about what is not certain, and about every change before it is made. */
  asks: boolean
  say: (line: string) => void
}

/**
 * Mend a file on disk: show each change, write all of them in one step, and leave what is not certain with its line to
 * paste. A file that is read-only, or that somebody else has written meanwhile, stays as it is. Gives the problems left.
 */
export async function mendFile({path, file, read, asks, say}: Mending): Promise<Problem[]> {
  const bytes = await readFile(path)
  const source = bytes.toString('utf8')
  if (!Buffer.from(source, 'utf8').equals(bytes)) {
    say(printable(`${file} ${unmendable.unreadable}`))
    return [...read(source).problems]
  }
  const mended = asks ? await askEach(source, read, say) : mendText(source, read)
  if (!asks) {
    say(printable(file))
    for (const change of mended.changes) for (const line of changeInWords(change)) say(printable(line))
  }
  const trouble = mended.text === source ? undefined : await replace(path, bytes, mended.text)
  if (trouble) {
    say(printable(`${file} ${trouble}`))
    return [...read(source).problems]
  }
  say(`  ${mendedInWords(mended.changes.length)}`)
  return [...mended.left]
}

/** Put a text in the place of a file in one step, where the file is still as it was read; else say why not. */
async function replace(path: string, before: Buffer, text: string): Promise<string | undefined> {
  const {mode} = await stat(path)
  if ((mode & 0o222) === 0) return unmendable.readOnly
  const beside = join(dirname(path), `.${basename(path)}.${process.pid}.tmp`)
  try {
    await writeFile(beside, text, {flag: 'wx', mode})
    if (!(await readFile(path)).equals(before)) return unmendable.changed
    await rename(beside, path)
    return undefined
  } catch (error) {
    return unmendable.unwritable((error as NodeJS.ErrnoException).code ?? 'unknown')
  } finally {
    await rm(beside, {force: true})
  }
}

/** Ask about each problem that has something that would do, in the order of the file. */
async function askEach(source: string, read: (text: string) => MendReading, say: (line: string) => void) {
  const lines = createInterface({input: process.stdin})
  const answers = lines[Symbol.asyncIterator]()
  const passed = new Set<string>()
  const changes = []
  let text = source
  let now = read(text)
  for (;;) {
    const isOpen = ({expected, rule, message}: Problem) => expected && !passed.has(`${rule} ${message}`)
    const next = now.problems.find(isOpen)
    if (!next) break
    passed.add(`${next.rule} ${next.message}`)
    say(printable(`${next.line}:${next.column} ${next.severity} ${next.message}`))
    const ways = next.expected!.map((_, way) => mendBy(text, next, way))
    for (const [at, {change}] of ways.entries()) {
      say(`${at + 1})`)
      for (const line of changeInWords(change)) say(printable(line))
    }
    say(`Which one? ${ways.map((_, at) => at + 1).join(', ')}, or nothing to leave it`)
    const {value = '', done} = await answers.next()
    if (done) break
    const chosen = ways[Number(value.trim()) - 1]
    if (!chosen) continue
    changes.push(chosen.change)
    text = chosen.text
    now = read(text)
  }
  lines.close()
  return {text, changes, left: now.problems}
}
