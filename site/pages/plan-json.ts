import {keyOf} from '../html/page-of.ts'
import type {Page} from '../publish/page.ts'
import type {SiteData} from '../site-data.ts'

/** Write each build's plan beside its page, in the bytes that the `plan` command prints. */
export function planPages({builds}: SiteData): Page[] {
  return builds.map(({slug, title, key, plan, problems}) => ({
    address: `/builds/${slug}/plan.json`,
    layout: 'bare',
    data: {title},
    key: keyOf('plan', key),
    content: () => `${JSON.stringify({...plan, problems}, null, 2)}\n`,
  }))
}
