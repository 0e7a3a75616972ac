import {nearestMark} from '../build-file/quantities/write-length.ts'
import type {BuildValues} from '../build-file/schema.ts'
import type {PlanPart} from './part.ts'
import type {Plan} from './plan.ts'

export interface Station {
  /** head end, tuner, slope, nut, line, dot, round-over, box edge, screw, sound hole, bridge, anchor or tail end. */
  kind: string
  /** In a maker’s words. */
  what: string
  /** From the nut line; behind it negative, along the head’s own face. */
  stationMm: number
  /** Off the centre line, where that matters. */
  offMm?: number[] | undefined
  /** From the head end. */
  fromHeadMm?: number | undefined
  /** From the tail end. */
  fromTailMm?: number | undefined
  /** The nearest mark of the maker’s ruler. */
  mark: string
  /** Mark less the exact place. */
  markErrorMm: number
}

/**
 * List every station of the instrument in order, head end to tail end: mm from the nut line, from the head end and
 * from the tail end, with the nearest mark of the maker's ruler. Absent without a scale length.
 */
export const layout: PlanPart = ({values, units, rulerMm}, soFar) => {
  if (soFar.scale?.lengthMm === undefined) return {}
  const headMm = values.head?.length?.mm
  const lengthMm = soFar.neck?.budget?.lengthMm ?? values.neck?.length?.mm
  const tailMm = headMm === undefined || lengthMm === undefined ? undefined : lengthMm - headMm
  const ruler = {units, rulerMm}
  const layout = stations(values, soFar, tailMm).map(({kind, what, stationMm, offMm}) => {
    const mark = nearestMark(stationMm, ruler)
    const station: Station = {kind, what, stationMm, mark: mark.text, markErrorMm: mark.mm - stationMm}
    if (offMm) station.offMm = offMm
    if (headMm !== undefined) station.fromHeadMm = stationMm + headMm
    if (tailMm !== undefined) station.fromTailMm = tailMm - stationMm
    return station
  })
  return {layout: layout.sort((a, b) => a.stationMm - b.stationMm)}
}

/** A place along the neck, before it is measured from both ends. */
interface Place {
  kind: string
  what: string
  stationMm: number
  offMm?: number[]
}

/**
 * List every place along the neck that is marked out or worked at, in no order: mm from the nut line.
 * Screws and anchors in one row across count once, and so does a dot that lies on its line.
 */
function stations(values: BuildValues, plan: Plan, tailMm: number | undefined): Place[] {
  return [
    ...ends(values, tailMm),
    ...head(values, plan),
    {kind: 'nut', what: 'nut line', stationMm: 0},
    ...lines(plan),
    ...box(plan),
    ...across('screw', plan.screws ?? [], (count) => (count > 1 ? `${count} screws` : 'screw')),
    ...(plan.bridge ? [{kind: 'bridge', what: 'bridge line', stationMm: plan.bridge.stationMm}] : []),
    ...across('anchor', plan.anchors ?? [], (count) => (count > 1 ? 'string anchors' : 'string anchor')),
  ]
}

function ends({head: {length} = {}}: BuildValues, tailMm: number | undefined): Place[] {
  return [
    ...(length ? [{kind: 'head end', what: 'head end', stationMm: -length.mm}] : []),
    ...(tailMm === undefined ? [] : [{kind: 'tail end', what: 'tail end', stationMm: tailMm}]),
  ]
}

function head({head: {joint, ledge} = {}}: BuildValues, {tuners = []}: Plan): Place[] {
  const slopes = joint?.value === 'scarf' && ledge !== undefined && ledge.mm > 0
  return [
    ...(slopes ? [{kind: 'slope', what: 'head’s slope starts', stationMm: -ledge.mm}] : []),
    ...tuners.map(({name, stationMm, offMm}) => ({
      kind: 'tuner',
      what: name ? `tuner ${name}` : 'tuner',
      stationMm,
      offMm: [offMm],
    })),
  ]
}

function lines({scale}: Plan): Place[] {
  const dots = scale?.dots ?? []
  const all = scale?.lines ?? []
  const onLine = new Set(
    dots.filter((dot) => all.some((line) => line.label === dot.label && line.fromNutMm === dot.stationMm)),
  )
  const dotted = new Set([...onLine].map(({label}) => label))
  return [
    ...all.map(({label, fromNutMm}) => ({
      kind: 'line',
      what: `${scale?.fretted ? 'fret' : 'line'} ${label}${dotted.has(label) ? ', dot' : ''}`,
      stationMm: fromNutMm,
    })),
    ...dots
      .filter((dot) => !onLine.has(dot))
      .map(({label, stationMm}) => ({kind: 'dot', what: `dot ${label}`, stationMm})),
  ]
}

function box({box: place, outline}: Plan): Place[] {
  const {atMm, tailMm, soundHoles = []} = place ?? {}
  const {fromMm, toMm} = outline?.neck?.roundOver ?? {}
  const edge = (what: string, stationMm: number | undefined, kind = 'box edge') =>
    stationMm === undefined ? [] : [{kind, what, stationMm}]
  return [
    ...edge('round-over starts', fromMm, 'round-over'),
    ...edge('round-over stops', toMm, 'round-over'),
    ...edge('box, head side', atMm),
    ...edge('box, tail side', tailMm),
    ...soundHoles.map(({stationMm, offMm}) => ({
      kind: 'sound hole',
      what: 'sound hole, centre',
      stationMm,
      offMm: [offMm],
    })),
  ]
}

/** Gather what stands in one row across the neck. */
function across(
  kind: string,
  places: readonly {stationMm: number; offMm: number}[],
  what: (count: number) => string,
): Place[] {
  const rows = new Map<number, number[]>()
  for (const {stationMm, offMm} of places) rows.set(stationMm, [...(rows.get(stationMm) ?? []), offMm])
  return [...rows].map(([stationMm, offMm]) => ({kind, what: what(offMm.length), stationMm, offMm}))
}
