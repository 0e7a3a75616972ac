import type {Cache} from '../cache.ts'
import {downloadsKey, makeKey, planKey, readKey, type Steps} from './steps.ts'

/** Take from the cache what was made before of the same input; have the rest done by `steps`, and keep it. */
export function cachedSteps(cache: Cache, steps: Steps = loadedSteps()): Steps {
  return {
    read: (input) => cache.value(readKey(input), () => steps.read(input)),
    plan: (input) => cache.value(planKey(input), () => steps.plan(input)),
    make: (input) => cache.value(makeKey(input), () => steps.make(input)),
    give: (input) => cache.value(downloadsKey(input), () => steps.give(input)),
  }
}

/** Load the steps once one is to be done: a journal that is all in the cache needs none of them. */
function loadedSteps(): Steps {
  let loaded: Promise<Steps> | undefined
  const steps = () => {
    loaded ??= import('./run-steps.ts').then(({uncachedSteps}) => uncachedSteps())
    return loaded
  }
  return {
    read: async (input) => (await steps()).read(input),
    plan: async (input) => (await steps()).plan(input),
    make: async (input) => (await steps()).make(input),
    give: async (input) => (await steps()).give(input),
  }
}
