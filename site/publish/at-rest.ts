import {setTimeout as pause} from 'node:timers/promises'

/** How what is read lies there. */
interface Lies {
  /** Another whenever something is. */
  key: string
}

/** Nothing changes for so long where nobody writes any more, ms; so often is that waited for. */
const restMs = 300
const mostWaits = 100

/** So often is it read: whoever goes on writing gets what there is. */
const mostReadings = 4

/**
 * Read what lies there as it was at one moment: where it changed meanwhile, as while a version control checks out, wait
 * until it rests, and read once more. `from` is how it lay before it was read.
 */
export async function readAtRest<L extends Lies, T>(
  first: L,
  lies: () => Promise<L>,
  read: () => Promise<T>,
): Promise<{read: T; from: L}> {
  let from = first
  for (let times = 1; ; times++) {
    const there = await read()
    const now = await lies()
    if (now.key === from.key || times === mostReadings) return {read: there, from}
    from = await resting(now, lies)
  }
}

async function resting<L extends Lies>(first: L, lies: () => Promise<L>): Promise<L> {
  let last = first
  for (let waits = 0; waits < mostWaits; waits++) {
    await pause(restMs)
    const now = await lies()
    if (now.key === last.key) return now
    last = now
  }
  return last
}
