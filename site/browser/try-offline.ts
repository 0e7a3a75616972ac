// Beside the page that tries a change: keeps it, and the builds that were opened on it, for where there is no network.
// Written to /try/offline.js, since it may only serve pages below its own folder.

/** The little of a service worker that is used here. */
interface Scope {
  skipWaiting: () => Promise<void>
  clients: {
    claim: () => Promise<void>
    matchAll: (of: {type: 'window'}) => Promise<readonly {url: string}[]>
  }
  addEventListener(name: 'install' | 'activate', listener: (event: Waits) => void): void
  addEventListener(name: 'message', listener: (event: Waits & {data: readonly string[]}) => void): void
  addEventListener(name: 'fetch', listener: (event: Waits & Fetches) => void): void
}
interface Waits {
  waitUntil: (done: Promise<unknown>) => void
}
interface Fetches {
  request: Request
  respondWith: (answer: Promise<Response>) => void
}

const scope = self as unknown as Scope
const kept = () => caches.open('try')
/** Named by what is in it, so that it never changes. */
const isAsset = (url: string) => /\/assets\/|\/try\/try-\w+-\w+\.js$/.test(new URL(url).pathname)

scope.addEventListener('install', (event) => event.waitUntil(scope.skipWaiting()))
scope.addEventListener('activate', (event) => event.waitUntil(scope.clients.claim()))

// The page tells what it was made of; of assets, what it no longer loads goes, but while another tab may be older.
scope.addEventListener('message', (event) => event.waitUntil(keep(event.data)))

async function keep(addresses: readonly string[]): Promise<void> {
  const cache = await kept()
  await cache.addAll([...addresses])
  const open = await scope.clients.matchAll({type: 'window'})
  if (open.filter(({url}) => new URL(url).pathname.endsWith('/try/')).length > 1) return
  const old = (await cache.keys()).filter(({url}) => isAsset(url) && !addresses.includes(url))
  await Promise.all(old.map((request) => cache.delete(request)))
}

scope.addEventListener('fetch', (event) => {
  const {request} = event
  if (request.method !== 'GET' || new URL(request.url).origin !== location.origin) return
  event.respondWith(isAsset(request.url) ? fromHere(request) : fromNetwork(request))
})

async function fromHere(request: Request): Promise<Response> {
  return (await (await kept()).match(request)) ?? fetch(request)
}

async function fromNetwork(request: Request): Promise<Response> {
  const cache = await kept()
  try {
    const answer = await fetch(request)
    if (answer.ok && request.mode !== 'navigate') await cache.put(request, answer.clone())
    return answer
  } catch (error) {
    const found = await cache.match(request, {ignoreSearch: true})
    if (found) return found
    throw error
  }
}

export {}
