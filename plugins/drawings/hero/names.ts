import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Plan} from '../../plan/plan.ts'
import {shortNames} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {sideWords} from '../../words/sides.ts'
import {tunersFront} from '../instrument/hardware.ts'
import {type Instrument, outwards, placed} from '../instrument/instrument.ts'
import {extent} from '../kit/extent.ts'
import {spread} from '../kit/notes.ts'
import {type Station, type StationKey, stations} from '../views/top.ts'
import {type Frame, namesPx, textPx} from './frame.ts'

/** What the drawing names at its left: the stations, and the first sound hole. */
export type NamedKey = StationKey | 'hole'
/** What else it names: each post by its number in the file. */
export type PostKey = `post${number}`
/** Give the address of the row of what is named. */
export type Leads = (key: NamedKey | PostKey) => string | undefined

/** The paths of the build file that a station's place hangs on: in brackets where one of them is assumed or proposed. */
const hangsOn: Readonly<Record<NamedKey, readonly string[]>> = {
  headEnd: ['head.length'],
  nut: [],
  octave: [],
  boxHead: ['box.at', 'bridge.from-tail'],
  bridge: [],
  anchors: ['anchors', 'anchors.at'],
  boxTail: ['box.at', 'bridge.from-tail'],
  tailEnd: ['neck.length'],
  hole: ['box.holes'],
}

/** List what the drawing names at its left, down the page. */
export function namedStations(instrument: Instrument): (Omit<Station, 'key'> & {key: NamedKey})[] {
  const {plan, x} = instrument
  const [hole] = plan.box?.soundHoles ?? []
  const named = stations(instrument).map((one) => ({
    ...one,
    name: shortNames[one.key as keyof typeof shortNames] ?? one.name,
  }))
  const holes = hole
    ? [
        {
          key: 'hole' as const,
          name: (plan.box?.soundHoles?.length ?? 0) > 1 ? 'holes' : 'hole',
          stationMm: hole.stationMm,
          halfWidthMm: hole.diameterMm / 2 - x(hole.offMm),
        },
      ]
    : []
  return [...named, ...holes].sort((a, b) => a.stationMm - b.stationMm)
}

const nameHeightPx = 24

/** Write a station's name and figure, a label each, led to its place. */
export function stationNames(instrument: Instrument, frame: Frame, leads: Leads): Element[] {
  const all = namedStations(instrument)
  const at = (mm: number) => frame.nutPx + mm * frame.scale
  const places = spread(
    all.map(({stationMm}) => ({target: at(stationMm), size: nameHeightPx})),
    [0, frame.heightPx],
  )
  const leaders = all.map(({stationMm, halfWidthMm}, i) => {
    const to = frame.frontPx - halfWidthMm * frame.scale - 3
    const bend = Math.min(namesPx + 12, to)
    return `M${namesPx + 4} ${num(places[i]!)}L${num(bend)} ${num(at(stationMm))}H${num(to)}`
  })
  return [
    s('path', {className: ['lead'], fill: 'none', d: leaders.join('')}),
    ...all.map(({key, name, stationMm}, i) => {
      const figure = bareLength(Math.abs(stationMm), instrument.plan)
      const isAssumed = hangsOn[key].some((path) => assumes(instrument.plan, path))
      const label = s('text', {x: namesPx, y: num(places[i]! + 0.35 * textPx), textAnchor: 'end'}, [
        `${name} `,
        s('tspan', {className: ['at']}, isAssumed ? `(${figure})` : figure),
      ])
      return led(label, key, leads)
    }),
  ]
}

function led(label: Element, key: NamedKey | PostKey, leads: Leads): Element {
  const href = leads(key)
  return href ? s('a', {id: `on-${key}`, href}, [label]) : label
}

/** Is a value, or any below it, assumed or proposed? */
const assumes = ({assumptions}: Plan, path: string) =>
  assumptions.some((one) => one.path === path || one.path.startsWith(`${path}.`))

/** Say whether any figure of the drawing stands in brackets. */
export const hasBrackets = (instrument: Instrument): boolean =>
  namedStations(instrument).some(({key}) => hangsOn[key].some((path) => assumes(instrument.plan, path)))

/** Name each string at its post, outside the head; bass and treble at the box, or else at the neck's end. */
export function sideNames(instrument: Instrument, frame: Frame, leads: Leads): Element[] {
  return [...postNames(instrument, frame, leads), ...bassAndTreble(instrument, frame)]
}

function postNames(instrument: Instrument, {scale, nutPx, frontPx}: Frame, leads: Leads): Element[] {
  const {tuners = []} = instrument.plan
  const reach = extent(tunersFront(instrument))
  const {side} = instrument.plan.outline?.tuners ?? {}
  const outOf = (tuner: (typeof tuners)[number]) =>
    side === 'bass' || side === 'treble'
      ? outwards(instrument, side)
      : placed(instrument, tuner)[0] < 0
        ? -1
        : 1
  return ([-1, 1] as const).flatMap((out) => {
    const here = tuners
      .map((tuner, at) => ({...tuner, key: `post${at + 1}` as const}))
      .filter((tuner) => tuner.name && outOf(tuner) === out)
      .sort((a, b) => a.stationMm - b.stationMm)
    const places = spread(here.map(({stationMm}) => ({target: nutPx + stationMm * scale, size: 18})))
    const x = frontPx + (out < 0 ? reach.x : reach.x + reach.width) * scale + out * 5
    return here.map(({name = '', key}, i) => {
      const place = {x: num(x), y: num(places[i]! + 0.35 * textPx), ...(out < 0 && {textAnchor: 'end'})}
      return led(s('text', place, name), key, leads)
    })
  })
}

function bassAndTreble(instrument: Instrument, {scale, nutPx, frontPx}: Frame): Element[] {
  const {box, neck, halfMm} = instrument
  if (!neck || (instrument.plan.strings?.length ?? 0) < 2) return []
  const endMm = box ? box.tailMm : neck.tailMm
  const halfPx = (box ? box.widthMm / 2 : neck.tailWidthMm / 2) * scale
  const isWithin = box !== undefined && halfPx - halfMm(endMm) * scale > 44
  return (['bass', 'treble'] as const).map((side) => {
    const out = outwards(instrument, side)
    const x = frontPx + out * (isWithin ? halfPx - 3 : Math.max(halfPx, 22))
    const y = nutPx + endMm * scale + (isWithin ? -6 : textPx + 3)
    const anchor = isWithin === out > 0 ? 'end' : 'start'
    const properties = {x: num(x), y: num(y), textAnchor: anchor, className: isWithin ? ['on-wood'] : []}
    return s('text', properties, sideWords[side])
  })
}

/** Number lines beside the neck, the octaves first, then those with dots, where there is room down to the box. */
export function lineNumbers({plan, halfMm, box}: Instrument, {scale, nutPx, frontPx}: Frame): Element[] {
  const {lines = [], dots = []} = plan.scale ?? {}
  const dotted = new Set(dots.map(({label}) => label))
  const octaves = lines.filter(({semitones}) => Math.abs(semitones % 12) < 0.01)
  const wanted = [...octaves, ...lines.filter((one) => dotted.has(one.label) && !octaves.includes(one))]
  const endMm = (box?.atMm ?? Number.POSITIVE_INFINITY) - 8 / scale
  const shown: (typeof lines)[number][] = []
  for (const one of wanted) {
    const isFar = (other: (typeof lines)[number]) =>
      Math.abs(other.fromNutMm - one.fromNutMm) * scale >= nameHeightPx
    if (one.fromNutMm < endMm && one.fromNutMm * scale > 12 && shown.every(isFar)) shown.push(one)
  }
  return shown.map(({label, fromNutMm}) => {
    const x = frontPx + halfMm(fromNutMm) * scale + 6
    return s('text', {x: num(x), y: num(nutPx + fromNutMm * scale + 0.35 * textPx)}, label)
  })
}

export const num = (value: number): number => Number(value.toFixed(1))
