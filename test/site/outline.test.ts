import {readFileSync} from 'node:fs'
import {basename, join} from 'node:path'
import {expect, test} from 'vitest'
import {readJournalFolder} from '../../site/journal/read-journal.ts'
import {breathe} from '../../site/kit/breathe.ts'
import {openCache} from '../../site/kit/cache.ts'
import {asPublished} from '../../site/make/as-published.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
import {pagesOfTheJournal} from '../../site/pages/all.ts'
import {program} from '../../site/program.js'
import {cachedSteps} from '../../site/steps/cached-steps.ts'
import {outlineSteps, wholePlan} from '../../site/steps/outline.ts'
import {demoJournal, demoPrefix} from '../support/demo-site.ts'

import '../support/slow.ts'

// Pages of the whole journal are made from outlines. One that asks for more than an outline has would leave it out.
test('pages of the whole journal, made from outlines, are those of the whole builds', async () => {
  const {root} = demoJournal()
  const cache = openCache(join(root, '.cache/site'), basename(program))
  const {addresses: assets} = JSON.parse(readFileSync(join(program, 'assets/list.json'), 'utf8'))
  const options = {prefix: demoPrefix, isWriting: false, assets}
  const {site, own} = await makeSite(await planSite(root, options, cache))
  const steps = cachedSteps(cache)
  const planned = await readJournalFolder(root, outlineSteps(steps, cache))
  const whole = await Promise.all(
    planned.builds.map(async (one) => asPublished({...one, ...(await wholePlan(one.input, steps))})),
  )
  const bySlug = new Map(whole.map(({slug, build, plan}) => [slug, {build, plan}]))
  const builds = site.builds.map((one) => ({...one, ...bySlug.get(one.slug)}))
  const known = own.flatMap(({pages}) => pages)
  const contents = async (data: typeof site) => {
    const pages = await pagesOfTheJournal(data, known, {unmade: [], next: breathe})
    return Object.fromEntries(pages.map(({address, content}) => [address, content()]))
  }
  expect(builds.some(({plan}) => plan.layout)).toBe(true)
  expect(await contents(site)).toEqual(await contents({...site, builds}))
})
