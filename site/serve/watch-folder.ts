import {dirname, join} from 'node:path'
import {kindOf} from '../journal/at-once.ts'
import {stateOf} from '../journal/file-state.ts'
import {type Below, isSeen, lookBelow} from '../journal/look-below.ts'
import {listenBelow} from './listen-below.ts'

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
  let restMs = lookMs
  const listener = listenBelow(folder, wake)
  listener.listenIn(whole.builds.folders)
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
    // Something may have come into a new folder before that was listened in.
    if (listener.listenIn(whole.builds.folders)) wake()
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
    const files = paths.length > mostNamed ? undefined : linesAt(folder, paths, last)
    if (files) tell(files.lines)
    if (!files?.areAll) tell(await lookAtAll())
    isLooking = false
    if (!hasEnded) rest()
  }
  function tell(now: Lines): void {
    const other = differing(last, now).filter(isSeen)
    if (other.length > 0) changed(other)
    last = now
  }
  return {
    seen: () => (last === whole.builds.lines ? whole : undefined),
    end: () => {
      hasEnded = true
      clearTimeout(later)
      clearTimeout(soon)
      listener.end()
    },
  }
}

type Lines = ReadonlyMap<string, string>

async function lookedAt(folder: string): Promise<Looked> {
  const atMs = Date.now()
  return {builds: await lookBelow(folder), atMs}
}

/**
 * Look at files that were there before, and at the folders around them, alone; tells whether they are all that may have
 * changed. The system may name a file that was put in the place of another, and not that one.
 */
function linesAt(
  folder: string,
  paths: readonly (string | undefined)[],
  before: Lines,
): {lines: Lines; areAll: boolean} {
  const lines = new Map(before)
  let areAll = true
  for (const path of paths) {
    const kind = path !== undefined && before.has(path) ? kindOf(join(folder, path)) : ''
    const isFile = typeof kind !== 'string' && kind.isFile()
    if (!isFile || before.get(path!) === stateOf(kind)) areAll = false
    for (let at = path; isFile && at !== undefined && at !== '.'; at = dirname(at)) {
      const now = kindOf(join(folder, at))
      if (typeof now !== 'string') lines.set(at, stateOf(now))
    }
  }
  return {lines, areAll}
}

function differing(before: Lines, now: Lines): string[] {
  const gone = [...before.keys()].filter((path) => !now.has(path))
  return [...gone, ...[...now.keys()].filter((path) => now.get(path) !== before.get(path))]
}
