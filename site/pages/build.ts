import type {Element} from 'hast'
import {h} from 'hastscript'
import {plainPath, toldInProse} from '../../plugins/checks/own-files.ts'
import {planJson} from '../../plugins/words/printed-plan.ts'
import {keyOf} from '../kit/cache.ts'
import {markup, withPrefix, written} from '../kit/markup.ts'
import type {Page} from '../kit/page.ts'
import {versionOf} from '../kit/picture.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {kindFacts} from './build-facts.ts'
import {buildHead} from './build-head.ts'
import {doors, jumpBar, takeAway} from './build-ways.ts'
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
      shows: shownFor(one),
    },
    content: () => content(one, around),
  }))
}

/** Its cover as browsers of old take it, or else its figure. */
function shownFor({slug, cover, made}: SiteBuild): string | undefined {
  if (!cover) return made.hanging && `/builds/${slug}/share.png`
  return versionOf(cover, cover.widths[Math.min(1, cover.widths.length - 1)]!, 'jpeg')
}

function content(one: SiteBuild, {prefix, isWriting, ask}: SiteData['around']): string {
  const {state, drawing, html} = one.made
  const page = h('article.build', [
    buildHead(one, ask),
    doors(one),
    isWriting ? whileWriting(one) : undefined,
    state ? h('div.state', [written(state)]) : undefined,
    recordings(one),
    drawing ? h('div.hero', [written(drawing)]) : undefined,
    jumpBar(one.made.headings),
    h('div.prose', [written(html)]),
    takeAway(one),
    tagged(one),
  ])
  return markup(withPrefix(page, prefix))
}

/** Lead from each tag to the other builds that carry it. */
function tagged(one: SiteBuild): Element | undefined {
  const {tags} = kindFacts(one)
  if (tags.length === 0) return undefined
  const links = tags.flatMap((tag, at) => [
    at > 0 ? ', ' : '',
    h('a', {href: `/?${new URLSearchParams({tags: tag})}`}, tag),
  ])
  return h('p.tags', ['Tagged ', ...links, '.'])
}

/** Let the instrument be heard; nothing plays or loads by itself. What the prose tells of is heard there. */
function recordings({build, slug, files}: SiteBuild): Element | undefined {
  const told = toldInProse(build)
  const there = (build.values.recordings ?? []).flatMap(({file, says}) => {
    const address = `/builds/${slug}/${file?.value ?? ''}`
    const anchor = told.find(({path}) => path === plainPath(file?.value ?? ''))?.anchor
    return file && files.some((one) => one.address === address)
      ? [{address, says: says?.value ?? file.value, anchor}]
      : []
  })
  if (there.length === 0) return undefined
  return h('section.recordings', [
    h('h2#Recordings', there.length === 1 ? 'Recording' : 'Recordings'),
    ...there.map(({address, says, anchor}) =>
      anchor
        ? h('p', [h('a', {href: `#${anchor}`}, says), ', with its day'])
        : h('figure', [
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

/** Give a build file's front matter with its fences; empty where it has none. */
export function frontMatterOf(text: string): string {
  const end = /^---[ \t]*$/gm
  end.lastIndex = 4
  const closing = end.exec(text)
  return closing ? `${text.slice(0, closing.index)}---\n` : ''
}
