import type {WorkStep} from '../../tables/hazards.ts'
import {namesOf} from '../../tables/work-kinds.ts'
import type {HoleBit} from '../kit/bits.ts'
import type {Face, HoleUse} from '../kit/hole.ts'
import type {Place} from '../layout/layout.ts'
import type {StepFacts} from './step-facts.ts'

/** A step of the work, in its place. */
export interface Step {
  id: string
  kind: WorkStep
  facts: StepFacts
  tool: Tool
  stations: StepStation[]
  /** Ids of the parts to cut that come to their place here. */
  parts?: string[] | undefined
  waitH?: number | undefined
  /** Ids of later steps that need not wait for it. */
  meanwhile?: string[] | undefined
  after: string[]
  /** Ids of the cautions that belong to it. */
  cautions: string[]
  /** The journal names it, or a step that comes after it, or says that it is strung up. */
  isDone: boolean
}

/** Where a step is done, in mm from the nut line. */
export interface StepStation {
  what: Place | HoleUse | {block: string}
  stationMm: number
  /** On the box: from its head-side edge. */
  alongMm?: number | undefined
  /** Off the centre line, of a hole. */
  offMm?: number | undefined
  /** Of a hole. */
  face?: Face | undefined
  bit?: HoleBit | undefined
  depthMm?: number | undefined
}

/** A step before it has its place in the order: `after` may name steps that this build does not have. */
export interface StepDraft {
  id: string
  kind: WorkStep
  facts: StepFacts
  tool: Tool
  stations?: StepStation[] | undefined
  /** Ids of the parts to cut that come to their place here. */
  parts?: string[] | undefined
  waitH?: number | undefined
  after: readonly string[]
  /** How a day's heading or a task names it, where not as its kind. */
  words?: readonly string[] | undefined
}

/** What is in hand. */
export type Tool =
  | 'block'
  | 'carrier'
  | 'chisel'
  | 'clamps'
  | 'drill press'
  | 'file'
  | 'fret saw'
  | 'hacksaw'
  | 'hammer'
  | 'hand drill'
  | 'hands'
  | 'hot pen'
  | 'iron'
  | 'jointer'
  | 'knife'
  | 'planer'
  | 'pliers'
  | 'rag'
  | 'rip saw'
  | 'router'
  | 'saw'
  | 'scraper'
  | 'screwdriver'
  | 'tuner'

interface Named {
  id: string
  kind: WorkStep
  facts: StepFacts
}

/** List what `:step[...]` may call a step: its name, its id, and of a finish its kind. */
export const callsOf = ({id, kind, facts}: Named): string[] => [
  namesOf(id, kind).name,
  id,
  ...(facts.of === 'finish' ? [facts.name] : []),
]

/** Find the step that is called so, in whichever letters, apostrophes and blanks. */
export const stepCalled = <Of extends Named>(name: string, steps: readonly Of[]): Of | undefined =>
  steps.find((step) => callsOf(step).some((call) => plain(call) === plain(name)))

const plain = (name: string): string => name.trim().toLowerCase().replaceAll("'", '’').replaceAll(/\s+/g, ' ')
