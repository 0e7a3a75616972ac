import {breathe} from '../../site/kit/breathe.ts'
import type {Artefact, Page, Unmade} from '../../site/kit/page.ts'
import type {MadeSite} from '../../site/make/make-site.ts'
import {pagesOfTheJournal} from '../../site/pages/all.ts'

/** Every page and file of a site, as each is written where nothing of it stands yet. */
export async function wholePages({
  site,
  own,
}: Pick<MadeSite, 'site' | 'own'>): Promise<{pages: Page[]; files: Artefact[]; unmade: Unmade[]}> {
  const unmade = own.flatMap((one) => one.unmade)
  const all = await Promise.all(own.map((one) => one.whole()))
  const pages = all.flatMap((one) => one.pages)
  const known = own.flatMap((one) => one.pages)
  const shared = await pagesOfTheJournal(site, known, {unmade, next: breathe})
  return {
    pages: [...pages, ...shared],
    files: all.flatMap((one) => one.files),
    unmade,
  }
}
