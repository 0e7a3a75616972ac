import type {Fill} from './open-strip.ts'
import type {Task} from './task.ts'

/** Tell whether a part that is left out could go into a strip, alone or for a smaller one, so that more is placed. */
export function couldReplace(
  {parts, lanes}: Task,
  at: number,
  lane: number,
  width: number,
  {kinds, copies}: Pick<Fill, 'kinds' | 'copies'>,
): boolean {
  const part = parts[at]!
  const {length, takes} = lanes[lane]!
  if (!takes[at] || part.width > width) return false
  let room = length
  for (let k = 0; k < kinds.length; k++) room -= copies[k]! * parts[kinds[k]!]!.length
  if (room >= part.length) return true
  for (const kind of kinds) {
    const other = parts[kind]!
    if (other.volume < part.volume * (1 - 1e-9) && room + other.length >= part.length) return true
  }
  return false
}
