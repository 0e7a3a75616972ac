import type {Element} from 'hast'
import {h} from 'hastscript'
import {planJson} from '../../plugins/words/printed-plan.ts'
import {keyOf} from '../cache.ts'
import {markup, withPrefix, written} from '../markup.ts'
import type {Page} from '../page.ts'
import type {MadeBuild, SiteBuild, SiteData} from '../site-data.ts'
import {buildHead} from './build-head.ts'
import {whileWriting} from './while-writing.ts'

/** Write the page of each build. Its body was made before and is kept; nothing here depends on other builds. */
export function buildPages({builds, around}: SiteData): Page[] {
  return builds.map((one) => ({
    address: `/builds/${one.slug}/`,
    layout: 'frame',
    key: one.key,
    data: {
      title: one.title,
      within: '/',
      describes: one.build.values.summary?.value,
      unlisted: one.isDraft,
    },
    content: () => content(one, around),
  }))
}

function content(one: SiteBuild, {prefix, isWriting}: SiteData['around']): string {
  const page = h('article.build', [
    buildHead(one),
    isWriting ? whileWriting(one) : undefined,
    contents(one.made.headings),
    h('div.prose', [written(one.made.html)]),
    recordings(one),
    downloads(one),
  ])
  return markup(withPrefix(page, prefix))
}

/** List what is on the page, to go there at once; a short page needs none. */
function contents(headings: MadeBuild['headings']): Element | undefined {
  const shown = headings.filter(({depth}) => depth <= 2)
  if (shown.length < 4) return undefined
  return h('details.contents', [
    h('summary', 'On this page'),
    h('nav', {ariaLabel: 'On this page'}, [
      h(
        'ul',
        shown.map(({id, title}) => h('li', [h('a', {href: `#${id}`}, title)])),
      ),
    ]),
  ])
}

/** Let the instrument be heard; nothing plays or loads by itself. */
function recordings({build, slug, files}: SiteBuild): Element | undefined {
  const there = (build.values.recordings ?? []).flatMap(({file, says}) => {
    const address = `/builds/${slug}/${file?.value ?? ''}`
    return file && files.some((one) => one.address === address)
      ? [{address, says: says?.value ?? file.value}]
      : []
  })
  if (there.length === 0) return undefined
  return h('section.recordings', [
    h('h2#Recordings', there.length === 1 ? 'Recording' : 'Recordings'),
    ...there.map(({address, says}) =>
      h('figure', [
        h('figcaption', says),
        h('audio', {
          controls: true,
          preload: 'none',
          src: address.split('/').map(encodeURIComponent).join('/'),
          ariaLabel: says,
        }),
      ]),
    ),
  ])
}

/** What can be taken away from a build's page: address below it, name, and what it is for. */
const downloadList = [
  ['bench/', 'Bench sheet', 'the work step by step, to print and tick'],
  ['care/', 'Strings and care', 'the sheet that goes with the instrument'],
  [
    'start.md',
    'A build file to start from',
    'these dimensions, as measured where measured, and a blank journal',
  ],
  ['template-letter.pdf', 'Paper templates, Letter', 'full size, to print and join'],
  ['template-a4.pdf', 'Paper templates, A4', 'the same on the other paper'],
  ['template.svg', 'The templates on one sheet, SVG', 'full size in millimetres, for a laser or a plotter'],
  ['template.dxf', 'The templates on one sheet, DXF', 'the same for machines that read DXF'],
  ['build.md', 'The dimensions', 'as written in its file'],
  ['plan.json', 'The plan', 'every number computed, for other programs'],
] as const

/** Lead to the files beside a build's page. */
function downloads({slug, plan, files, ungiven}: SiteBuild): Element {
  const isThere = (name: string) =>
    ['care/', 'build.md', 'plan.json'].includes(name) ||
    (name === 'bench/' && plan.work !== undefined) ||
    files.some(({address}) => address === `/builds/${slug}/${name}`)
  return h('section.take-away', [
    h('h2#TakeAway', 'To take away'),
    h(
      'ul',
      downloadList
        .filter(([file]) => isThere(file))
        .map(([file, name, what]) => h('li', [h('a', {href: `/builds/${slug}/${file}`}, name), `: ${what}`])),
    ),
    ungiven.length > 0
      ? h('p', `This program fails to write ${ungiven.join(', ')}, which is its own fault.`)
      : undefined,
  ])
}

/** Write each build's plan beside its page, in the bytes that the `plan` command prints. */
export function planPages({builds}: SiteData): Page[] {
  return builds.map(({slug, title, key, plan, problems}) => ({
    address: `/builds/${slug}/plan.json`,
    layout: 'bare',
    data: {title},
    key: keyOf('plan', key),
    content: () => planJson(plan, problems),
  }))
}

/** Write each build's front matter beside its page, as it was written. */
export function buildFilePages({builds}: SiteData): Page[] {
  return builds.map(({slug, title, text}) => ({
    address: `/builds/${slug}/build.md`,
    layout: 'bare',
    data: {title},
    key: keyOf(text),
    content: () => frontMatterOf(text),
  }))
}

function frontMatterOf(text: string): string {
  const end = /^---[ \t]*$/gm
  end.lastIndex = 4
  const closing = end.exec(text)
  return closing ? `${text.slice(0, closing.index)}---\n` : ''
}
