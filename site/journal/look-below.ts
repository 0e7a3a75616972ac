import {join} from 'node:path'
import {breathe} from '../kit/breathe.ts'
import {entriesIn, kindOf} from './at-once.ts'
import {changedMs, isSettled, stateOf} from './file-state.ts'

/** What lies below a folder at one moment. */
export interface Below {
  /** Of each file, folder and link, by its path in the folder, a line that is another whenever it is. */
  lines: ReadonlyMap<string, string>
  /** The folders, by their paths in the folder and `''` for itself, with the number that the disk has for each. */
  folders: ReadonlyMap<string, number>
  /** When the last of them was changed, as the disk tells it. */
  lastMs: number
  /** There are links, which may lead anywhere. */
  hasLinks: boolean
}

/** Look at all that lies below `folder` (absolute) without reading it; where the folder is not there, nothing is. */
export async function lookBelow(folder: string): Promise<Below> {
  const lines = new Map<string, string>()
  const own = kindOf(folder)
  const folders = new Map(typeof own === 'string' ? [] : [['', own.ino]])
  let lastMs = 0
  let hasLinks = false
  const open = ['']
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const entry of entriesIn(join(folder, at))) {
      const inside = at ? `${at}/${entry.name}` : entry.name
      hasLinks ||= entry.isSymbolicLink()
      const looked = kindOf(join(folder, inside))
      const kind = typeof looked === 'string' ? undefined : looked
      lines.set(inside, kind ? stateOf(kind) : '')
      if (entry.isDirectory()) {
        open.push(inside)
        if (kind) folders.set(inside, kind.ino)
      }
      if (kind) lastMs = Math.max(lastMs, changedMs(kind))
      await breathe()
    }
  return {lines, folders, lastMs, hasLinks}
}

/** What is hidden is no part of a journal. */
export const isSeen = (path: string): boolean => !path.split('/').some((name) => name.startsWith('.'))

/** Name what lies there so that another journal has another name. */
export const nameOfState = ({lines}: Pick<Below, 'lines'>): string =>
  [...lines]
    .filter(([path]) => isSeen(path))
    .map(([path, line]) => `${path} ${line}`)
    .sort()
    .join('\n')

/**
 * Tell whether the same name means the same journal: not where something was changed just now, or by a clock that is
 * ahead, or lies behind a link.
 */
export const isSureState = ({lines, lastMs, hasLinks}: Below, nowMs: number): boolean =>
  !hasLinks && lines.size > 0 && isSettled(lastMs, nowMs)
