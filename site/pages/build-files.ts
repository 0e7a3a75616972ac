import {planJson} from '../../plugins/words/printed-plan.ts'
import {keyOf} from '../cache.ts'
import type {Page} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'

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
