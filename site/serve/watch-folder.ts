import {type FSWatcher, watch} from 'node:fs'
import {stat} from 'node:fs/promises'
import {lookBelow} from '../journal/look-below.ts'

/** How long a burst of events may last, and how often to look at least where no event comes; ms. */
const settleMs = 30
const lookMs = 2000

/** A look at a large journal takes a while: this much of the time is not spent looking. */
const restPerLook = 50

/**
 * Call `changed` with what is other below `folder` than when this answered, by the paths in it, also if the folder comes
 * and goes. The system's events only say when to look; what changed is told by looking, so a missed event costs a moment.
 * Answers what ends the watch.
 */
export async function watchFolder(
  folder: string,
  changed: (paths: readonly string[]) => void,
): Promise<() => void> {
  let last = await linesOf(folder)
  let isLooking = false
  let hasEnded = false
  let soon: NodeJS.Timeout | undefined
  let later: NodeJS.Timeout | undefined
  let watcher = listenTo(folder, wake)
  let heard = inode(folder)
  restFor(lookMs)

  function wake(): void {
    soon ??= setTimeout(() => void look(), settleMs)
  }
  function restFor(ms: number): void {
    clearTimeout(later)
    later = setTimeout(wake, Math.max(lookMs, ms))
  }
  async function look(): Promise<void> {
    soon = undefined
    if (hasEnded) return
    if (isLooking) return wake()
    isLooking = true
    const from = performance.now()
    const now = await linesOf(folder)
    const restMs = restPerLook * (performance.now() - from)
    const other = differing(last, now)
    last = now
    if (other.length > 0) {
      await listenAgain()
      changed(other)
    }
    isLooking = false
    if (!hasEnded) restFor(restMs)
  }
  /** A folder that was moved away and made anew is another one to the system. */
  async function listenAgain(): Promise<void> {
    const now = inode(folder)
    if (watcher && (await now) === (await heard)) return
    watcher?.close()
    watcher = listenTo(folder, wake)
    heard = now
  }
  return () => {
    hasEnded = true
    clearTimeout(later)
    clearTimeout(soon)
    watcher?.close()
  }
}

const linesOf = async (folder: string) => (await lookBelow(folder)).lines

function differing(before: ReadonlyMap<string, string>, now: ReadonlyMap<string, string>): string[] {
  const gone = [...before.keys()].filter((path) => !now.has(path))
  return [...gone, ...[...now.keys()].filter((path) => now.get(path) !== before.get(path))]
}

const inode = async (folder: string) => (await stat(folder).catch(() => undefined))?.ino

/** Have the system tell of changes, where it can. */
function listenTo(folder: string, wake: () => void): FSWatcher | undefined {
  try {
    const watcher = watch(folder, {recursive: true, persistent: false}, wake)
    return watcher.on('error', () => watcher.close())
  } catch {
    return undefined
  }
}
