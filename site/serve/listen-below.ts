import {type FSWatcher, watch} from 'node:fs'
import {join, sep} from 'node:path'

/**
 * Where the system itself tells of all that lies below a folder, one listener is enough. Elsewhere each folder has its own:
 * what Node has in the place of that hears nothing more of a file once another was put in its place.
 */
const isOneEnough = process.platform === 'darwin' || process.platform === 'win32'

/** Hears of changes below a folder, where the system can tell. */
interface Listener {
  /**
   * Listen in these folders and no others: their paths in the folder, `''` for itself, each with the number that the disk
   * has for it, since one that was made anew is another. Answers whether some are new.
   */
  listenIn: (folders: ReadonlyMap<string, number>) => boolean
  end: () => void
}

/** Have `heard` be called with the path of what the system tells of, as far as it does. */
export function listenBelow(folder: string, heard: (path?: string) => void): Listener {
  const listeners = new Map<string, {inode: number; watcher: FSWatcher}>()
  const drop = (at: string) => {
    listeners.get(at)?.watcher.close()
    listeners.delete(at)
  }
  const add = (at: string, inode: number): boolean => {
    try {
      const watcher = watch(join(folder, at), {recursive: isOneEnough, persistent: false}, (_, name) =>
        heard(name === null ? undefined : join(at, name).replaceAll(sep, '/')),
      )
      listeners.set(at, {inode, watcher})
      watcher.on('error', () => drop(at))
      return true
    } catch {
      // It is gone, or the system has no more of them: then it is looked at now and then.
      return false
    }
  }
  return {
    listenIn(folders) {
      for (const [at, {inode}] of listeners) if (folders.get(at) !== inode) drop(at)
      const due = [...folders].filter(([at]) => !listeners.has(at) && !(isOneEnough && at !== ''))
      return due.filter(([at, inode]) => add(at, inode)).length > 0
    },
    end() {
      for (const at of listeners.keys()) drop(at)
    },
  }
}
