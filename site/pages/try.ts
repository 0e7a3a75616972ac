import type {Element} from 'hast'
import {h} from 'hastscript'
import {newBuild} from '../../plugins/build-file/writing/new-build.ts'
import {noRack} from '../../plugins/plan/stock/rack.ts'
import {usualKinds} from '../../plugins/tables/usual-kinds.ts'
import {keyOf} from '../kit/cache.ts'
import {type Page, pageOf, textPage} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
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
  const addressOf = (name: string) => `${prefix}${assets[name]!.slice(1)}`
  const root = {
    dataRoot: prefix,
    dataWorker: addressOf('try-worker'),
    dataMaking: addressOf('try-making'),
    dataFiles: assets['try-files']!.split(' ')
      .map((address) => prefix + address.slice(1))
      .join(' '),
    // While somebody writes, what is kept would be older than what is written.
    dataOffline: isWriting ? undefined : addressOf('try-offline'),
  }
  const content = [
    h('header.page-head', [h('h1', 'Try a change'), h('p', describes)]),
    h('noscript', h('p.needs', 'This page computes in your browser, which needs scripts switched on.')),
    h('div#Try.try', root, [h('template', sheet(options, isWriting)), h('script', {src: assets.unfold})]),
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

function sheet(options: Element[], isWriting: boolean): Element[] {
  return [
    h('p.from', [
      h('label', {htmlFor: 'TryFrom'}, 'Start from '),
      h('select#TryFrom', {dataPart: 'from'}, options),
    ]),
    h('p.told', {dataPart: 'link', role: 'status'}),
    h('p.told', {dataPart: 'told', role: 'status'}, ''),
    h('p.told', {dataPart: 'parts', role: 'status'}),
    h('div.sheet', {dataPart: 'sheet', hidden: true}, [
      h('div.short', [h('button', {type: 'button', dataPart: 'short', hidden: true})]),
      h('div.drawn', {dataPart: 'drawing'}, [
        h('div.picture'),
        h('div.grips'),
        h('p.figure', {hidden: true}),
      ]),
      h('section.against', {dataPart: 'answer', tabIndex: -1}, [
        h('h2', 'What it changes'),
        h('p', {dataPart: 'changed'}, 'Nothing yet. Drag a ring on the drawing, or type below.'),
        h('div', {role: 'status'}, [h('ul.says', {dataPart: 'says'})]),
        h('ul.found', {dataPart: 'problems', hidden: true}),
        button('again', 'Back to the start'),
      ]),
      h('section.values', [
        h('h2', 'Dimensions'),
        h('p', 'As in a build file: 25 1/2, 648 mm, .030w. What is left empty is assumed.'),
        h('div.fields', {dataPart: 'fields'}),
        h('p.other', [h('label', ['Another value ', h('select', {dataPart: 'key'})])]),
      ]),
      hearing(),
      h('section.figures', [
        h('h2', 'Lines and strings'),
        h('details', [h('summary', {dataPart: 'counts'}), h('div', {dataPart: 'tables'})]),
      ]),
      h('section.figures', {dataPart: 'making', hidden: true}, [
        h('h2', 'Cut list'),
        h('details', [h('summary', 'Parts and pieces'), h('div', {dataPart: 'cuts'})]),
      ]),
      taking(isWriting),
      h('section.whole', [
        h('h2', 'The whole build file'),
        h('details', [
          h('summary', 'Every key, to be written by hand'),
          h('label', {htmlFor: 'TryText'}, 'The file as it stands'),
          h('textarea#TryText', {dataPart: 'text', rows: 24, spellCheck: false}),
        ]),
      ]),
    ]),
  ]
}

/** What each string sounds like, as it is meant and as it is stopped. */
const hearing = (): Element =>
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
  ])

/** What was tried, as a file or a link to take along. */
const taking = (isWriting: boolean): Element =>
  h('section.take', [
    h('h2', 'Take it away'),
    h('p.buttons', [
      button('save', 'Save the build file'),
      button('copy', 'Copy it'),
      button('copy-link', 'Copy a link'),
      button('save-plan', 'Save the plan, as JSON'),
    ]),
    h('p', {dataPart: 'taken', role: 'status'}),
    ...(isWriting ? writeIt() : []),
  ])

/** While somebody writes, what was tried can become a build of the journal. */
function writeIt(): Element[] {
  return [
    h('div.write', {dataPart: 'write'}, [
      h('p', [
        h('label', {htmlFor: 'TryName'}, 'As a new build of this journal, named '),
        h('input#TryName', {dataPart: 'name', type: 'text', maxLength: 100, autoComplete: 'off'}),
      ]),
      h('p.buttons', [button('differ', 'Look at the difference')]),
      h('ol.difference', {dataPart: 'difference', hidden: true}),
      h('p.buttons', [h('button', {type: 'button', dataPart: 'written-button', hidden: true}, '')]),
      h('p', {dataPart: 'written', role: 'status'}),
    ]),
  ]
}
