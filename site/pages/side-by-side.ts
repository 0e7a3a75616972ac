import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Ruler} from '../../plugins/sections/kit.ts'
import {kindFacts} from '../html/kind-facts.ts'
import {pageOf} from '../html/page-of.ts'
import type {Page} from '../publish/page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import {compareTable, written} from './side-by-side/compare-table.ts'
import {dimensions} from './side-by-side/dimensions.ts'
import {inCommon} from './side-by-side/in-common.ts'

/** One unit for all builds, so that figures compare at a glance. */
const rulers = {in: {units: 'in', rulerMm: 25.4 / 32}, mm: {units: 'mm', rulerMm: 0.5}} as const

/** Write the page that lays all builds' dimensions next to each other, those that played well first. */
export function sideBySidePage({around, builds, journal}: SiteData): Page[] {
  const ruler = rulers[journal.units?.value ?? 'in']
  const describes = 'Every build’s dimensions next to each other, those that played well first.'
  const played = builds.filter((one) => kindFacts(one).isPlayedWell)
  const sorted = [...played, ...builds.filter((one) => !played.includes(one))]
  const shown = dimensions.filter((dimension) => sorted.some((one) => dimension.of(one)))
  const content = [
    h('header.page-head', [h('h1', 'Side by side'), h('p', describes)]),
    ...(sorted.length === 0
      ? [h('p', 'No build yet.')]
      : [...chooser(sorted, around), compareTable(sorted, shown, ruler)]),
    ...common(played, ruler),
  ]
  const data = {title: 'Side by side', describes, within: '/side-by-side/', scripts: ['side-by-side']}
  return [pageOf('/side-by-side/', data, content, around.prefix)]
}

/** The choice of the build to compare with; a script takes it out of its template. */
function chooser(builds: readonly SiteBuild[], {assets}: SiteData['around']): ElementContent[] {
  if (builds.length < 2) return []
  const options = builds.map(({slug, title}) => h('option', {value: slug}, title))
  const select = h('select', [h('option', {value: ''}, 'none'), ...options])
  return [
    h('template', [h('div.controls', [h('label', [h('span', 'Mark the differences from'), select])])]),
    h('script', {src: assets.unfold}),
  ]
}

/** Two builds that played well may agree by chance; from three on it is worth saying. */
function common(played: readonly SiteBuild[], ruler: Ruler): ElementContent[] {
  if (played.length < 3) return []
  const lines = inCommon(played).map(({dimension, low, high}) => {
    const from = written(low, ruler)
    const to = written(high, ruler)
    const isOne = JSON.stringify(from) === JSON.stringify(to)
    return h('div', [h('dt', dimension.name), h('dd', isOne ? from : [...from, ' to ', ...to])])
  })
  return [
    h('section.common', [
      h('h2', 'What those that played well have in common'),
      h('p', `All ${played.length} of them lie within these.`),
      h('dl', lines),
    ]),
  ]
}
