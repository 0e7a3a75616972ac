import {waitSource} from '../tables/waits.ts'
import {howFar} from '../words/steps.ts'
import {fold, link, note, paragraph, source} from './kit.ts'
import type {Section} from './section.ts'

/** How far the work is and what comes next. The steps themselves live on the bench sheet. */
export const workOrder: Section = {
  name: 'work-order',
  title: 'Work order',
  needs: ({plan}) => (plan.work ? [] : ['box', 'neck']),
  content: ({plan}) => {
    const hasWaits = (plan.work ?? []).some(({waitH}) => waitH !== undefined)
    const [far = '', ...times] = howFar(plan)
    return [
      paragraph(
        far,
        ' Every step with its places, checks and cautions is on the ',
        link(`/builds/${plan.slug}/bench/`, 'bench sheet'),
        '.',
      ),
      ...fold('Waiting, hours, how steps are ticked', [
        ...(times.length > 0 ? [paragraph(times.join(' '))] : []),
        note(
          'A day’s heading or a ticked task that names a step ticks it, as :step[Saw the scarf] does in any sentence, and with it all that must have come before.',
        ),
        ...(hasWaits ? [source(`waiting times: ${waitSource}.`)] : []),
      ]),
    ]
  },
}
