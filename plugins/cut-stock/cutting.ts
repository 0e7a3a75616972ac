import type {Bin, Job, Task} from './task.ts'

/** A strip sawn off a bin that was `from` wide: so many parts of each kind. */
export interface Step {
  lane: number
  from: number
  width: number
  kinds: number[]
  copies: number[]
}

/** A filling of one strip, and what it is worth. */
export interface Fill extends Omit<Step, 'from'> {
  worth: number
}

/** A cutting, what it leaves of each kind, and the volume (mm³) of that. */
export interface Packing {
  steps: Step[]
  left: Int32Array
  leftVolume: number
}

/** Reckon up what a cutting leaves of the parts wanted. */
export function packingOf({parts}: Task, counts: Int32Array, steps: Step[]): Packing {
  const left = Int32Array.from(counts)
  for (const {kinds, copies} of steps) take(left, kinds, copies)
  return {steps, left, leftVolume: left.reduce((sum, n, at) => sum + n * parts[at]!.volume, 0)}
}

/** A cutting under way: what is still to cut, what is left of the bins, what was sawn and what was left out so far. */
export class Cutting {
  readonly counts: Int32Array
  readonly bins: Bin[]
  readonly steps: Step[] = []
  /** The volume (mm³) of what is left out. */
  leftVolume = 0
  private readonly leftOut: {at: number; count: number; before: number}[] = []
  private readonly task: Task

  constructor(task: Task, {counts, bins}: Job) {
    this.task = task
    this.counts = Int32Array.from(counts)
    this.bins = bins.map((bin) => ({...bin}))
  }

  /** The widest kind from some kind on that is still to cut; past the last where there is none. */
  next(from = 0): number {
    const {counts} = this
    let at = from
    while (at < counts.length && counts[at] === 0) at++
    return at
  }

  /** Saw a strip off a bin, or off so many alike, and say where its rest lies. */
  saw(bin: Bin, {width, kinds, copies}: Fill, times = 1): Bin {
    const rest = restOf(this.bins, bin.lane, bin.width - width)
    bin.count -= times
    rest.count += times
    const step = {lane: bin.lane, from: bin.width, width, kinds, copies}
    for (let time = 0; time < times; time++) {
      take(this.counts, kinds, copies)
      this.steps.push(step)
    }
    return rest
  }

  /** Take back the last strip sawn. */
  unsaw(bin: Bin, rest: Bin): void {
    const {kinds, copies} = this.steps.pop()!
    for (let k = 0; k < kinds.length; k++) this.counts[kinds[k]!]! += copies[k]!
    rest.count--
    bin.count++
  }

  /** Leave out what there is of a kind. */
  leaveOut(at: number): void {
    const count = this.counts[at]!
    this.leftOut.push({at, count, before: this.leftVolume})
    this.leftVolume += count * this.task.parts[at]!.volume
    this.counts[at] = 0
  }

  /** Take in again what was left out last. */
  takeIn(): void {
    const {at, count, before} = this.leftOut.pop()!
    this.leftVolume = before
    this.counts[at] = count
  }

  /** Tell whether some strip sawn would rather hold a kind than what it holds. */
  isWanted(at: number): boolean {
    for (const step of this.steps) if (couldReplace(this.task, at, step)) return true
    return false
  }

  /** Tell whether a filling would rather hold something that is left out. */
  wantsOther(fill: Fill): boolean {
    for (const {at} of this.leftOut) if (couldReplace(this.task, at, fill)) return true
    return false
  }

  /**
   * Name the state: what is still to cut, and the bins that still hold some of it. Bins are named by their place,
   * which they keep as long as the cutting lasts.
   */
  key(): string {
    const {counts, bins} = this
    const codes: number[] = []
    let narrowest = 0
    for (let at = 0; at < counts.length; at++) {
      codes.push(counts[at]!)
      if (counts[at]! > 0) narrowest = this.task.parts[at]!.width
    }
    for (let b = 0; b < bins.length; b++)
      if (bins[b]!.count > 0 && bins[b]!.width >= narrowest) codes.push(b, bins[b]!.count)
    return String.fromCharCode(...codes)
  }

  /** Name what decides which parts may be left out from here on: those left out, and those that some strip wants. */
  leavingKey(): string {
    const codes = [separator, ...this.leftOut.map(({at}) => at), separator]
    this.counts.forEach((n, at) => {
      if (n !== 0 && this.isWanted(at)) codes.push(at)
    })
    return String.fromCharCode(...codes)
  }
}

/** No kind of part and no bin has this number. */
const separator = 0xffff

/** Tell whether a part that is left out could go into a strip, alone or for a smaller one, so that more is placed. */
function couldReplace(
  {parts, lanes}: Task,
  at: number,
  {lane, width, kinds, copies}: Omit<Step, 'from'>,
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

function take(counts: Int32Array, kinds: readonly number[], copies: readonly number[]): void {
  for (let k = 0; k < kinds.length; k++) counts[kinds[k]!]! -= copies[k]!
}

/** Find the bin of a lane that is so wide, or start one. */
export function restOf(bins: Bin[], lane: number, width: number): Bin {
  const known = bins.find((bin) => bin.lane === lane && bin.width === width)
  if (known) return known
  const rest = {lane, width, count: 0}
  bins.push(rest)
  return rest
}

/** How many of each kind of a job fit in some bin, and the volume (mm³) of those that fit in none. */
export function fitting(task: Task, {counts, bins}: Job): {counts: Int32Array; misfitVolume: number} {
  let misfitVolume = 0
  const fits = counts.map((count, at) => {
    const part = task.parts[at]!
    const fitsIn = ({lane, width, count: n}: Bin) =>
      n > 0 && width >= part.width && task.lanes[lane]!.takes[at]
    if (count === 0 || bins.some(fitsIn)) return count
    misfitVolume += count * part.volume
    return 0
  })
  return {counts: fits, misfitVolume}
}
