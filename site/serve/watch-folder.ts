import {type FSWatcher, watch} from 'node:fs'
import {readdir, stat} from 'node:fs/promises'
import {join} from 'node:path'

/** How long a burst of events may last, and how often to look where no event comes; ms. */
const settleMs = 30
const lookMs = 2000

/**
 * Call `changed` whenever something below `folder` is other than it was, also if the folder comes and goes.
 * The system's events only say when to look; what changed is told by looking, so a missed event costs a moment.
 * Answers what ends the watch.
 */
export function watchFolder(folder: string, changed: () => Promise<void>): () => void {
  let last = snapshot(folder)
  let isLooking = false
  let soon: NodeJS.Timeout | undefined
  let watcher = listenTo(folder, wake)
  let heard = inode(folder)
  const timer = setInterval(wake, lookMs)

  function wake(): void {
    soon ??= setTimeout(() => void look(), settleMs)
  }
  async function look(): Promise<void> {
    soon = undefined
    if (isLooking) return wake()
    isLooking = true
    const now = await snapshot(folder)
    if (now !== (await last)) {
      last = Promise.resolve(now)
      await listenAgain()
      await changed()
    }
    isLooking = false
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
    clearInterval(timer)
    clearTimeout(soon)
    watcher?.close()
  }
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

/** Describe what lies below a folder so that any change of a file, name or link changes the description. */
async function snapshot(folder: string): Promise<string> {
  const entries = await readdir(folder, {recursive: true, withFileTypes: true}).catch(() => [])
  const lines = await Promise.all(
    entries.map(async (entry) => {
      const path = join(entry.parentPath, entry.name)
      const kind = await stat(path).catch(() => undefined)
      return kind ? `${path} ${kind.ino} ${kind.size} ${kind.mtimeMs} ${kind.ctimeMs}` : path
    }),
  )
  return lines.sort().join('\n')
}
