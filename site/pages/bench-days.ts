import type {Element} from 'hast'
import {h} from 'hastscript'
import {benchTimes, proposeDays} from '../../plugins/plan/work/bench-days.ts'
import {dayInWords, daysInWords, noDaysYet} from '../../plugins/words/bench-days.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

/** Propose days for what is open of a build's work, of the length that the journal says; undefined where it says none. */
export function benchDays({builds, journal}: SiteData): (build: SiteBuild) => Element | undefined {
  const minutes = journal.day?.minutes
  if (minutes === undefined) return () => undefined
  const times = benchTimes(builds.map(({plan, build}) => ({work: plan.work ?? [], days: build.days})))
  const dayH = minutes / 60
  return ({plan}) => {
    const {work = []} = plan
    if (work.every(({isDone}) => isDone)) return undefined
    if (!times) return h('section.bench-days', [h('h2', 'Days'), h('p', noDaysYet(dayH))])
    const days = proposeDays(work, dayH, times)
    return h('section.bench-days', [
      h('h2', 'Days'),
      ...daysInWords(days, dayH, times).map((says) => h('p', says)),
      h(
        'ol',
        days.map((day) => h('li', dayInWords(day, plan))),
      ),
    ])
  }
}
