import type {Plan} from '../../plan/plan.ts'
import {placedBox} from '../instrument/box.ts'
import {type Hand, handOf} from '../instrument/hand.ts'
import {neckWidth} from '../instrument/neck.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {type Point, path, type Shape} from '../kit/shapes.ts'
import {diameterOf, lengthWords} from '../words.ts'
import {drilledHole, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the neck's playing face at full size, from where the head's slope starts (or from the nut line) to the tail:
 * edges, lines, dots, box edges, bridge line, ends of the round-over and holes. Mm from the nut line down.
 */
export function neckTemplate(plan: Plan): Template | undefined {
  const neck = plan.outline?.neck
  if (!neck) return undefined
  const hand = handOf(plan)
  const fromMm = -(plan.outline?.head?.ledgeMm ?? 0)
  const half = (stationMm: number) => neckWidth(neck, stationMm) / 2
  const side = (sign: number) =>
    path('cut', [sign * half(fromMm), fromMm], [sign * half(neck.tailMm), neck.tailMm])
  const end = (stationMm: number) => path('cut', [-half(stationMm), stationMm], [half(stationMm), stationMm])
  const stations = neckStations(plan)
  const across = stations.map(({stationMm, ink}) =>
    path(ink, [-half(stationMm), stationMm], [half(stationMm), stationMm]),
  )
  const holes = neckHoles(plan)
  const shapes: Shape[] = [
    path('centre', [0, fromMm - 4], [0, neck.tailMm + 4]),
    side(-1),
    side(1),
    ...(neck.isOpen ? [] : [end(neck.tailMm)]),
    ...across,
    ...stringTicks(plan, hand),
    ...dotTicks(plan, hand),
    ...holes.flatMap(({stationMm, offMm, diameterMm}) => drilledHole([hand.x(offMm), stationMm], diameterMm)),
  ]
  const widest = Math.max(half(fromMm), half(neck.tailMm))
  const note = (out: 1 | -1, stationMm: number, name: string): Note => ({
    at: [out * (half(stationMm) + 0.8), stationMm],
    name: stationMm === 0 ? name : `${name}: ${lengthWords(stationMm, plan)}`,
  })
  const right = stations.filter(({isLine}) => isLine).map(({stationMm, name}) => note(1, stationMm, name))
  const left = [
    ...stations.filter(({isLine}) => !isLine).map(({stationMm, name}) => note(-1, stationMm, name)),
    ...holes
      .filter(
        ({stationMm, what}, i) =>
          holes.findIndex((one) => one.stationMm === stationMm && one.what === what) === i,
      )
      .map(({stationMm, what, diameterMm}) => note(-1, stationMm, `${what} ${diameterOf(diameterMm, plan)}`)),
  ]
  shapes.push(
    ...notesColumn(right, {base: widest + 3, out: 1, textMm}),
    ...notesColumn(left, {base: -widest - 3, out: -1, textMm}),
  )
  return {name: 'neck', shapes, frame: extent(shapes, 2)}
}

/** Where each string crosses nut and bridge. */
function stringTicks({scale, bridge}: Plan, hand: Hand): Shape[] {
  const ticks = (offs: readonly number[] | undefined, stationMm: number | undefined) =>
    stationMm === undefined
      ? []
      : (offs ?? []).map((off) =>
          path('slot', [hand.x(off), stationMm - 2.5], [hand.x(off), stationMm + 2.5]),
        )
  return [...ticks(scale?.nutOffMm, 0), ...ticks(scale?.bridgeOffMm, bridge?.stationMm)]
}

/** Dots go on the player's edge: a short line over the edge for each. */
function dotTicks({scale, outline}: Plan, hand: Hand): Shape[] {
  const neck = outline!.neck!
  return (scale?.dots ?? []).flatMap(({stationMm, count, side}) => {
    const out = side === 'bass' ? hand.bass : -hand.bass
    const edge = (out * neckWidth(neck, stationMm)) / 2
    return Array.from({length: count}, (_, i) => {
      const y = stationMm + (i - (count - 1) / 2) * 4
      const at = (x: number): Point => [edge - out * x, y]
      return path('punch', at(0), at(3))
    })
  })
}

/** A line square across the neck, in mm from the nut line. */
interface NeckStation {
  stationMm: number
  name: string
  ink: 'pencil' | 'slot'
  isLine?: true
}

/** List everything that is drawn square across the neck; frets are sawn, all else is pencilled. */
function neckStations(plan: Plan): NeckStation[] {
  const {scale, bridge, outline} = plan
  const neck = outline!.neck!
  const box = placedBox(plan)
  const list: NeckStation[] = [{stationMm: 0, name: 'nut line', ink: 'slot'}]
  const pencil = (name: string, stationMm: number | undefined) => {
    if (stationMm !== undefined && stationMm <= neck.tailMm) list.push({stationMm, name, ink: 'pencil'})
  }
  for (const {label, fromNutMm} of scale?.lines ?? [])
    if (fromNutMm <= neck.tailMm)
      list.push({
        stationMm: fromNutMm,
        name: `${scale?.fretted ? 'fret' : 'line'} ${label}`,
        ink: scale?.fretted ? 'slot' : 'pencil',
        isLine: true,
      })
  pencil('bridge line', bridge?.stationMm)
  pencil('box, head side', box?.atMm)
  pencil('box, tail side', box?.tailMm)
  pencil('round-over starts', neck.roundOver?.fromMm)
  pencil('round-over stops', neck.roundOver?.toMm)
  pencil('fingerboard ends', neck.fingerboard?.toMm)
  if (outline?.head && outline.head.ledgeMm > 0) pencil('slope starts', -outline.head.ledgeMm)
  return list
}

/** A hole in the neck: mm from the nut line and off the centre line. */
interface NeckHole {
  stationMm: number
  offMm: number
  diameterMm: number
  what: string
}

/** List what is drilled from the playing face, or from the back and marked here; the widest where two share a place. */
function neckHoles({holes = []}: Plan): NeckHole[] {
  const places = new Map<string, NeckHole>()
  for (const {face, what, stationMm, offMm, diameterMm} of holes) {
    if (face !== 'playing face' && face !== 'neck back') continue
    const key = `${stationMm.toFixed(3)} ${offMm.toFixed(3)}`
    const known = places.get(key)
    if (!known || known.diameterMm < diameterMm)
      places.set(key, {stationMm, offMm, diameterMm, what: what.split(',')[0]!})
  }
  return [...places.values()].sort((a, b) => a.stationMm - b.stationMm)
}
