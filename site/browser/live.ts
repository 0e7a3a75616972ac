// While somebody writes: wait for this page's own change, and show it. Hidden pages wait without a connection.
let source: EventSource | undefined

function follow(): void {
  source?.close()
  source = undefined
  if (document.visibilityState === 'hidden') return
  const since = Math.floor(performance.timeOrigin)
  source = new EventSource(`/~changes?at=${encodeURIComponent(location.pathname)}&since=${since}`)
  source.addEventListener('message', () => location.reload())
}

document.addEventListener('visibilitychange', follow)
follow()
