import type {Answers, Asks} from './messages.ts'

/** The first worker as the page sees it. */
export interface Asking {
  ask: (asks: Asks) => void
  /** Take another worker in its place, which is asked this first, and then for what the first one did not do. */
  renew: (first: readonly Asks[]) => void
}

/** Start the first worker, whose answers are heard by `hear`, and which cannot be had at all where `lost` is called. */
export function startAsking(address: string, hear: (answer: Answers) => void, lost: () => void): Asking {
  let waiting: readonly Asks[] = []
  let asked: Asks | undefined
  let worker = start()

  function start(): Worker {
    const one = new Worker(address, {type: 'module'})
    one.addEventListener('message', ({data}: MessageEvent<Answers>) => {
      if ('isMore' in data && !data.isMore) asked = undefined
      hear(data)
      next()
    })
    one.addEventListener('error', lost)
    return one
  }

  function next(): void {
    if (asked) return
    ;[asked, ...waiting] = waiting
    if (asked) worker.postMessage(asked)
  }

  return {
    // One thing at a time: of what waits, the last of its kind alone.
    ask(asks) {
      const key = (one: Asks) => ('path' in one ? one.path : 'name' in one ? one.name : one.ask)
      waiting = [...waiting.filter((one) => key(one) !== key(asks)), asks]
      next()
    },
    renew(first) {
      worker.terminate()
      waiting = [...first, ...(asked ? [asked] : []), ...waiting]
      asked = undefined
      worker = start()
      next()
    },
  }
}
