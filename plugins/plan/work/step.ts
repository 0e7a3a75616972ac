import type {WorkStep} from '../../tables/hazards.ts'
import type {HoleBit} from '../bits.ts'
import type {Face, HoleUse} from '../hole.ts'
import type {Place} from '../layout.ts'
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
