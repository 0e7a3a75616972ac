import {readFileSync, statSync} from 'node:fs'
import {join} from 'node:path'
import {printable, report} from '../../site/commands/report.ts'
import {type Cache, openCache} from '../../site/kit/cache.ts'
import type {Page} from '../../site/kit/page.ts'
import type {FileProblems} from '../../site/kit/site-data.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
import {siteAssets} from '../../site/publish/assets.ts'
import type {Assets} from '../../site/publish/build-assets.ts'
import {writeFiles, writePages} from '../../site/publish/write-site.ts'
import {wholePages} from './whole-pages.ts'
import {xmlFault} from './xml-fault.ts'

/** Never on a page: what lies beside a journal and not in it. */
export const secret = 'WHAT-NOBODY-MAY-READ'

let bundled: Promise<Assets> | undefined
const assets = () => (bundled ??= siteAssets())

/** Make a whole site of the journal at `root`, as `build` does, and list what no journal may bring about. */
export async function whatIsWrong(root: string, cache: Cache, isWritten: boolean): Promise<string[]> {
  const found: string[] = []
  const options = {prefix: '/', isWriting: isWritten, assets: (await assets()).addresses}
  const planned = await planSite(root, options, cache).catch((error: Error) => {
    // Without a folder of builds there is nothing to go on, and the message says which.
    if (!/^(there is no folder|the folder) builds\//.test(error.message))
      found.push(`it stops: ${error.stack}`)
    return undefined
  })
  if (!planned) return found
  const made = await makeSite(planned)
  const {site, problems} = made
  found.push(...problems.flatMap((file) => oddPlaces(file, root)))
  if (planned.isStopped && !problems.some((file) => file.problems.some(({severity}) => severity === 'error')))
    found.push('it stops, and names no file')
  const raw = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/
  const said = [
    ...site.unread.map(({file, message}) => printable(`${file} ${message}`)),
    report(problems),
  ].join('\n')
  if (raw.test(said)) found.push(`the terminal gets ${JSON.stringify(raw.exec(said)![0])}`)
  const {pages, files, unmade} = await wholePages(made)
  for (const page of pages) found.push(...oddPage(page))
  for (const {address, bytes} of files) {
    const content = Buffer.from(await bytes())
    if (content.includes(secret)) found.push(`${address} holds what lies outside`)
    const fault = address.endsWith('.svg') ? xmlFault(content.toString()) : undefined
    if (fault) found.push(`${address} is no XML: ${fault}`)
  }
  const folder = join(root, '_site')
  if (isWritten)
    unmade.push(...(await writePages(pages, site.around, folder)), ...(await writeFiles(files, folder)))
  return [...found, ...unmade.map(({address, message}) => `${address} is not made: ${message}`)]
}

/** A problem that no maker can find, or that is this program's own fault. */
function oddPlaces({file, problems}: FileProblems, root: string): string[] {
  const text = textOf(join(root, file))
  const lines = text?.replace(/^\ufeff/, '').split(/\r\n?|\n/)
  return problems.flatMap(({rule, message, line, column}) => {
    if (rule === 'program-fails') return [`${file}: ${message}`]
    const isOutside = lines
      ? line < 1 || line > lines.length || column < 1 || column > lines[line - 1]!.length + 2
      : line !== 1
    return isOutside ? [`${rule} stands at ${file}:${line}:${column}, outside the file`] : []
  })
}

function textOf(path: string): string | undefined {
  try {
    // A pipe would never end, and a device neither.
    return statSync(path).isFile() ? readFileSync(path, 'utf8') : undefined
  } catch {
    return undefined
  }
}

function oddPage({address, content}: Page): string[] {
  try {
    const text = content()
    if (text.includes(secret)) return [`${address} holds what lies outside`]
    const fault = address.endsWith('.xml') ? xmlFault(text) : undefined
    return fault ? [`${address} is no XML: ${fault}`] : []
  } catch (error) {
    return [`${address} is not made: ${(error as Error).stack}`]
  }
}

/** A cache of this run alone. */
export const cacheAt = (folder: string): Cache => openCache(folder, 'fuzz')
