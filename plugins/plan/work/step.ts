import {withUnit} from '../../build-file/give-units.ts'
import {writeLength} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Length} from '../../build-file/values.ts'
import type {WorkStep} from '../../tables/hazards.ts'
import {glueWaits, usualGlue} from '../../tables/waits.ts'
import type {Box} from '../box/box.ts'
import type {Cuts} from '../cut-list.ts'
import type {Hole} from '../holes.ts'
import type {Station, StationKind} from '../layout.ts'
import type {Neck} from '../neck/neck.ts'
import type {Scale} from '../scale.ts'
import type {Settled} from '../settle.ts'
import type {StringPlan} from '../strings.ts'

/** A step of the work, in its place. */
export interface Step {
  id: string
  kind: WorkStep
  /** What it is called. */
  step: string
  does: string
  tool?: string | undefined
  setting?: string | undefined
  stations: StepStation[]
  waitH?: number | undefined
  /** Where the waiting time comes from. */
  waitFrom?: string | undefined
  /** Ids of later steps that need not wait for it. */
  meanwhile?: string[] | undefined
  after: string[]
  /** Ids of the cautions that belong to it. */
  cautions: string[]
  check?: string | undefined
  /** The journal names it, or a step that comes after it, or says that it is strung up. */
  isDone: boolean
}

/** Where a step is done, in mm from the nut line. */
interface StepStation {
  what: string
  stationMm: number
  /** Off the centre line, of a hole. */
  offMm?: number | undefined
  /** Of a hole. */
  face?: string | undefined
  bit?: string | undefined
  depthMm?: number | undefined
}

/** A step before it has its place in the order: `after` may name steps that this build does not have. */
export interface StepDraft {
  id: string
  kind: WorkStep
  /** Where the kind's own name would not do. */
  step?: string | undefined
  does: string
  tool: string
  setting?: string | undefined
  stations?: StepStation[] | undefined
  waitH?: number | undefined
  after: readonly string[]
  check?: string | undefined
  /** How a day's heading or a task names it, where not as its kind. */
  words?: readonly string[] | undefined
}

/** Say what one group of the work asks of this build; in the order in which it would be done if nothing forbade it. */
export type WorkGroup = (facts: WorkFacts) => StepDraft[]

/** What is made. */
export interface Design {
  scale: Scale | undefined
  strings: readonly StringPlan[] | undefined
  neck: Neck | undefined
  box: Box | undefined
  layout: readonly Station[] | undefined
  holes: readonly Hole[] | undefined
  /** Its screws, one each. */
  fasteners: readonly unknown[] | undefined
  cuts: Cuts | undefined
}

/** What decides which steps a build takes: its values, what is made of them, and how to write a length. */
export interface WorkFacts {
  values: BuildValues
  units: 'in' | 'mm'
  design: Design
  /** Write a length (mm) in the build's units to its ruler. */
  size: (mm: number) => string
  /** Write a length as the file does, with its unit. */
  asWritten: (length: Length) => string
  isFretted: boolean
  /** Frets are sawn into a board of their own, before it is glued on. */
  hasBoard: boolean
}

/** Gather what the groups of steps ask. */
export function workFacts(settled: Settled, design: Design): WorkFacts {
  const {values, units} = settled
  const size = (mm: number) => writeLength(mm, settled).replace('-', '−')
  return {
    values,
    units,
    design,
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

/** Make the step that drills all holes of some faces, in the order of bit changes; none where there are none. */
export function holesOn(
  {design: {holes = []}}: WorkFacts,
  faces: readonly string[],
  draft: Omit<StepDraft, 'tool' | 'setting' | 'stations'>,
): StepDraft[] {
  const here = holes.filter(({face}) => faces.includes(face))
  if (here.length === 0) return []
  const bits = new Set(here.flatMap(({bit}) => (bit ? [bit] : [])))
  return [
    {
      ...draft,
      tool: 'drill press',
      setting: bits.size > 0 ? [...bits].join('; ') : undefined,
      stations: here.map(({what, face, stationMm, offMm, bit, depthMm}) => ({
        what,
        stationMm,
        offMm,
        face,
        bit,
        depthMm,
      })),
    },
  ]
}

/** Take the stations of some kinds from the layout, in order: mm from the nut line. */
export function stationsOf(layout: Design['layout'], kinds: readonly StationKind[]): StepStation[] {
  return (layout ?? []).flatMap(({kind, what, stationMm}) =>
    kinds.includes(kind) ? [{what, stationMm}] : [],
  )
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
