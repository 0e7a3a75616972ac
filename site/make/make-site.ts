import pMap from 'p-map'
import {together} from '../journal/folder.ts'
import type {FileProblems, SiteData} from '../kit/site-data.ts'
import {atATime, type SiteWriter} from '../publish/site-writer.ts'
import {type OwnPages, ownPages} from './own-pages.ts'
import type {PlannedSite} from './plan-site.ts'
import type {Progress} from './progress.ts'

/** What a site is written from. */
export interface MadeSite {
  /** The builds are in outline. */
  site: SiteData
  /** The pages of each build, in the order of the site. */
  own: OwnPages[]
  /** What this program failed at among them. */
  problems: FileProblems[]
}

/** Make the pages of every build; where there is a writer, some are written before the next are made. */
export async function makeSite(
  {shown, all, around, problems}: PlannedSite,
  writer?: Pick<SiteWriter, 'write'>,
  told?: Progress,
): Promise<MadeSite> {
  const own: OwnPages[] = []
  for (let at = 0; at < shown.length; at += atATime) {
    let made = at
    const make = async (one: (typeof shown)[number]) => {
      const pages = await ownPages(one, all)
      told?.('Making', ++made, shown.length)
      return pages
    }
    const some = await pMap(shown.slice(at, at + atATime), make, together)
    await writer?.write(some)
    own.push(...some)
  }
  return {site: {...around, builds: own.map(({one}) => one)}, own, problems: withFaults(problems, own)}
}

/** Tell with the problems of each file what this program failed at among its pages. */
export function withFaults(problems: readonly FileProblems[], own: readonly OwnPages[]): FileProblems[] {
  const faults = new Map(own.map(({one, faults: found}) => [one.file, found]))
  return problems.map((one) => ({
    ...one,
    problems: [...one.problems, ...(faults.get(one.file) ?? [])],
  }))
}
