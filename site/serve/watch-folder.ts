import {type FSWatcher, watch} from 'node:fs'
import {stat} from 'node:fs/promises'
import {dirname, join, sep} from 'node:path'
import {kindOf} from '../journal/at-once.ts'
import {stateOf} from '../journal/file-state.ts'
import {type Below, isSeen, lookBelow} from '../journal/look-below.ts'

/** How long a burst of events may last, and how often to look at least where no event comes; ms. */
const settleMs = 30
const lookMs = 2000

/** A look at a large journal takes a while: this much of the time is not spent looking. */
const restPerLook = 50

/** What lay in a folder, and when that was looked at. */
interface Looked {
  builds: Below
  atMs: number
}

interface Watch {
  /** All that lies in the folder as it was told last; undefined where it was not all looked at since. */
  seen: () => Looked | undefined
  end: () => void
}

/** Where the system names so many files, each is looked at by itself; of more, all is looked at. */
const mostNamed = 16

/**
 * Call `changed` with what is other below `folder` than when this answered, by the paths in it, also if the folder comes
 * and goes; what is hidden is not told. The system's events only say when to look, and where first; what changed is told
 * by looking, so a missed event costs a moment.
 */
export async function watchFolder(
  folder: string,
  changed: (paths: readonly string[]) => void,
): Promise<Watch> {
  let whole = await lookedAt(folder)
  let last = whole.builds.lines
  let isLooking = false
  let hasEnded = false
  let soon: NodeJS.Timeout | undefined
  let later: NodeJS.Timeout | undefined
  let named = new Set<string | undefined>()
  let watcher = listenTo(folder, wake)
  let heard = inode(folder)
  let restMs = lookMs
  rest()

  function wake(path?: string): void {
    named.add(path)
    soon ??= setTimeout(() => void look(), settleMs)
  }
  function rest(): void {
    clearTimeout(later)
    later = setTimeout(wake, restMs)
  }
  async function lookAtAll(): Promise<Lines> {
    const from = performance.now()
    whole = await lookedAt(folder)
    restMs = Math.max(lookMs, restPerLook * (performance.now() - from))
    return whole.builds.lines
  }
  async function look(): Promise<void> {
    soon = undefined
    if (hasEnded) return
    if (isLooking) {
      soon = setTimeout(() => void look(), settleMs)
      return
    }
    isLooking = true
    const paths = [...named]
    named = new Set()
    const now = linesAt(folder, paths, last) ?? (await lookAtAll())
    const other = differing(last, now).filter(isSeen)
    if (other.length > 0) {
      await listenAgain()
      changed(other)
    }
    last = now
    isLooking = false
    if (!hasEnded) rest()
  }
  /** A folder that was moved away and made anew is another one to the system. */
  async function listenAgain(): Promise<void> {
    const now = inode(folder)
    if (watcher && (await now) === (await heard)) return
    watcher?.close()
    watcher = listenTo(folder, wake)
    heard = now
  }
  return {
    seen: () => (last === whole.builds.lines ? whole : undefined),
    end: () => {
      hasEnded = true
      clearTimeout(later)
      clearTimeout(soon)
      watcher?.close()
    },
  }
}

type Lines = ReadonlyMap<string, string>

async function lookedAt(folder: string): Promise<Looked> {
  const atMs = Date.now()
  return {builds: await lookBelow(folder), atMs}
}

/**
 * Look at files that were there before, and at the folders around them, alone; undefined where a path is of anything
 * else, or not told.
 */
function linesAt(folder: string, paths: readonly (string | undefined)[], before: Lines): Lines | undefined {
  const lines = new Map(before)
  if (paths.length > mostNamed) return undefined
  for (const path of paths) {
    if (path === undefined) return undefined
    const kind = kindOf(join(folder, path))
    const isThere = typeof kind !== 'string'
    // One that came and went between two looks never was.
    if (!isSeen(path) || (!isThere && !before.has(path))) continue
    if (!isThere || !kind.isFile() || !before.has(path)) return undefined
    for (let at = path; at !== '.'; at = dirname(at)) {
      const now = kindOf(join(folder, at))
      if (typeof now === 'string') return undefined
      lines.set(at, stateOf(now))
    }
  }
  return lines
}

function differing(before: Lines, now: Lines): string[] {
  const gone = [...before.keys()].filter((path) => !now.has(path))
  return [...gone, ...[...now.keys()].filter((path) => now.get(path) !== before.get(path))]
}

const inode = async (folder: string) => (await stat(folder).catch(() => undefined))?.ino

/** Have the system tell of changes, where it can. */
function listenTo(folder: string, wake: (path?: string) => void): FSWatcher | undefined {
  try {
    const watcher = watch(folder, {recursive: true, persistent: false}, (_, path) =>
      wake(path?.replaceAll(sep, '/')),
    )
    return watcher.on('error', () => watcher.close())
  } catch {
    return undefined
  }
}
