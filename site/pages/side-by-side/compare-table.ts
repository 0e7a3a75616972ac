import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {number} from '../../../plugins/sections/kit/number.ts'
import type {Ruler} from '../../../plugins/sections/kit.ts'
import {kindFacts} from '../../html/kind-facts.ts'
import {lengthOnly} from '../../html/measures.ts'
import type {SiteBuild} from '../../site-data.ts'
import type {Dimension, Has} from './dimensions.ts'

/** Lay builds' dimensions next to each other, one build a line; data attributes are for marking differences. */
export function compareTable(
  builds: readonly SiteBuild[],
  shown: readonly Dimension[],
  ruler: Ruler,
): Element {
  const caption = 'One build a line; an empty place is open or unknown.'
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
          builds.map((one) => row(one, shown, ruler)),
        ),
      ]),
    ]),
  ])
}

function row(one: SiteBuild, shown: readonly Dimension[], ruler: Ruler): Element {
  return h('tr', {dataBuild: one.slug, dataUnits: ruler.units}, [
    h('th', {scope: 'row'}, [
      h('a', {href: `/builds/${one.slug}/`}, one.title),
      kindFacts(one).isPlayedWell ? h('small', 'played well') : undefined,
    ]),
    ...shown.map((dimension) => cell(dimension.of(one), ruler)),
  ])
}

function cell(has: Has, ruler: Ruler): Element {
  if (!has) return h('td')
  if ('words' in has) return h('td', {dataWords: has.words}, has.words)
  const value = 'mm' in has ? {dataMm: has.mm.toFixed(3)} : {dataNumber: has.number.toFixed(has.digits)}
  return h('td.number', value, written(has, ruler))
}

/** Write what a build has for a dimension, in the units of `ruler`. */
export function written(has: NonNullable<Has>, ruler: Ruler): ElementContent[] {
  if ('mm' in has) return lengthOnly(has.mm, ruler)
  return [{type: 'text', value: 'words' in has ? has.words : `${number(has.number, has.digits)} ${has.unit}`}]
}
