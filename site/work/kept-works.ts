import {giveKey, makeKey, planKey, readKey} from './keys.ts'
import type {Shelf} from './shelf.ts'
import type {Works} from './works.ts'

/** Take from the shelf what was made before of the same input; have the rest done, and keep it. */
export function keptWorks(works: Works, shelf: Shelf): Works {
  const kept = async <I, R>(key: string, work: (input: I) => Promise<R>, input: I): Promise<R> => {
    const there = await shelf.take<R>(key)
    if (there) return there
    const done = await work(input)
    await shelf.put(key, done)
    return done
  }
  return {
    read: (input) => kept(readKey(input), works.read, input),
    plan: (input) => kept(planKey(input), works.plan, input),
    make: (input) => kept(makeKey(input), works.make, input),
    give: (input) => kept(giveKey(input), works.give, input),
  }
}
