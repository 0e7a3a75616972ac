// While somebody writes: wait for this page's own change, and show it. Hidden pages wait without a connection.
let source: EventSource | undefined
const [loaded] = performance.getEntriesByType('navigation') as PerformanceNavigationTiming[]
const state = loaded?.serverTiming?.find(({name}) => name === 'state')?.description ?? ''

function follow(): void {
  source?.close()
  source = undefined
  if (document.visibilityState === 'hidden') return
  source = new EventSource(`/~changes?at=${encodeURIComponent(location.pathname)}&state=${state}`)
  source.addEventListener('message', () => location.reload())
}

document.addEventListener('visibilitychange', follow)
follow()
