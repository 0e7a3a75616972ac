import type {Step, WorkTime} from '../shape/work.ts'

/**
 * Add up the waits (h): the longest chain of those that depend on each other, which no order shortens, and all of
 * them; beside them the hours that the journal tells of. Undefined where nothing waits and nothing is told.
 */
export function workTime(steps: readonly Step[], minutes = 0): WorkTime | undefined {
  const until = new Map<string, number>()
  for (const {id, after, waitH = 0} of steps)
    until.set(id, Math.max(0, ...after.map((one) => until.get(one) ?? 0)) + waitH)
  const waitsH = steps.reduce((sum, {waitH = 0}) => sum + waitH, 0)
  if (waitsH === 0 && minutes === 0) return undefined
  return {waitH: Math.max(...until.values()), waitsH, ...(minutes > 0 && {benchH: minutes / 60})}
}
