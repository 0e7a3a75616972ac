import {nearestMark} from '../../build-file/quantities/write-length.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Box} from '../box/box.ts'
import type {Settled} from '../kit/settled.ts'
import type {Scale} from '../scale/scale.ts'
import type {Placed} from '../strings/tuners.ts'
import type {Outline} from './outline.ts'

/** A place along the neck, in mm, measured from the nut line and from both ends. */
export interface Station extends Spot {
  /** From the head end. */
  fromHeadMm?: number | undefined
  /** From the tail end. */
  fromTailMm?: number | undefined
  /** The nearest mark of the maker’s ruler. */
  mark: string
  /** Mark less the exact place. */
  markErrorMm: number
}

interface Spot {
  what: Place
  /** From the nut line; behind it negative, along the head’s own face. */
  stationMm: number
  /** Off the centre line, where that matters. */
  offMm?: number[] | undefined
  /** The file does not place it: a place that would work. */
  proposed?: true | undefined
}

/** What is at a place: which line, which string's tuner, which end of the box, how many across. */
export type Place =
  | {kind: 'head end' | 'slope' | 'nut' | 'sound hole' | 'bridge' | 'tail end'}
  | {kind: 'tuner'; string?: string | undefined}
  | {kind: 'line'; label: string; isFret: boolean; hasDot: boolean}
  | {kind: 'dot'; label: string}
  | {kind: 'round-over' | 'box edge'; end: 'head' | 'tail'}
  | {kind: 'screw' | 'anchor'; count: number}

export type StationKind = Place['kind']

/** One of those that stand in a row across the neck. */
interface Row extends Pick<Placed, 'stationMm' | 'offMm' | 'proposed'> {}

/** What has its place along the neck. */
interface Marked {
  scale: Scale | undefined
  /** The neck, head end to tail end, where that is more than the file says. */
  neckLengthMm: number | undefined
  tuners: readonly Placed[] | undefined
  anchors: readonly Placed[] | undefined
  screws: readonly Row[] | undefined
  bridge: {stationMm: number} | undefined
  box: Box | undefined
  outline: Outline | undefined
}

/**
 * List every station of the instrument in order, head end to tail end, with the nearest mark of the maker's ruler.
 * Undefined without a scale length.
 */
export function planLayout({values, units, rulerMm}: Settled, marked: Marked): Station[] | undefined {
  if (marked.scale?.lengthMm === undefined) return undefined
  const headMm = values.head?.length?.mm
  const lengthMm = marked.neckLengthMm ?? values.neck?.length?.mm
  const tailMm = headMm === undefined || lengthMm === undefined ? undefined : lengthMm - headMm
  const ruler = {units, rulerMm}
  return places(values, marked, tailMm)
    .map(({what, stationMm, offMm, proposed}): Station => {
      const mark = nearestMark(stationMm, ruler)
      return {
        what,
        stationMm,
        offMm,
        proposed,
        fromHeadMm: headMm === undefined ? undefined : stationMm + headMm,
        fromTailMm: tailMm === undefined ? undefined : tailMm - stationMm,
        mark: mark.text,
        markErrorMm: mark.mm - stationMm,
      }
    })
    .sort((a, b) => a.stationMm - b.stationMm)
}

/**
 * List every place along the neck that is marked out or worked at, in no order: mm from the nut line.
 * Screws and anchors in one row across count once, and so does a dot that lies on its line.
 */
function places(values: BuildValues, marked: Marked, tailMm: number | undefined): Spot[] {
  return [
    ...ends(values, tailMm),
    ...head(values, marked.tuners),
    {what: {kind: 'nut'}, stationMm: 0},
    ...at({kind: 'line', label: '0', isFret: true, hasDot: false}, hasZeroFret(values) ? 0 : undefined),
    ...lines(marked.scale),
    ...box(marked),
    ...across('screw', marked.screws),
    ...at({kind: 'bridge'}, marked.bridge?.stationMm),
    ...across('anchor', marked.anchors),
  ]
}

const hasZeroFret = ({nut}: BuildValues) => nut?.kind?.value === 'zero-fret'

function at(what: Place, stationMm: number | undefined): Spot[] {
  return stationMm === undefined ? [] : [{what, stationMm}]
}

function ends({head: {length} = {}}: BuildValues, tailMm: number | undefined): Spot[] {
  return [...at({kind: 'head end'}, length && -length.mm), ...at({kind: 'tail end'}, tailMm)]
}

function head({head: {joint, ledge} = {}}: BuildValues, tuners: readonly Placed[] = []): Spot[] {
  const slopes = joint?.value === 'scarf' && ledge !== undefined && ledge.mm > 0
  return [
    ...at({kind: 'slope'}, slopes ? -ledge.mm : undefined),
    ...tuners.map(
      ({name, stationMm, offMm, proposed}): Spot => ({
        what: {kind: 'tuner', string: name},
        stationMm,
        offMm: [offMm],
        proposed,
      }),
    ),
  ]
}

function lines(scale: Scale | undefined): Spot[] {
  const dots = scale?.dots ?? []
  const all = scale?.lines ?? []
  const onLine = new Set(
    dots.filter((dot) => all.some((line) => line.label === dot.label && line.fromNutMm === dot.stationMm)),
  )
  const dotted = new Set([...onLine].map(({label}) => label))
  return [
    ...all.map(
      ({label, fromNutMm}): Spot => ({
        what: {kind: 'line', label, isFret: scale?.fretted === true, hasDot: dotted.has(label)},
        stationMm: fromNutMm,
      }),
    ),
    ...dots
      .filter((dot) => !onLine.has(dot))
      .map(({label, stationMm}): Spot => ({what: {kind: 'dot', label}, stationMm})),
  ]
}

function box({box: {atMm, tailMm, soundHoles = []} = {}, outline}: Marked): Spot[] {
  const {fromMm, toMm} = outline?.neck?.roundOver ?? {}
  return [
    ...at({kind: 'round-over', end: 'head'}, fromMm),
    ...at({kind: 'round-over', end: 'tail'}, toMm),
    ...at({kind: 'box edge', end: 'head'}, atMm),
    ...at({kind: 'box edge', end: 'tail'}, tailMm),
    ...soundHoles.map(
      ({stationMm, offMm, proposed}): Spot => ({
        what: {kind: 'sound hole'},
        stationMm,
        offMm: [offMm],
        proposed,
      }),
    ),
  ]
}

/** Gather what stands in one row across the neck. */
function across(kind: 'screw' | 'anchor', places: readonly Row[] = []): Spot[] {
  const rows = new Map<number, Row[]>()
  for (const one of places) rows.set(one.stationMm, [...(rows.get(one.stationMm) ?? []), one])
  return [...rows].map(([stationMm, row]) => ({
    what: {kind, count: row.length},
    stationMm,
    offMm: row.map(({offMm}) => offMm),
    proposed: row[0]!.proposed,
  }))
}
