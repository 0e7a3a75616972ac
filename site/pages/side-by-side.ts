import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {inchMm, poundForceN} from '../../plugins/tables/units.ts'
import type {Ruler} from '../../plugins/words/lengths.ts'
import {number} from '../../plugins/words/quantities.ts'
import {lengthOnly} from '../kit/markup.ts'
import {type Page, pageOf} from '../kit/page.ts'
import {partOf} from '../kit/shown.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {kindFacts} from './build-facts.ts'
import {type Dimension, dimensions, type Has, inCommon} from './dimensions.ts'

/** One unit for all builds, so that figures compare at a glance. */
const rulers = {in: {units: 'in', rulerMm: inchMm / 32}, mm: {units: 'mm', rulerMm: 0.5}} as const

/** Write the page that lays all builds' dimensions next to each other, those that played well first. */
export function sideBySidePage({around, builds, journal}: SiteData): Page[] {
  const ruler = rulers[journal.units?.value ?? 'in']
  const describes = 'Every build’s dimensions next to each other, those that played well first.'
  const isPlayedWell = new Map(builds.map((one) => [one, kindFacts(one).isPlayedWell]))
  const played = builds.filter((one) => isPlayedWell.get(one))
  const sorted = [...played, ...builds.filter((one) => !isPlayedWell.get(one))]
  const shown = dimensions.filter((dimension) => sorted.some((one) => dimension.of(one)))
  const content = [
    h('header.page-head', [h('h1', 'Side by side'), h('p', describes)]),
    ...(sorted.length === 0
      ? [h('p', 'No build yet.')]
      : [...chooser(sorted, around), compareTable(sorted, shown, {ruler, prefix: around.prefix})]),
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

/** Fewer builds than this that played well may agree by chance; common practice, no source. */
const fewestAlike = 3

/** What instruments of one kind that played well have in common: as many strings, played alike, with frets or without. */
function common(played: readonly SiteBuild[], ruler: Ruler): ElementContent[] {
  const kinds = new Map<string, SiteBuild[]>()
  for (const one of played) {
    const {strings, play, frets} = kindFacts(one)
    if (strings === undefined || !play || !frets) continue
    const kind = `${strings === 1 ? 'one string' : `${strings} strings`}, ${frets}, ${playedWith[play] ?? play}`
    kinds.set(kind, [...(kinds.get(kind) ?? []), one])
  }
  return [...kinds].flatMap(([kind, alike]) => {
    if (alike.length < fewestAlike) return []
    const lines = inCommon(alike).map(({dimension, low, high}) => {
      const from = written(low, ruler)
      const to = written(high, ruler)
      const isOne = JSON.stringify(from) === JSON.stringify(to)
      return h('div', [h('dt', dimension.name), h('dd', isOne ? from : [...from, ' to ', ...to])])
    })
    return [
      h('section.common', [
        h('h2', `What those that played well have in common: ${kind}`),
        h('p', `All ${alike.length} of them lie within these.`),
        h('dl', lines),
      ]),
    ]
  })
}

const playedWith: Readonly<Record<string, string>> = {
  slide: 'played with a slide',
  fingers: 'played with fingers',
  both: 'played with slide and fingers',
}

/** Lay builds' dimensions next to each other, one build a line; data attributes are for marking differences. */
function compareTable(
  builds: readonly SiteBuild[],
  shown: readonly Dimension[],
  {ruler, prefix}: {ruler: Ruler; prefix: string},
): Element {
  const caption = 'One build a line; an empty place is open or unknown.'
  const among = JSON.stringify([shown.map(({name}) => name), ruler])
  return h('div.table.compare', [
    h('div.scrolling', {tabIndex: 0, role: 'group', ariaLabel: caption}, [
      h('table', [
        h('caption', caption),
        h('thead', [
          h('tr', [
            h('th', {scope: 'col'}, 'Build'),
            ...shown.map(({name}) => h('th', {scope: 'col'}, name)),
          ]),
        ]),
        h(
          'tbody',
          builds.map((one) => rowOf(one, {among, prefix, make: () => [row(one, shown, ruler)]})),
        ),
      ]),
    ]),
  ])
}

const rowOf = partOf()

function row(one: SiteBuild, shown: readonly Dimension[], ruler: Ruler): Element {
  return h('tr', {dataBuild: one.slug, dataUnits: ruler.units}, [
    h('th', {scope: 'row'}, [
      h('a', {href: `/builds/${one.slug}/`}, one.title),
      kindFacts(one).isPlayedWell ? h('small', 'played well') : undefined,
    ]),
    ...shown.map((dimension) => cell(dimension.of(one), ruler)),
  ])
}

function cell(metric: Has, ruler: Ruler): Element {
  if (!metric) return h('td')
  const has = inUnits(metric, ruler)
  if ('words' in has) return h('td', {dataWords: has.words}, has.words)
  const value = 'mm' in has ? {dataMm: has.mm.toFixed(3)} : {dataNumber: has.number.toFixed(has.digits)}
  return h('td.number', value, written(has, ruler))
}

/** Give forces in pounds where lengths are in inches. */
const inUnits = (has: NonNullable<Has>, {units}: Ruler): NonNullable<Has> =>
  'unit' in has && has.unit === 'N' && units === 'in'
    ? {number: has.number / poundForceN, unit: 'lbf', digits: 1}
    : has

/** Write what a build has for a dimension, in the units of `ruler`. */
function written(metric: NonNullable<Has>, ruler: Ruler): ElementContent[] {
  const has = inUnits(metric, ruler)
  if ('mm' in has) return lengthOnly(has.mm, ruler)
  return [{type: 'text', value: 'words' in has ? has.words : `${number(has.number, has.digits)} ${has.unit}`}]
}
