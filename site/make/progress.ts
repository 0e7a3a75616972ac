/** Hears how far a part of the work is; of how many where that is known. */
export type Progress = (what: string, done: number, of?: number) => void

/** The same, and the work goes on once it has heard. */
export type WaitedProgress = (...how: Parameters<Progress>) => void | Promise<void>

/** Shorter work than this is done before anybody wonders, ms. */
const patienceMs = 2000
/** A line is not written more often than it can be read, ms. */
const betweenMs = 200

/**
 * Tell whoever sits before a terminal how far the work is, and about how long the rest takes, where it takes longer than
 * two seconds. What is written into a file or to another program gets nothing of it. `end` clears the line; `line` is what
 * it says, for whoever waits elsewhere.
 */
export function progressTo(stream: Pick<NodeJS.WriteStream, 'isTTY' | 'write'>): {
  told: Progress
  end: () => void
  line: () => string
} {
  const beganMs = performance.now()
  let part = {what: '', beganMs}
  let line = () => ''
  let writtenMs = 0
  return {
    told: (what, done, of) => {
      const nowMs = performance.now()
      if (part.what !== what) part = {what, beganMs: nowMs}
      line = () => progressLine(what, {done, of}, nowMs - part.beganMs)
      if (!stream.isTTY || nowMs - beganMs < patienceMs || nowMs - writtenMs < betweenMs) return
      writtenMs = nowMs
      stream.write(`\r${line()}\u001b[K`)
    },
    end: () => {
      if (writtenMs > 0) stream.write('\r\u001b[K')
    },
    line: () => line(),
  }
}

/** Say how far a part of the work is that began `tookMs` ago: `Making 12 of 100, about 30 s more`. */
export function progressLine(
  what: string,
  {done, of}: {done: number; of?: number | undefined},
  tookMs: number,
): string {
  if (of === undefined) return `${what} ${done}`
  const restS = done > 0 ? Math.ceil(((tookMs / done) * (of - done)) / 1000) : 0
  const rest = restS > 90 ? `${Math.ceil(restS / 60)} min` : `${restS} s`
  return `${what} ${done} of ${of}${restS > 0 ? `, about ${rest} more` : ''}`
}
