let isKept = false

/** Have the page kept with all that it was made of: a browser that keeps nothing needs the network, and nothing else. */
export function keepOffline(page: HTMLElement): void {
  const {offline, files = ''} = page.dataset
  if (isKept || !offline || !('serviceWorker' in navigator)) return
  isKept = true
  navigator.serviceWorker
    .register(offline)
    .then(() => navigator.serviceWorker.ready)
    .then(({active}) => {
      const loaded = performance.getEntriesByType('resource').map(({name}) => name)
      const own = [...loaded, ...files.split(' '), location.pathname]
      const all = own.map((name) => new URL(name, location.href).href)
      active?.postMessage([...new Set(all)].filter((url) => url.startsWith(location.origin)))
    })
    .catch(() => {})
}
