import {nearest} from '../build-file/schema/nearest.ts'
import * as words from '../words/findings/journal.ts'
import {rule} from './rule.ts'

export const journalRules = {
  'based-on-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A build that was copied from one that is not in the journal.',
    why: 'Its page cannot show what was changed.',
    mend: 'Name the build by its slug, as in its address.',
    passes: {text: 'based-on: ferry-bell', builds: [{slug: 'ferry-bell'}]},
    fails: {text: 'based-on: fery-bell', builds: [{slug: 'ferry-bell'}]},
    find: ({slug, values, surroundings}) => {
      const named = values['based-on']?.value
      const slugs = surroundings?.builds.map(({slug}) => slug)
      if (named === undefined || !slugs || slugs.includes(named)) return []
      return [
        {
          at: 'based-on',
          named,
          likely: nearest(
            named,
            slugs.filter((one) => one !== slug),
          ),
        },
      ]
    },
    says: words.basedOnMissing,
  }),
  'based-on-circle': rule({
    severity: 'fault',
    about: 'journal',
    what: 'Builds that were copied from each other in a circle.',
    why: 'A line of builds has a first one.',
    mend: 'Leave based-on out in the build that came first.',
    passes: {
      text: 'based-on: ferry-bell',
      builds: [{slug: 'needle-box', basedOn: 'ferry-bell'}, {slug: 'ferry-bell'}],
    },
    fails: {
      text: 'based-on: ferry-bell',
      builds: [
        {slug: 'needle-box', basedOn: 'ferry-bell'},
        {slug: 'ferry-bell', basedOn: 'needle-box'},
      ],
    },
    find: ({slug, surroundings}) => {
      const from = new Map(surroundings?.builds.map((build) => [build.slug, build.basedOn]))
      const line = [slug]
      for (let next = from.get(slug); next !== undefined && line.length <= from.size; next = from.get(next)) {
        line.push(next)
        if (next === slug) return [{at: 'based-on', line}]
      }
      return []
    },
    says: words.basedOnCircle,
  }),
  'finished-before-started': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A build that was finished before it was started.',
    why: 'One of the two dates is a slip, and builds are sorted by them.',
    mend: 'Mend the date that is wrong.',
    passes: 'started: 2026-03-07\nfinished: 2026-04-11',
    fails: 'started: 2026-03-07\nfinished: 2025-04-11',
    find: ({values: {started, finished}}) =>
      started && finished && finished.iso < started.iso
        ? [{at: 'finished', cause: 'started', started: started.iso, finished: finished.iso}]
        : [],
    says: words.finishedBeforeStarted,
  }),
}
