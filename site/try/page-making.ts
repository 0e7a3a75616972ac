import type {AnswersMaking, AsksMaking, Made} from './messages.ts'

/** The second worker as the page sees it. */
export interface AskingMaking {
  ask: (what: AsksMaking['ask'], name?: string) => void
}

/**
 * Let the second worker be asked, which is started once something is; `given` is what stands on the page, and `lost` is
 * called where a part of the worker cannot be fetched. What was asked then is asked anew with the next thing.
 */
export function startMaking(
  address: string,
  given: () => Omit<AsksMaking, 'ask' | 'name'> | undefined,
  hear: (answer: Made) => void,
  lost: () => void,
): AskingMaking {
  let worker: Worker | undefined
  let asked: Parameters<AskingMaking['ask']> | undefined
  let waiting: typeof asked

  function start(): Worker {
    const one = new Worker(address, {type: 'module'})
    one.addEventListener('message', ({data}: MessageEvent<AnswersMaking>) => {
      if ('unfetched' in data) end()
      else {
        asked = undefined
        hear(data)
        next()
      }
    })
    one.addEventListener('error', end)
    return one
  }

  function end(): void {
    worker?.terminate()
    worker = undefined
    if (asked) wait(asked)
    asked = undefined
    lost()
  }

  // What somebody waits for is not left out for what comes by itself.
  function wait(what: NonNullable<typeof asked>): void {
    if (what[0] !== 'making' || !waiting) waiting = what
  }

  function next(): void {
    const all = given()
    if (asked || !waiting || !all) return
    const [ask, name = ''] = waiting
    asked = waiting
    waiting = undefined
    worker ??= start()
    worker.postMessage({ask, name, ...all} satisfies AsksMaking)
  }

  return {
    ask(...what) {
      wait(what)
      next()
    },
  }
}
