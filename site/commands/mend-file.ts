import {readFile, rename, rm, stat, writeFile} from 'node:fs/promises'
import {basename, dirname, join} from 'node:path'
import {createInterface} from 'node:readline/promises'
import {type MendReading, mendText, waysToMend} from '../../plugins/build-file/heal/mend.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {askedInWords, changeInWords, mendedInWords, unmendable} from '../../plugins/words/mends.ts'
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
  /** Where answers come from, a line each; left out, standard input. */
  answers?: NodeJS.ReadableStream
}

/**
 * Mend a file on disk: show each change, write all of them in one step, and leave what is not certain with its line to
 * paste. A file that is read-only, or that somebody else has written meanwhile, stays as it is. Gives the problems left.
 */
export async function mendFile(mending: Mending): Promise<Problem[]> {
  const {path, file, read, asks, say} = mending
  const bytes = await readFile(path)
  const source = bytes.toString('utf8')
  if (!Buffer.from(source, 'utf8').equals(bytes)) {
    say(printable(`${file} ${unmendable.unreadable}`))
    return [...read(source).problems]
  }
  const mended = asks ? await askEach(source, mending) : mendText(source, read)
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

/**
 * Ask about each problem that has something that would do, in the order of the file. Answers are a number, `y` where
 * there is one way, or anything else to leave it; the end of the answers leaves the rest.
 */
async function askEach(source: string, {read, say, answers}: Mending) {
  const lines = createInterface({input: answers ?? process.stdin})
  const each = lines[Symbol.asyncIterator]()
  const passed = new Set<string>()
  const changes = []
  let text = source
  let now = read(text)
  for (;;) {
    const isOpen = ({expected, rule, message}: Problem) => expected && !passed.has(`${rule} ${message}`)
    const next = now.problems.find(isOpen)
    if (!next) break
    passed.add(`${next.rule} ${next.message}`)
    const ways = waysToMend(text, now, next, read)
    if (ways.length === 0) continue
    say(printable(`${next.line}:${next.column} ${next.severity} ${next.message}`))
    for (const [at, {change}] of ways.entries()) {
      if (ways.length > 1) say(`${at + 1})`)
      for (const line of changeInWords(change)) say(printable(line))
    }
    say(askedInWords(ways.length))
    const {value = '', done} = await each.next()
    if (done) break
    const chosen = ways[chosenWay(value, ways.length)]
    if (!chosen) continue
    changes.push(chosen.change)
    text = chosen.text
    now = chosen.then
  }
  lines.close()
  return {text, changes, left: now.problems}
}

const chosenWay = (answer: string, ways: number): number =>
  ways === 1 && /^y(es)?$/i.test(answer.trim()) ? 0 : Number(answer.trim() || 0) - 1
