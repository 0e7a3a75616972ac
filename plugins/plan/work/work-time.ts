import type {Step, WorkTime} from '../shape/work.ts'

/**
 * Add up the waits (h): the longest chain of those that depend on each other, which no order shortens, and all of
 * them; beside them the hours that the journal tells of. Undefined where nothing waits and nothing is told.
 */
export function workTime(steps: readonly Step[], minutes = 0): WorkTime | undefined {
  const until = new Map<string, number>()
  let waitH = 0
  let waitsH = 0
  for (const {id, after, waitH: own = 0} of steps) {
    let fromH = 0
    for (const before of after) fromH = Math.max(fromH, until.get(before) ?? 0)
    until.set(id, fromH + own)
    waitH = Math.max(waitH, fromH + own)
    waitsH += own
  }
  if (waitsH === 0 && minutes === 0) return undefined
  return {waitH, waitsH, ...(minutes > 0 && {benchH: minutes / 60})}
}
