import {withUnit} from '../../build-file/give-units.ts'
import type {BuildValues} from '../../build-file/schema.ts'
import type {Length} from '../../build-file/values.ts'
import type {WorkStep} from '../../tables/hazards.ts'
import {glueWaits, usualGlue} from '../../tables/waits.ts'
import type {HoleBit} from '../bits.ts'
import type {Box} from '../box/box.ts'
import type {Bridge} from '../bridge.ts'
import type {Cuts} from '../cut-list.ts'
import type {Fastener} from '../fasteners/fasteners.ts'
import type {Face, Hole, HoleUse} from '../holes.ts'
import type {Place, Station, StationKind} from '../layout.ts'
import type {Neck} from '../neck/neck.ts'
import type {Scale} from '../scale.ts'
import type {Settled} from '../settle.ts'
import type {StringPlan} from '../strings.ts'

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

/** A length as the file writes it, with its unit; without a text where it is assumed or computed. */
export interface AsWritten {
  mm: number
  text?: string | undefined
}

/** Screws that are driven in one step, as the file has them. */
export interface DrivenScrews {
  count: number
  size: string
  length?: AsWritten | undefined
}

/** How long clamps stay on. */
type Clamped = {clampsH: number}

/** Where a bridge that is set back stands, from the nut line, under the first string and under the last. */
export interface SetBack {
  first: {name: string; mm: number}
  last?: {name: string; mm: number} | undefined
}

/** What sort of step it is, with what is set on the tool and all else that its words are made of. */
export type StepFacts =
  | {of: 'mill'; setting?: {planeMm: number} | undefined}
  | {of: 'rip'; setting?: {sawn: SawnPart[]} | undefined}
  | {of: 'rip-small' | 'trim'; setting: {sizes: TrimmedPart[]}}
  | {of: 'plane-faces'; setting: {layers: PlanedLayer[]}}
  | {of: 'mark-lines-stick' | 'mark-lines-face' | 'mark-lines-board'; setting?: undefined}
  | {of: 'groove-nut'; setting: {deep: AsWritten; wide?: AsWritten | undefined}}
  | {of: 'cut-down'; setting: {deepMm: number; leftMm: number; fromMm: number; toMm: number}}
  | {of: 'fit-parts'; setting?: undefined; names: string[]}
  | {of: 'glue-up'; setting: {clamps?: number | undefined} & Clamped}
  | {
      of: 'plane'
      setting?:
        | {
            stickMm?: number | undefined
            boardMm?: number | undefined
            capMm?: number | undefined
          }
        | undefined
    }
  | {
      of: 'saw-scarf'
      setting: {angleDeg: number; fromSquareDeg: number; slope: number; runMm: number}
      faceMm: number
    }
  | {of: 'glue-head'; setting: Clamped}
  | {of: 'glue-up-plate' | 'fret-ends' | 'drill-neck-dots' | 'box-strip'; setting?: undefined}
  | {
      of: 'shape-head'
      setting: {thicknessMm: number; retainer?: string | undefined}
      /** Of a head sawn out of the solid. */
      angleDeg?: number | undefined
      /** How far the face of a straight head is cut down. */
      dropMm?: number | undefined
    }
  | {of: DrillStep; setting?: {bits: HoleBit[]} | undefined}
  | {of: 'glue-up-face'; setting: {fromMm?: number[] | undefined} & Clamped}
  | {of: 'glue-up-board'; setting: {fromMm: number; toMm?: number | undefined} & Clamped}
  | {of: 'sand-board'; setting: {radiusMm: number}; sagittaMm: number; isSlotted: boolean}
  | {of: 'plane-sides'; setting?: {nutMm: number; tailMm?: number | undefined} | undefined}
  | {
      of: 'round-over'
      /** The stops are for the bit's centre, which cuts further by its run-in. */
      setting: {radiusMm: number; stops?: {fromMm: number; toMm: number; runInMm: number} | undefined}
    }
  | {
      of: 'mark-lines'
      setting?: undefined
      /** Sanding took the nut line and the centre line. */
      isSanded: boolean
      onBoard: boolean
      fretted: boolean
      length: AsWritten
      last: {label: string; mark: string}
    }
  | {
      of: 'slot-frets'
      setting?: {kerfMm?: number | undefined; depthMm?: number | undefined} | undefined
      onBoard: boolean
      /** One of them on the nut line. */
      hasZero: boolean
      /** Of the last fret, where there are others than that. */
      lastMark?: string | undefined
    }
  | {of: 'burn-marks'; setting?: undefined; burnt: ('lines' | 'dots')[]}
  | {
      of: 'fret'
      setting?: {pieces: number; wireMm: number; overhangMm: number} | undefined
      isFretted: boolean
      hasZero: boolean
    }
  | {
      of: 'cut-rod'
      setting?: {thick?: AsWritten | undefined; long?: AsWritten | undefined} | undefined
      for: 'nut' | 'bridge'
      rod: 'rod' | 'bolt'
    }
  | {of: 'fasten-hardware'; setting?: undefined; anchors?: string | undefined; extras: string[]}
  | {
      of: 'fasten'
      setting?:
        | {
            screws?: DrivenScrews | undefined
            shimMm?: number | undefined
            gapMm?: number | undefined
          }
        | undefined
      by: 'glue' | 'screws'
      length?: AsWritten | undefined
    }
  | {of: 'wire'; setting?: undefined; under?: string | undefined}
  | {of: 'fasten-top'; setting?: {screws: DrivenScrews} | undefined; held: string}
  | {of: 'string'; setting?: {strings: string[]} | undefined; setBack?: SetBack | undefined}
  | {
      of: 'set-up'
      setting?: {nut?: AsWritten | undefined; octave?: AsWritten | undefined} | undefined
      isFretted: boolean
    }
  | {
      of: 'box-prepare'
      setting?: undefined
      keepsPaper: boolean
      /** The paper comes off first; the centre line waits for that. */
      isStripped: boolean
      sizes: AsWritten[]
    }
  | {of: 'fit-blocks'; setting: Clamped; count: number}
  | {
      of: 'notch-box'
      setting: {
        width: AsWritten
        depth: AsWritten
        tailWidthMm?: number | undefined
        topOffMm?: number | undefined
      }
      bothEnds: boolean
    }
  | {of: 'sand'; setting?: undefined; keepsPaper: boolean}
  | {
      of: 'finish'
      setting?: {betweenH: number} | undefined
      /** As the file names it. */
      name: string
      coats: number
      on?: string | undefined
      /** What is glued later, and so kept bare. */
      bare: BareFace[]
      /** The file lists it in another order. */
      isMoved: boolean
      isOil: boolean
    }

export type DrillStep = 'drill-head' | 'drill-neck' | 'drill-top' | 'drill-box'

export interface SawnPart {
  name: string
  lengthMm: number
  widthMm: number
}

/** A short part as it is trimmed, in mm. */
export interface TrimmedPart extends SawnPart {
  thicknessMm: number
}

/** A lamination, or each strip of one, before the neck is glued up, in mm. */
export interface PlanedLayer {
  of: string
  thicknessMm: number
  strips: number
  stripMm: number
}

/** A face that is glued after the finish: where neck and box meet, and the rim under the top. */
export type BareFace = 'joint' | 'rim'

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

/** Say what one group of the work asks of this build; in the order in which it would be done if nothing forbade it. */
export type WorkGroup = (facts: WorkFacts) => StepDraft[]

/** What is made. */
export interface Design {
  scale: Scale | undefined
  strings: readonly StringPlan[] | undefined
  bridge: Bridge | undefined
  neck: Neck | undefined
  box: Box | undefined
  layout: readonly Station[] | undefined
  holes: readonly Hole[] | undefined
  /** Its screws, one each. */
  fasteners: readonly Pick<Fastener, 'of' | 'joinsNeck' | 'holdsTop'>[] | undefined
  cuts: Cuts | undefined
}

/** What decides which steps a build takes: its values, and what is made of them. */
export interface WorkFacts {
  values: BuildValues
  design: Design
  /** Take a length as the file writes it, with its unit. */
  asWritten: (length: Length) => AsWritten
  isFretted: boolean
  /** A fret on the nut line, whether or not there are others. */
  hasZero: boolean
  /** Frets are sawn into a board of their own, before it is glued on. */
  hasBoard: boolean
}

/** Gather what the groups of steps ask. */
export function workFacts(settled: Settled, design: Design): WorkFacts {
  const {values, units} = settled
  return {
    values,
    design,
    asWritten: (length) => ({
      mm: length.mm,
      text: length.assumed ? undefined : withUnit(length, units),
    }),
    isFretted: values.scale?.fretted?.value === true,
    hasZero: values.nut?.kind?.value === 'zero-fret',
    hasBoard: values.fingerboard !== undefined,
  }
}

/** Give the hours until a glued joint may be worked, by the neck's glue, and until its clamps may come off. */
export function glueWait({values: {neck}}: WorkFacts): {waitH: number; clampsH: number} {
  const glue = neck?.glue?.value ?? ''
  const isNamed = named(glue)
  const row = glueWaits.find(({words}) => isNamed(words)) ?? usualGlue
  return {waitH: row.lastH, clampsH: row.firstH}
}

/** Say which faces are glued once the finish is on. */
export function bareFaces({values, design}: WorkFacts): BareFace[] {
  return [
    ...(isGluedOn(values, design) ? ['joint' as const] : []),
    ...(values.box?.top?.held?.value === 'glued' ? ['rim' as const] : []),
  ]
}

/** Neck and box are glued together where no screw of the file holds them. */
export const isGluedOn = ({box, neck}: BuildValues, {fasteners = []}: Design) =>
  box !== undefined && neck !== undefined && !fasteners.some(({joinsNeck}) => joinsNeck)

/** Say which screws are driven in a step: how many, and what the file says of the first of them. */
export function drivenIn(
  {values, design, asWritten}: WorkFacts,
  is: (screw: NonNullable<Design['fasteners']>[number]) => boolean,
): DrivenScrews | undefined {
  const driven = (design.fasteners ?? []).filter(is)
  const row = values.screws?.[Number(driven[0]?.of.split('.')[1]) - 1]
  if (!row?.size) return undefined
  return {count: driven.length, size: row.size.text, length: row.length && asWritten(row.length)}
}

/** Take the ids of the parts to cut that come from some paths of the build file. */
export function partsOf({cuts}: Design, is: (path: string) => boolean): string[] {
  return (cuts?.parts ?? []).flatMap(({id, of}) => (is(of) ? [id] : []))
}

/** Make the step that drills all holes of some faces, in the order of bit changes; none where there are none. */
export function holesOn(
  {design: {holes = []}}: WorkFacts,
  faces: readonly Face[],
  draft: {of: DrillStep; after: readonly string[]},
): StepDraft[] {
  const here = holes.filter(({face}) => faces.includes(face))
  if (here.length === 0) return []
  const bits = here.flatMap(({bit}) => bit ?? [])
  return [
    {
      id: draft.of,
      kind: draft.of,
      facts: {of: draft.of, setting: bits.length > 0 ? {bits} : undefined},
      tool: 'drill press',
      after: draft.after,
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
  return (layout ?? []).flatMap(({what, stationMm}) => (kinds.includes(what.kind) ? [{what, stationMm}] : []))
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
