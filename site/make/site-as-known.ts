import {readAlone} from '../journal/read-alone.ts'
import type {Cache} from '../kit/cache.ts'
import {cachedSteps, loadSteps} from '../steps/cached-steps.ts'
import {outlineSteps} from '../steps/outline.ts'
import type {Listed} from '../steps/results.ts'
import {kinOf, relationOf} from './kin.ts'
import {keptList, keptRack} from './list-of-builds.ts'
import type {OfAll} from './own-pages.ts'
import {type Again, type SiteOptions, surround} from './plan-site.ts'

/** A journal of which it is known what its builds were called when all of it was planned last. */
export interface SiteAsKnown {
  shown: readonly Listed[]
  again: (slug: string) => Promise<Again | undefined>
}

/**
 * Recall the journal at `root` for somebody who writes, so that one build can be shown before all are read. Where others
 * are called otherwise now, or were copied from others, its page is made again once they are read.
 */
export async function siteAsKnown(
  root: string,
  options: SiteOptions,
  cache: Cache,
): Promise<SiteAsKnown | undefined> {
  const shown = await keptList(cache)
  if (!shown) return undefined
  const known = new Map(shown.map((one) => [one.slug, one]))
  const load = loadSteps()
  const steps = outlineSteps(cachedSteps(cache, load), cache)
  const rackOf = async (slug: string) => {
    const listed = known.get(slug)
    return listed && keptRack(listed, cache)
  }
  return {
    shown,
    again: async (slug) => {
      const names = new Map(
        shown.map(({slug: each, basedOn}) => [each, {slug: each, ...(basedOn && {basedOn})}]),
      )
      const read = await readAlone(root, slug, {names, rackOf}, steps)
      if (!read) return undefined
      const {one, original, settings} = read
      const relations = read.slugs.map((each) => {
        const open = [one, original].find((read) => read?.slug === each)
        return open ? relationOf(open) : (known.get(each) ?? {slug: each, title: each})
      })
      const all: OfAll = {
        kin: kinOf(relations, (from) => (from === original?.slug ? original : undefined)),
        around: surround(settings, options),
        journal: settings,
        cache,
        load,
      }
      return {one, all}
    },
  }
}
