import type {IncomingMessage, ServerResponse} from 'node:http'
import {h} from 'hastscript'
import {markup} from '../kit/markup.ts'
import type {Surround} from '../kit/site-data.ts'
import {frame} from '../layouts/frame.ts'
import {always} from './answer.ts'

/** What whoever asks for a page is told that is not made yet. */
interface Waiting {
  /** How far the work is: `Making 12 of 1000, about 5 min more`. */
  line: string
  /** The builds whose pages can be asked for already. */
  titles: readonly {slug: string; title: string}[]
}

/** Who opens a page is patient for so long, ms. */
const patienceMs = 700

/** A page that only waits looks again after so many seconds; one that is read meanwhile, less often. */
const [lookS, readS] = [1, 5]

/**
 * Wait for a page; where somebody opens it in a browser and it takes longer than a moment, answer that it is being made,
 * which looks again by itself. Whatever else asks, waits. Answers whether the page is there.
 */
export async function waitOrTell(
  ready: Promise<void>,
  request: IncomingMessage,
  tell: () => Promise<void>,
): Promise<boolean> {
  if (request.method !== 'GET' || !/\btext\/html\b/.test(request.headers.accept ?? '')) {
    await ready
    return true
  }
  let timer: NodeJS.Timeout | undefined
  const patience = new Promise<false>((resolve) => {
    timer = setTimeout(() => resolve(false), patienceMs)
  })
  const isReady = await Promise.race([ready.then(() => true as const), patience]).finally(() =>
    clearTimeout(timer),
  )
  if (isReady) return true
  // It fails where the page is asked for again.
  ready.catch(() => {})
  await tell()
  return false
}

/** Answer with a page that says that another is being made, and looks again by itself. */
export function answerWaiting(response: ServerResponse, waiting: Waiting, around: Surround): void {
  const again = String(waiting.titles.length > 0 ? readS : lookS)
  const headers = {
    ...always,
    'Content-Type': 'text/html; charset=utf-8',
    'Retry-After': again,
    Refresh: again,
  }
  response.writeHead(503, headers).end(waitingPage(waiting, around))
}

/** Write that page. */
export function waitingPage({line, titles}: Waiting, around: Surround): string {
  const title = 'This page is being made'
  const content = [
    h('header.page-head', [h('h1', title), h('p', line ? `${line}.` : 'The journal is being looked at.')]),
    h('div.prose', [
      h('p', 'It is shown here by itself as soon as it is there.'),
      titles.length > 0
        ? [
            h('p', 'The page of any build can be opened now, and is made first:'),
            h(
              'ul',
              titles.map(({slug, title: name}) => h('li', h('a', {href: `/builds/${slug}/`}, name))),
            ),
          ]
        : undefined,
    ]),
  ]
  // It loads itself anew, and not when something changes.
  const layout = frame({...around, isWriting: false})
  return layout({
    address: '/waiting/',
    title,
    unlisted: true,
    content: markup({type: 'root', children: content}),
  })
}
