import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Length} from '../../build-file/schema/values.ts'
import {withUnit} from '../../build-file/writing/give-units.ts'
import {glueWaits, usualGlue} from '../../tables/waits.ts'
import type {Bridge} from '../action/bridge.ts'
import type {Box} from '../box/box.ts'
import type {Fastener} from '../fasteners/fastener.ts'
import type {Face, Hole} from '../kit/hole.ts'
import type {Settled} from '../kit/settled.ts'
import type {Station, StationKind} from '../layout/layout.ts'
import type {Neck} from '../neck/neck.ts'
import type {Scale} from '../scale/scale.ts'
import type {Cuts} from '../stock/cut-list.ts'
import type {StringPlan} from '../strings/strings.ts'
import type {StepDraft, StepStation} from './step.ts'
import type {AsWritten, BareFace, DrillStep, DrivenScrews} from './step-facts.ts'

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
      stations: here.map(({what, face, stationMm, alongMm, offMm, bit, depthMm}) => ({
        what,
        stationMm,
        alongMm,
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

/** What a heading says after one of these is still to come. */
const notYet = /\b(all but|before|without|no|not|waiting|ready for|for)\b.*$/is

/** Tell by its words whether headings of days and ticked tasks say that a step is done. */
export const told = (texts: readonly string[]): ((words: readonly string[]) => boolean) =>
  named(texts.map((text) => text.replace(notYet, '')).join(' / '))
