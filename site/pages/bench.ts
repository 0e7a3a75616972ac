import {h} from 'hastscript'
import {howFar} from '../../plugins/sections/work-order/how-far.ts'
import {comesFirst} from '../../plugins/tables/hazards.ts'
import {markup} from '../html/markup.ts'
import {keyOf} from '../html/page-of.ts'
import {withPrefix} from '../html/with-prefix.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {benchCautions} from './bench/bench-cautions.ts'
import {benchStep} from './bench/bench-step.ts'

/** Write the sheet that lies on the bench, for each build that there is work on. */
export function benchPages({builds, around}: SiteData): Page[] {
  return builds
    .filter(({plan}) => plan.work)
    .map((one) => ({
      address: `/builds/${one.slug}/bench/`,
      layout: 'sheet',
      key: keyOf('bench', one.key),
      data: {
        title: `${one.title}: bench sheet`,
        describes: `The work on ${one.title}, step by step, to print and tick.`,
        within: `/builds/${one.slug}/`,
        ...(one.isDraft ? {unlisted: true as const} : {}),
      },
      content: () => markup(withPrefix(sheet(one), around.prefix)),
    }))
}

function sheet({title, plan}: SiteBuild) {
  const {work = []} = plan
  const {others, beside} = benchCautions(plan)
  const unit = plan.units === 'in' ? 'inches' : 'millimetres'
  return h('article.bench', [
    h('header', [
      h('h1', title),
      h('p', comesFirst),
      h('p', `${howFar(plan)[0]} Places in ${unit} from the nut line, behind it along the head’s face.`),
      ...others,
    ]),
    h(
      'ol.bench-steps',
      work.map((step, at) => benchStep(step, {plan, beside: beside(step), inHand: work[at - 1]?.tool})),
    ),
  ])
}
