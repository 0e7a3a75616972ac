import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {Step} from '../../plugins/plan/work/step.ts'
import {cautionSigns, comesFirst} from '../../plugins/tables/hazards.ts'
import {cautionInWords} from '../../plugins/words/cautions.ts'
import {howFar} from '../../plugins/words/steps.ts'
import {keyOf} from '../kit/cache.ts'
import {markup, withPrefix} from '../kit/markup.ts'
import type {Page} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {benchDays} from './bench-days.ts'
import {benchOpening} from './bench-opening.ts'
import {sheetPictures} from './bench-pictures.ts'
import {type Beside, benchStep} from './bench-step.ts'

/** Write the sheet that lies on the bench, for each build that there is work on. */
export function benchPages(data: SiteData): Page[] {
  const {builds, around} = data
  const daysOf = benchDays(data)
  return builds
    .filter(({plan}) => plan.work)
    .map((one) => {
      const days = daysOf(one)
      return {
        address: `/builds/${one.slug}/bench/`,
        layout: 'sheet',
        // Nothing of the prose is on it, and its pictures are long in the drawing.
        key: keyOf('bench', JSON.stringify([one.plan, one.build.values]), days ? markup(days) : ''),
        data: {
          title: `${one.title}: bench sheet`,
          describes: `The work on ${one.title}, step by step, to print and tick.`,
          within: `/builds/${one.slug}/`,
          scripts: ['bench'],
          unlisted: one.isDraft,
        },
        content: () => markup(withPrefix(sheet(one, days, around.assets.unfold), around.prefix)),
      }
    })
}

function sheet(one: SiteBuild, days: Element | undefined, unfold: string | undefined) {
  const {title, plan} = one
  const {work = []} = plan
  const {others, beside} = benchCautions(plan)
  const pictures = sheetPictures(one)
  const unit = plan.units === 'in' ? 'inches' : 'millimetres'
  const steps = work.map((step, at) =>
    benchStep(step, {
      plan,
      beside: beside(step),
      inHand: work[at - 1]?.tool,
      picture: pictures.beside(step.id),
    }),
  )
  return h('article.bench', {className: pictures.fitOnPaper(steps) ? [] : ['is-full']}, [
    pictures.store,
    h('header', [
      h('h1', title),
      h('p', comesFirst),
      h(
        'p',
        `${howFar(plan)[0]} Places in ${unit} from the nut line, behind it along the head’s face; on the box from its head end.`,
      ),
      ...others,
      ...oneStepControls(unfold),
    ]),
    // Who has done the work needs no chart of it.
    work.every(({isDone}) => isDone) ? undefined : benchOpening(one),
    days,
    h('ol.bench-steps', steps),
  ])
}

/** What shows one step a screen, and tells what is ticked here; without scripts it is not there. */
const oneStepControls = (unfold: string | undefined): ElementContent[] => [
  h('template', [
    h('p', [h('button.step-open', {type: 'button'}, 'One step a screen')]),
    h('div.step-bar', {hidden: true, role: 'group', ariaLabel: 'Steps'}, [
      h('button.step-back', {type: 'button'}, 'Back'),
      h('output', {ariaLive: 'polite'}),
      h('button.step-close', {type: 'button'}, 'All steps'),
      h('button.step-next', {type: 'button'}, 'Next'),
    ]),
    h('details.ticked-here', {hidden: true}, [
      h('summary', 'Ticked here, to write into the file'),
      h(
        'p',
        'Paste this at the end of the build file. A step’s name ticks it, and those that come before it.',
      ),
      h('textarea', {readOnly: true, ariaLabel: 'Text for the build file', spellCheck: 'false'}),
      h('button', {type: 'button'}, 'Copy'),
    ]),
  ]),
  h('script', {src: unfold}),
]

const signs: Readonly<Record<string, {name: string; does: string} | undefined>> = cautionSigns

/** Put each caution beside the steps that it belongs to; `others` are those that belong to no step of this build. */
function benchCautions(plan: Plan): {
  others: Element[]
  beside: (step: Step) => Beside
} {
  const {work = [], cautions = []} = plan
  const firstAt = new Map<string, string>()
  for (const {id, cautions: ids} of work) for (const one of ids) if (!firstAt.has(one)) firstAt.set(one, id)
  const others = cautions.filter(({id}) => !firstAt.has(id))
  return {
    others: others.map((one) =>
      'does' in one
        ? mind([h('strong', one.does)])
        : mind(told(one.id, signs[one.id]?.does ?? cautionInWords(one, plan).hazard)),
    ),
    beside: ({id: step, cautions: ids}) => {
      const isFirst = (id: string) => firstAt.get(id) === step
      const first = ids
        .filter(isFirst)
        .flatMap((id, at) => [...after(at, '; '), ...told(id, signs[id]?.does)])
      const again = ids.filter((id) => !isFirst(id)).flatMap((id, at) => [...after(at, ', '), ...told(id)])
      return {first: first.length > 0 ? mind(first) : undefined, again}
    },
  }
}

function told(id: string, does?: string): ElementContent[] {
  const name = h('strong', signs[id]?.name ?? id)
  return does === undefined ? [name] : [name, {type: 'text', value: `: ${does}`}]
}

const after = (at: number, sign: string): ElementContent[] => (at > 0 ? [{type: 'text', value: sign}] : [])

function mind(content: ElementContent[]): Element {
  return h('p.mind', [...content, {type: 'text', value: '.'}])
}
