import {availableParallelism} from 'node:os'
import {Worker} from 'node:worker_threads'
import type {Answered} from './worker.ts'
import type {Works} from './works.ts'

/** Workers on the machine's other cores. */
export interface Crew {
  works: Works
  disband: () => Promise<void>
}

interface Hand {
  worker: Worker
  waiting: Map<number, {resolve: (done: never) => void; reject: (error: Error) => void}>
}

/** A worker does not read TypeScript by itself, even where the process around it does. */
const start = `import(${JSON.stringify(import.meta.resolve('tsx/esm/api'))})
  .then(({register}) => register())
  .then(() => import(${JSON.stringify(new URL('./worker.ts', import.meta.url).href)}))`

/** One core is left to what writes the pages; more workers than this gain little. */
const usual = Math.max(1, Math.min(availableParallelism() - 1, 6))

/** Hire workers. All steps of one build go to the same one, which still has what it parsed. */
export function hireCrew(count = usual): Crew {
  const hands = Array.from({length: count}, hire)
  const places = new Map<string, Hand>()
  let asked = 0
  const ask = <T>(slug: string, step: keyof Works, input: unknown): Promise<T> => {
    const hand = places.get(slug) ?? hands[places.size % hands.length]!
    places.set(slug, hand)
    const id = asked++
    return new Promise<T>((resolve, reject) => {
      hand.waiting.set(id, {resolve: resolve as (done: never) => void, reject})
      hand.worker.postMessage({id, step, input})
    })
  }
  return {
    works: {
      read: (input) => ask(input.slug, 'read', input),
      plan: (input) => ask(input.read.build.slug, 'plan', input),
      make: (input) => ask(input.build.slug, 'make', input),
      give: (input) => ask(input.build.slug, 'give', input),
    },
    disband: async () => {
      await Promise.all(hands.map(({worker}) => worker.terminate()))
    },
  }
}

function hire(): Hand {
  const hand: Hand = {
    worker: new Worker(start, {eval: true, execArgv: []}),
    waiting: new Map(),
  }
  hand.worker.on('message', ({id, done}: Answered) => {
    hand.waiting.get(id)?.resolve(done as never)
    hand.waiting.delete(id)
  })
  hand.worker.on('error', (error) => {
    for (const {reject} of hand.waiting.values()) reject(error)
    hand.waiting.clear()
  })
  return hand
}
