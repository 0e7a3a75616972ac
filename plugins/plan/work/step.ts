import {withUnit} from '../../build-file/give-units.ts'
import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Length} from '../../build-file/values.ts'
import type {WorkStep} from '../../tables/hazards.ts'
import {glueWaits, usualGlue} from '../../tables/waits.ts'
import type {Hole} from '../drilling/holes.ts'
import type {Settled} from '../part.ts'
import type {Plan} from '../plan.ts'
import type {Step} from './work-order.ts'

/** A step before it has its place in the order: `after` may name steps that this build does not have. */
export interface StepDraft {
  id: string
  kind: WorkStep
  /** Where the kind's own name would not do. */
  step?: string
  does: string
  tool: string
  setting?: string | undefined
  stations?: Step['stations']
  waitH?: number
  after: readonly string[]
  check?: string | undefined
  /** How a day's heading or a task names it, where not as its kind. */
  words?: readonly string[]
}

/** Say what one group of the work asks of this build; in the order in which it would be done if nothing forbade it. */
export type WorkGroup = (facts: WorkFacts) => StepDraft[]

/** What decides which steps a build takes: its values, its plan so far, and how to write a length. */
export interface WorkFacts {
  values: BuildValues
  plan: Plan
  /** Write a length (mm) in the build's units to its ruler. */
  size: (mm: number) => string
  /** Write a length as the file does, with its unit. */
  asWritten: (length: Length) => string
  isFretted: boolean
  /** Frets are sawn into a board of their own, before it is glued on. */
  hasBoard: boolean
}

/** Gather what the groups of steps ask. */
export function workFacts(settled: Settled, plan: Plan): WorkFacts {
  const {values, units} = settled
  const size = (mm: number) => writeLength(mm, settled).replace('-', '−')
  return {
    values,
    plan,
    size,
    asWritten: (length) => (length.assumed ? size(length.mm) : withUnit(length, units)),
    isFretted: values.scale?.fretted?.value === true,
    hasBoard: values.fingerboard !== undefined,
  }
}

/** Give the hours until a glued joint may be worked, by the neck's glue, and what to say of its clamps. */
export function glueWait({values: {neck}}: WorkFacts): {waitH: number; clampsStay: string} {
  const glue = neck?.glue?.value ?? ''
  const isNamed = named(glue)
  const row = glueWaits.find(({words}) => isNamed(words)) ?? usualGlue
  const clampsStay = row.firstH < 1 ? `${row.firstH * 60} min` : `${row.firstH} h`
  return {waitH: row.lastH, clampsStay}
}

type Stations = NonNullable<StepDraft['stations']>

/** Make the step that drills all holes of some faces, in the order of bit changes; none where there are none. */
export function holesOn(
  {plan}: WorkFacts,
  faces: readonly string[],
  draft: Omit<StepDraft, 'tool' | 'setting' | 'stations'>,
): StepDraft[] {
  const bits = new Set<string>()
  const stations: Stations = []
  for (const hole of plan.holes ?? []) {
    if (!faces.includes(hole.face)) continue
    if (hole.bit) bits.add(hole.bit)
    stations.push(station(hole))
  }
  if (stations.length === 0) return []
  const step: StepDraft = {...draft, tool: 'drill press', stations}
  if (bits.size > 0) step.setting = [...bits].join('; ')
  return [step]
}

function station({what, face, stationMm, offMm, bit, depthMm}: Hole): Stations[number] {
  const at: Stations[number] = {what, stationMm, offMm, face}
  if (bit !== undefined) at.bit = bit
  if (depthMm !== undefined) at.depthMm = depthMm
  return at
}

/** Take the stations of some kinds from the layout, in order: mm from the nut line. */
export function stationsOf({layout = []}: Plan, kinds: readonly string[]): Step['stations'] {
  const found: Step['stations'] = []
  for (const {kind, what, stationMm} of layout) if (kinds.includes(kind)) found.push({what, stationMm})
  return found
}

/**
 * Say which of several things a text names: each is whole words, or the start of one where `*` ends it (`burn*` is
 * met in `Burning the lines`). Hyphens and other signs part words.
 */
export function named(text: string): (words: readonly string[]) => boolean {
  const plain = ` ${text
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `
  return (words) =>
    words.some((word) => plain.includes(word.endsWith('*') ? ` ${word.slice(0, -1)}` : ` ${word} `))
}
