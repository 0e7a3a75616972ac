import type {Element} from 'hast'
import {h} from 'hastscript'
import {written} from '../kit/markup.ts'
import type {PageData} from '../kit/page.ts'
import type {Surround} from '../kit/site-data.ts'

/** What a page may load and run: nothing but this site's own files. Stands in each page, and in the server's answers. */
export const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "media-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ')

/** Write the head of a page: what it may load, its names, its style sheet and its scripts. */
export function head(around: Surround, data: PageData & {address: string}): Element {
  const {title, prefix, origin, assets, isWriting} = around
  const scripts = ['page', ...(data.scripts ?? []), ...(isWriting ? ['live'] : [])]
  const whole = data.address === '/' ? data.title : `${data.title} · ${title}`
  return h('head', [
    h('meta', {charSet: 'utf-8'}),
    written(`<meta http-equiv="Content-Security-Policy" content="${policy}">`),
    h('meta', {name: 'viewport', content: 'width=device-width, initial-scale=1'}),
    h('title', whole),
    data.describes ? h('meta', {name: 'description', content: data.describes}) : undefined,
    data.unlisted ? h('meta', {name: 'robots', content: 'noindex'}) : undefined,
    // What stands for it where its address is passed on (ogp.me), which takes whole addresses alone.
    origin && data.shows && !data.unlisted
      ? h('meta', {property: 'og:image', content: origin + prefix + data.shows.slice(1)})
      : undefined,
    origin && !data.unlisted
      ? h('link', {rel: 'canonical', href: origin + prefix + data.address.slice(1)})
      : undefined,
    h('link', {
      rel: 'preload',
      as: 'font',
      type: 'font/woff2',
      href: assets.face,
      crossOrigin: 'anonymous',
    }),
    h('link', {rel: 'stylesheet', href: assets.style}),
    h('link', {rel: 'icon', type: 'image/svg+xml', href: assets.icon}),
    h('link', {rel: 'alternate', type: 'application/atom+xml', title, href: '/feed.xml'}),
    ...scripts.map((name) => h('script', {type: 'module', src: assets[name]})),
  ])
}
