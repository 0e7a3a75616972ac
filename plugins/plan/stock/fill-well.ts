import type {Effort} from './effort.ts'
import type {Fill} from './fills.ts'
import type {Task} from './task.ts'

/** So many fillings are looked at before the best of them is taken. */
const mostNodes = 400

/**
 * Fill a strip as wide as the pivot with what is worth most, widest and longest first; the first filling worth
 * `enough` ends it.
 */
export function fillWell(
  task: Task,
  lane: number,
  pivot: number,
  counts: Int32Array,
  worths: ArrayLike<number>,
  enough: number,
  effort: Effort,
): Fill {
  const {length: capacity, takes} = task.lanes[lane]!
  const kinds: number[] = []
  for (let at = pivot; at < counts.length; at++)
    if (counts[at]! > 0 && takes[at] && task.parts[at]!.length <= capacity) kinds.push(at)
  const n = kinds.length
  const lengths = kinds.map((at) => task.parts[at]!.length)
  const ratio = new Float64Array(n + 1)
  for (let k = n - 1; k >= 0; k--) ratio[k] = Math.max(ratio[k + 1]!, worths[kinds[k]!]! / lengths[k]!)
  const copies = new Int32Array(n)
  let best = new Int32Array(n)
  let most = -1
  let nodes = 0
  const visit = (from: number, room: number, worth: number): boolean => {
    let k = from
    while (k > 0 && k < n && lengths[k]! > room) k++
    nodes++
    if (worth > most) {
      best = copies.slice()
      most = worth
      if (worth >= enough) return true
    }
    if (k === n || nodes > mostNodes || worth + room * ratio[k]! <= most) return nodes > mostNodes
    const fits = Math.min(counts[kinds[k]!]!, Math.floor(room / lengths[k]!))
    for (let c = fits; c >= (k === 0 ? 1 : 0); c--) {
      copies[k] = c
      if (visit(k + 1, room - c * lengths[k]!, worth + c * worths[kinds[k]!]!)) return true
    }
    copies[k] = 0
    return false
  }
  visit(0, capacity, 0)
  effort.spend(nodes + n)
  const used = kinds.map((_, k) => k).filter((k) => best[k]! > 0)
  return {kinds: used.map((k) => kinds[k]!), copies: used.map((k) => best[k]!), worth: most}
}
