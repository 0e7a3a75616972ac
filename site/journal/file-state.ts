import type {Stats} from 'node:fs'

/** Name how a file lies there, so that it has another name whenever it was changed or is another file. */
export const stateOf = ({ino, size, mtimeMs, ctimeMs}: Stats): string =>
  // The last of these no program can set back.
  `${ino} ${size} ${mtimeMs} ${ctimeMs}`

/** When a file was changed, as the disk tells it. */
export const changedMs = ({mtimeMs, ctimeMs}: Stats): number => Math.max(mtimeMs, ctimeMs)

/** A disk may tell the time by two seconds, so that two changes within them look like one. */
const coarseMs = 2000

/** Tell whether no later change can look like the last one, which was not made just now, nor by a clock that is ahead. */
export const isSettled = (lastMs: number, nowMs: number): boolean => lastMs <= nowMs - coarseMs
