import type {ElementContent} from 'hast'
import {keyOf} from './cache.ts'
import {markup, withPrefix} from './markup.ts'

/** What a layout needs to know about the page inside it. */
export interface PageData {
  /** What the page is called, without the journal's name. */
  title: string
  /** One sentence about it. */
  describes?: string | undefined
  /** Browser scripts that this page loads besides the common one, by their names in site/browser. */
  scripts?: readonly string[] | undefined
  /** The entry of the site's navigation that this page belongs to, by its address. */
  within?: string | undefined
  /** The address of what stands for it where its own is passed on. */
  shows?: string | undefined
  /** Kept out of search engines and of the site map. */
  unlisted?: boolean | undefined
}

/**
 * A page of the site. `address` counts from the site's root (`/builds/needle-box/`, `/feed.xml`);
 * `key` stands for all that the page is made of: the same key, the same bytes.
 */
export interface Page {
  address: string
  key: string
  layout: LayoutName
  data: PageData
  content: () => string
}

/** A page or file as it is known without being made. */
export type Known = Pick<Artefact, 'address' | 'key'>
export type KnownPage = Pick<Page, 'address' | 'key' | 'layout'> & {data: Pick<PageData, 'unlisted'>}

/** `frame` is a page with navigation, `sheet` one to be printed, `bare` is written as it is. */
export type LayoutName = 'frame' | 'sheet' | 'bare'

/** Wrap the finished content of a page. */
export type Layout = (data: PageData & {address: string; content: string}) => string

/** A file of the site that is no page: a picture, a recording, a template. */
export interface Artefact {
  address: string
  key: string
  bytes: () => string | Uint8Array | Promise<string | Uint8Array>
  /** The key that its bytes are kept under, where they are. */
  keptAs?: string | undefined
}

/** A page or file of the site that could not be made, and why. */
export interface Unmade {
  address: string
  message: string
}

/** Name the file, from the site's root, that an address is served from: `/builds/x/` is `builds/x/index.html`. */
export function fileOf(address: string): string {
  return address.slice(1) + (address.endsWith('/') ? 'index.html' : '')
}

/** Make a page of elements: written at once, so that its key stands for what is on it. */
export function pageOf(address: string, data: PageData, content: ElementContent[], prefix: string): Page {
  const html = markup(withPrefix({type: 'root', children: content}, prefix))
  return {address, layout: 'frame', data, key: keyOf(JSON.stringify(data), html), content: () => html}
}

/** Make a page of elements that are made once it is to be written; `shows` is all that they are made of, as JSON can hold. */
export function pageShowing(
  address: string,
  data: PageData,
  {shows, content, prefix}: {shows: readonly unknown[]; content: () => ElementContent[]; prefix: string},
): Page {
  const html = () => markup(withPrefix({type: 'root', children: content()}, prefix))
  return {address, layout: 'frame', data, key: keyOf(JSON.stringify([data, shows])), content: html}
}

/** Make a page of a text that stands as it is: a feed, a plan. */
export function textPage(address: string, title: string, text: string): Page {
  return {address, layout: 'bare', data: {title}, key: keyOf(text), content: () => text}
}
