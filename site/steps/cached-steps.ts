import {type Cache, keyOf} from '../kit/cache.ts'
import {
  isDownloads,
  isDrawn,
  isEffects,
  isMakeResult,
  isPictureLook,
  isPlanResult,
  isReadResult,
} from './kept-shapes.ts'
import {
  compareKey,
  downloadsKey,
  drawKey,
  lookedAtKey,
  lookKey,
  makeKey,
  planKey,
  readKey,
  type Steps,
} from './steps.ts'

/**
 * Take from the cache what was made before of the same input; have the rest done, and keep it. The steps are loaded
 * once one is to be done: a journal that is all in the cache needs none of them.
 */
export function cachedSteps(cache: Cache, load: () => Promise<Steps> = loadSteps()): Steps {
  return {
    look: async (input) => {
      const {bytes, state} = input
      const make = async () => (await load()).look(input)
      const look = await cache.value(lookKey(keyOf(bytes)), make, isPictureLook)
      return state ? cache.value(lookedAtKey(state), async () => look, isPictureLook) : look
    },
    lookedAt: async (state) => {
      const look = await cache.kept(lookedAtKey(state), isPictureLook)
      // The same bytes may come back in another state.
      if (look) cache.still([lookKey(look.hash)])
      return look
    },
    read: (input) => {
      const key = readKey(input)
      return cache.large(key, async () => (await load()).read(input), isReadResult(key, input.slug))
    },
    plan: (input) => {
      const key = planKey(input)
      return cache.large(
        key,
        async () => (await load()).plan(input),
        isPlanResult(key, input.read.build.slug),
      )
    },
    make: (input) => {
      const key = makeKey(input)
      return cache.large(key, async () => (await load()).make(input), isMakeResult(key))
    },
    draw: (input) => cache.large(drawKey(input), async () => (await load()).draw(input), isDrawn),
    compare: (input) => cache.large(compareKey(input), async () => (await load()).compare(input), isEffects),
    give: (input) => cache.large(downloadsKey(input), async () => (await load()).give(input), isDownloads),
  }
}

/** Load the steps once, where they are asked for. */
export function loadSteps(): () => Promise<Steps> {
  let loaded: Promise<Steps> | undefined
  return () => {
    loaded ??= import('./run-steps.ts').then(({uncachedSteps}) => uncachedSteps())
    return loaded
  }
}
