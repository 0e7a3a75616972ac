import type {Plan} from '../../plan/plan.ts'
import {placedBox} from '../instrument/box.ts'
import {handOf} from '../instrument/hand.ts'
import {neckWidth} from '../instrument/neck.ts'
import type {Span} from '../kit/dimensions.ts'
import type {Note} from '../kit/notes.ts'
import {diameterOf, figureOf} from '../words.ts'
import {offSpans} from './view.ts'

type StationKey = 'head' | 'nut' | 'octave' | 'box' | 'bridge' | 'anchors' | 'boxTail' | 'tail'

/** A place that makers measure to: mm from the nut line, and how far from the centre line it reaches. */
interface Station {
  key: StationKey
  name: string
  stationMm: number
  halfWidthMm: number
}

/** List the places along an instrument that its drawing names, head end to tail end, as far as they are known. */
function stations(plan: Plan): Station[] {
  const {outline, scale, bridge, anchors = []} = plan
  const {neck, head} = outline ?? {}
  const box = placedBox(plan)
  const octave = scale?.lines?.find(({semitones}) => Math.abs(semitones - 12) < 0.01)
  const half = (stationMm = 0) => (neck ? neckWidth(neck, stationMm) / 2 : 0)
  const list: Station[] = []
  const add = (key: StationKey, name: string, stationMm: number | undefined, halfWidthMm: number) => {
    if (stationMm !== undefined) list.push({key, name, stationMm, halfWidthMm})
  }
  add('head', 'head end', head && -head.lengthMm, (head?.widthMm ?? 0) / 2)
  add('nut', 'nut line', neck && 0, half(0))
  add(
    'octave',
    `${scale?.fretted ? 'fret' : 'line'} ${octave?.label}`,
    octave?.fromNutMm,
    half(octave?.fromNutMm),
  )
  add('box', 'box, head side', box?.atMm, (box?.widthMm ?? 0) / 2)
  add('bridge', 'bridge line', bridge?.stationMm, (outline?.bridge?.lengthMm ?? 0) / 2)
  add(
    'anchors',
    'string anchors',
    anchors[0]?.stationMm,
    Math.max(0, ...anchors.map(({offMm}) => Math.abs(offMm))) + (outline?.anchors?.bodyMm ?? 0) / 2,
  )
  add('boxTail', 'box, tail side', box?.tailMm, (box?.widthMm ?? 0) / 2)
  add('tail', 'tail end', neck?.isOpen ? undefined : neck?.tailMm, half(neck?.tailMm))
  return list.sort((a, b) => a.stationMm - b.stationMm)
}

const mostHoles = 4

/** Name the places along an instrument at its left, each with its figure from the nut line. */
export function topNotes(plan: Plan, leftOf: (halfWidthMm: number) => number): Note[] {
  const places = stations(plan).map(
    ({name, stationMm, halfWidthMm}): Note => ({
      at: [leftOf(halfWidthMm), stationMm],
      name,
      ...(stationMm === 0 ? {} : {figure: figureOf(stationMm, plan)}),
    }),
  )
  return [...places, ...holeNotes(plan, leftOf)]
}

/** One note a row of equal holes; of many rows only the first and the last. */
function holeNotes(plan: Plan, leftOf: (halfWidthMm: number) => number): Note[] {
  const hand = handOf(plan)
  const rows = new Map<string, {stationMm: number; diameterMm: number; left: number; count: number}>()
  for (const {stationMm, offMm, diameterMm} of plan.box?.soundHoles ?? []) {
    const key = `${stationMm.toFixed(2)} ${diameterMm.toFixed(2)}`
    const left = -hand.x(offMm) + diameterMm / 2
    const row = rows.get(key) ?? {stationMm, diameterMm, left, count: 0}
    rows.set(key, {...row, left: Math.max(left, row.left), count: row.count + 1})
  }
  const sorted = [...rows.values()].sort((a, b) => a.stationMm - b.stationMm)
  const kept = sorted.length > mostHoles ? [sorted[0]!, sorted.at(-1)!] : sorted
  return kept.map(({stationMm, diameterMm, left, count}) => ({
    at: [leftOf(left), stationMm],
    name: `${count === 1 ? 'hole' : `${count} holes`} ${diameterOf(diameterMm, plan)}`,
    figure: figureOf(stationMm, plan),
  }))
}

/** The dimensions down the right of an instrument: head, nut to box to bridge to tail, scale length and overall. */
export function spansAlong(plan: Plan): Span[] {
  const places = stations(plan)
  const find = (key: StationKey) => places.find((place) => place.key === key)
  const span = (fromKey: StationKey, toKey: StationKey): Span[] => {
    const [from, to] = [find(fromKey), find(toKey)]
    return from && to && Math.abs(to.stationMm - from.stationMm) > 0.01
      ? [
          {
            from: from.stationMm,
            to: to.stationMm,
            fromEdge: from.halfWidthMm,
            toEdge: to.halfWidthMm,
            figure: figureOf(Math.abs(to.stationMm - from.stationMm), plan),
          },
        ]
      : []
  }
  return [
    ...span('head', 'nut'),
    ...span('nut', 'box'),
    ...span('box', 'bridge'),
    ...span('bridge', 'boxTail'),
    ...span('nut', 'bridge'),
    ...span('head', 'tail'),
  ]
}

/** The dimensions across: the box, and sound holes off the centre line. They start at the box's tail edge. */
export function spansAcross(plan: Plan): Span[] {
  const {neck} = plan.outline ?? {}
  const box = placedBox(plan)
  const tail = Math.max(box?.tailMm ?? 0, neck?.tailMm ?? 0)
  const width = (mm: number, edge: number): Span => ({
    from: -mm / 2,
    to: mm / 2,
    fromEdge: edge,
    toEdge: edge,
    figure: figureOf(mm, plan),
  })
  return [
    ...offSpans(plan.box?.soundHoles ?? [], handOf(plan), plan, tail, 3),
    ...(box ? [width(box.widthMm, box.tailMm)] : []),
    ...(neck && neck.tailWidthMm !== neck.nutWidthMm ? [width(neck.tailWidthMm, neck.tailMm)] : []),
  ]
}
