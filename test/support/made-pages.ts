import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {openCache} from '../../site/kit/cache.ts'
import {fileOf} from '../../site/kit/page.ts'
import {frame} from '../../site/layouts/frame.ts'
import {sheet} from '../../site/layouts/sheet.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
import {program} from '../../site/program.js'
import {assetList, type KeptAssets} from '../../site/publish/assets.ts'
import type {TempJournal} from './temp-journal.ts'
import {wholePages} from './whole-pages.ts'

/**
 * Make the pages of a journal's site that are asked for, in their frames, by the names of the files they would be,
 * sorted. Nothing is written: no process is started, and not Eleventy.
 */
export async function madePages(
  {root}: TempJournal,
  {prefix = '/', isAsked = (_: string): boolean => true} = {},
): Promise<Record<string, string>> {
  const cache = openCache(`${root}/.cache`, 'a')
  const {addresses: assets} = JSON.parse(readFileSync(join(program, assetList), 'utf8')) as KeptAssets
  const made = await makeSite(await planSite(root, {prefix, isWriting: false, assets}, cache))
  const {pages, unmade} = await wholePages(made)
  if (unmade.length > 0) throw new Error(JSON.stringify(unmade))
  const {around} = made.site
  const layouts = {
    frame: frame(around),
    sheet: sheet(around),
    bare: ({content}: {content: string}) => content,
  }
  const written = pages
    .filter(({address}) => isAsked(fileOf(address)))
    .map(({address, layout, data, content}) => [
      fileOf(address),
      layouts[layout]({...data, address, content: content()}),
    ])
  return Object.fromEntries(written.sort())
}
