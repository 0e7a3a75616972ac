import type {Element} from 'hast'
import {h} from 'hastscript'
import {newBuild} from '../../plugins/build-file/new-build.ts'
import {noRack} from '../../plugins/plan/rack.ts'
import {usualKinds} from '../../plugins/tables/usual-kinds.ts'
import {keyOf} from '../cache.ts'
import {type Page, pageOf, textPage} from '../page.ts'
import type {SiteBuild, SiteData} from '../site-data.ts'
import type {Around} from '../try/session.ts'
import {frontMatterOf} from './build.ts'

/** Write the page on which a build is opened for change, and the blank build that it can start from. */
export function tryPages({around, builds, journal}: SiteData): Page[] {
  const {assets, prefix, isWriting} = around
  const units = journal.units?.value ?? 'in'
  const describes = 'Open a build, change a scale, a string or a box, and see what it does.'
  const options = [
    h('option', {value: ''}, 'a new three-string'),
    ...[...builds]
      .sort((a, b) => a.title.localeCompare(b.title))
      .map(({slug, title}) => h('option', {value: slug}, title)),
  ]
  const root = {
    dataRoot: prefix,
    dataWorker: `${prefix}${assets['try-worker']!.slice(1)}`,
    // While somebody writes, what is kept would be older than what is written.
    dataOffline: isWriting ? undefined : `${prefix}${assets['try-offline']!.slice(1)}`,
  }
  const content = [
    h('header.page-head', [h('h1', 'Try a change'), h('p', describes)]),
    h('noscript', h('p.needs', 'This page computes in your browser, which needs scripts switched on.')),
    h('div#Try.try', root, [h('template', sheet(options)), h('script', {src: assets.unfold})]),
  ]
  const blank = newBuild(usualKinds['three-string-slide'], {title: 'New build', units})
  const nothing: Around = {context: {journal, ...noRack}, body: {days: []}}
  return [
    pageOf('/try/', {title: 'Try a change', describes, within: '/try/', scripts: ['try']}, content, prefix),
    textPage('/try/blank.md', 'A new build', frontMatterOf(blank)),
    textPage('/try/blank.json', 'Around a new build', `${JSON.stringify(nothing)}\n`),
  ]
}

/** Write, for each build, what its plan depends on besides its front matter. */
export function aroundPages({builds, journal}: SiteData): Page[] {
  return builds.map((one) => {
    const text = `${JSON.stringify(aroundOf(one, journal))}\n`
    return {
      address: `/builds/${one.slug}/around.json`,
      layout: 'bare',
      data: {title: one.title},
      key: keyOf(text),
      content: () => text,
    }
  })
}

function aroundOf({build, rack}: SiteBuild, journal: SiteData['journal']): Around {
  return {context: {journal, ...rack}, body: {days: build.days, ...(build.ticked && {ticked: build.ticked})}}
}

const button = (part: string, words: string) => h('button', {type: 'button', dataPart: part}, words)

function sheet(options: Element[]): Element[] {
  return [
    h('p.from', [
      h('label', {htmlFor: 'TryFrom'}, 'Start from '),
      h('select#TryFrom', {dataPart: 'from'}, options),
    ]),
    h('p.told', {dataPart: 'link', role: 'status'}),
    h('p.told', {dataPart: 'told', role: 'status'}, ''),
    h('div.sheet', {dataPart: 'sheet', hidden: true}, [
      h('div.drawn', {dataPart: 'drawing'}, [
        h('div.picture'),
        h('div.grips'),
        h('p.figure', {hidden: true}),
      ]),
      h('div.against', [
        h('h2', 'Against the start'),
        h('p', {dataPart: 'changed'}),
        h('p.says', {dataPart: 'says', role: 'status', tabIndex: -1}),
        button('again', 'Back to the start'),
      ]),
      h('section.values', [
        h('h2', 'Dimensions'),
        h('p', 'As in a build file: 25 1/2, 648 mm, .030w. An empty field is assumed.'),
        h('ul.found', {dataPart: 'problems', hidden: true}),
        h('div.fields', {dataPart: 'fields'}),
      ]),
      h('section.figures', [h('h2', 'Lines and strings'), h('div', {dataPart: 'tables'})]),
      h('section.take', {dataPart: 'sound'}, [
        h('h2', 'Hear it'),
        h('p.buttons', [
          h('label', ['String ', h('select', {dataPart: 'string'})]),
          h('label', ['Note ', h('select', {dataPart: 'line'})]),
        ]),
        h('p.buttons', [
          button('hear-meant', 'As meant'),
          button('hear-marked', 'As marked'),
          button('hear-set-back', 'Saddle set back'),
        ]),
        h('p', {dataPart: 'heard', role: 'status'}),
      ]),
      h('section.whole', [
        h('h2', 'The whole build file'),
        h('label', {htmlFor: 'TryText'}, 'Every key can be changed here'),
        h('textarea#TryText', {dataPart: 'text', rows: 24, spellCheck: false}),
      ]),
      h('section.take', [
        h('h2', 'Take it away'),
        h('p.buttons', [
          button('save', 'Save the build file'),
          button('copy', 'Copy it'),
          button('save-plan', 'Save the plan, as JSON'),
          button('copy-link', 'Copy a link with the changes'),
        ]),
        h('p', {dataPart: 'taken', role: 'status'}),
      ]),
    ]),
  ]
}
