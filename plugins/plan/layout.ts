import {nearestMark} from '../build-file/quantities/write-length.ts'
import type {BuildValues} from '../build-file/schema.ts'
import type {Box} from './box/box.ts'
import type {Outline} from './outline.ts'
import type {Scale} from './scale.ts'
import type {Settled} from './settle.ts'
import type {Placed} from './tuners.ts'

/** A place along the neck, in mm, measured from the nut line and from both ends. */
export interface Station extends Place {
  /** From the head end. */
  fromHeadMm?: number | undefined
  /** From the tail end. */
  fromTailMm?: number | undefined
  /** The nearest mark of the maker’s ruler. */
  mark: string
  /** Mark less the exact place. */
  markErrorMm: number
}

interface Place {
  kind: StationKind
  /** In a maker’s words. */
  what: string
  /** From the nut line; behind it negative, along the head’s own face. */
  stationMm: number
  /** Off the centre line, where that matters. */
  offMm?: number[] | undefined
}

export type StationKind =
  | 'head end'
  | 'tuner'
  | 'slope'
  | 'nut'
  | 'line'
  | 'dot'
  | 'round-over'
  | 'box edge'
  | 'screw'
  | 'sound hole'
  | 'bridge'
  | 'anchor'
  | 'tail end'

/** What has its place along the neck. */
interface Marked {
  scale: Scale | undefined
  /** The neck, head end to tail end, where that is more than the file says. */
  neckLengthMm: number | undefined
  tuners: readonly Placed[] | undefined
  anchors: readonly Placed[] | undefined
  screws: readonly {stationMm: number; offMm: number}[] | undefined
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
  return places(values, marked, tailMm)
    .map((place): Station => {
      const {stationMm} = place
      const mark = nearestMark(stationMm, {units, rulerMm})
      return {
        ...place,
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
function places(values: BuildValues, marked: Marked, tailMm: number | undefined): Place[] {
  return [
    ...ends(values, tailMm),
    ...head(values, marked.tuners),
    {kind: 'nut', what: 'nut line', stationMm: 0},
    ...lines(marked.scale),
    ...box(marked),
    ...across('screw', marked.screws ?? [], (count) => (count > 1 ? `${count} screws` : 'screw')),
    ...(marked.bridge
      ? [{kind: 'bridge' as const, what: 'bridge line', stationMm: marked.bridge.stationMm}]
      : []),
    ...across('anchor', marked.anchors ?? [], (count) => (count > 1 ? 'string anchors' : 'string anchor')),
  ]
}

function ends({head: {length} = {}}: BuildValues, tailMm: number | undefined): Place[] {
  return [
    ...(length ? [{kind: 'head end' as const, what: 'head end', stationMm: -length.mm}] : []),
    ...(tailMm === undefined ? [] : [{kind: 'tail end' as const, what: 'tail end', stationMm: tailMm}]),
  ]
}

function head({head: {joint, ledge} = {}}: BuildValues, tuners: readonly Placed[] = []): Place[] {
  const slopes = joint?.value === 'scarf' && ledge !== undefined && ledge.mm > 0
  return [
    ...(slopes ? [{kind: 'slope' as const, what: 'head’s slope starts', stationMm: -ledge.mm}] : []),
    ...tuners.map(
      ({name, stationMm, offMm}): Place => ({
        kind: 'tuner',
        what: name ? `tuner ${name}` : 'tuner',
        stationMm,
        offMm: [offMm],
      }),
    ),
  ]
}

function lines(scale: Scale | undefined): Place[] {
  const dots = scale?.dots ?? []
  const all = scale?.lines ?? []
  const onLine = new Set(
    dots.filter((dot) => all.some((line) => line.label === dot.label && line.fromNutMm === dot.stationMm)),
  )
  const dotted = new Set([...onLine].map(({label}) => label))
  return [
    ...all.map(
      ({label, fromNutMm}): Place => ({
        kind: 'line',
        what: `${scale?.fretted ? 'fret' : 'line'} ${label}${dotted.has(label) ? ', dot' : ''}`,
        stationMm: fromNutMm,
      }),
    ),
    ...dots
      .filter((dot) => !onLine.has(dot))
      .map(({label, stationMm}): Place => ({kind: 'dot', what: `dot ${label}`, stationMm})),
  ]
}

function box({box: {atMm, tailMm, soundHoles = []} = {}, outline}: Marked): Place[] {
  const {fromMm, toMm} = outline?.neck?.roundOver ?? {}
  const edge = (what: string, stationMm: number | undefined, kind: StationKind = 'box edge'): Place[] =>
    stationMm === undefined ? [] : [{kind, what, stationMm}]
  return [
    ...edge('round-over starts', fromMm, 'round-over'),
    ...edge('round-over stops', toMm, 'round-over'),
    ...edge('box, head side', atMm),
    ...edge('box, tail side', tailMm),
    ...soundHoles.map(
      ({stationMm, offMm}): Place => ({
        kind: 'sound hole',
        what: 'sound hole, centre',
        stationMm,
        offMm: [offMm],
      }),
    ),
  ]
}

/** Gather what stands in one row across the neck. */
function across(
  kind: StationKind,
  places: readonly {stationMm: number; offMm: number}[],
  what: (count: number) => string,
): Place[] {
  const rows = new Map<number, number[]>()
  for (const {stationMm, offMm} of places) rows.set(stationMm, [...(rows.get(stationMm) ?? []), offMm])
  return [...rows].map(([stationMm, offMm]) => ({kind, what: what(offMm.length), stationMm, offMm}))
}
