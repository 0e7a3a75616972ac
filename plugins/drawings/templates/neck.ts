import {inBrackets, lineName, placeNames, radiusOf} from '../../words/drawings/labels.ts'
import {neckHoleName, placeFrom, templateNames} from '../../words/drawings/templates.ts'
import {holeKind} from '../../words/holes.ts'
import {drilledIn, type Instrument, placed} from '../instrument/instrument.ts'
import {dotsAlong} from '../instrument/neck.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {across, arc, label, path, type Shape} from '../kit/shapes.ts'
import {drilledHole, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the neck's playing face at full size, from where the head's slope starts (or from the nut line) to the tail:
 * edges, lines, dots, box edges, bridge line, ends of the round-over and holes. Mm from the nut line down.
 */
export function neckTemplate(instrument: Instrument): Template | undefined {
  const {plan, neck, head, halfMm} = instrument
  if (!neck) return undefined
  const fromMm = -(head?.ledgeMm ?? 0)
  const {tailMm} = neck
  const lines = neckLines(instrument)
  const holes = neckHoles(instrument)
  const drawn: Shape[] = [
    path('centre', [0, fromMm - 4], [0, tailMm + 4]),
    ...[-1, 1].map((side) => path('cut', [side * halfMm(fromMm), fromMm], [side * halfMm(tailMm), tailMm])),
    ...(neck.isOpen ? [] : [across('cut', halfMm(tailMm), tailMm)]),
    ...lines.map(({stationMm, ink}) => across(ink, halfMm(stationMm), stationMm)),
    ...stringTicks(instrument),
    ...dotTicks(instrument),
    ...holes.flatMap((hole) => drilledHole(placed(instrument, hole), hole.diameterMm)),
  ]
  const widest = Math.max(halfMm(fromMm), halfMm(tailMm))
  const note = (out: 1 | -1, stationMm: number, name: string): Note => ({
    at: [out * (halfMm(stationMm) + 0.8), stationMm],
    name: stationMm === 0 ? name : placeFrom(name, stationMm, plan),
  })
  const [played, others] = [lines.filter(({isPlayed}) => isPlayed), lines.filter(({isPlayed}) => !isPlayed)]
  const right = played.map(({stationMm, name}) => note(1, stationMm, name))
  const left = [
    ...others.map(({stationMm, name}) => note(-1, stationMm, name)),
    ...holes
      .filter(({stationMm, what}, i) => {
        const first = holes.findIndex((one) => one.stationMm === stationMm && one.what === what)
        return first === i
      })
      .map(({stationMm, what, diameterMm, proposed}) => {
        const {name, ...bare} = note(-1, stationMm, neckHoleName(what, diameterMm, plan))
        return {...bare, name: inBrackets(name ?? '', proposed)}
      }),
  ]
  const shapes = [
    ...drawn,
    ...notesColumn(right, {base: widest + 3, out: 1, textMm}),
    ...notesColumn(left, {base: -widest - 3, out: -1, textMm}),
  ]
  return {name: templateNames.neck, shapes, frame: extent(shapes, 2)}
}

/** A line square across the neck, in mm from the nut line. */
interface NeckLine {
  stationMm: number
  name: string
  ink: 'pencil' | 'slot'
  /** A fret or a marker line, not a place of the neck's own. */
  isPlayed?: true
}

/** List everything that is drawn square across the neck; frets are sawn, all else is pencilled. */
function neckLines({plan, neck, head, box}: Instrument): NeckLine[] {
  const {scale, bridge} = plan
  const tailMm = neck?.tailMm ?? 0
  const pencil = (name: string, stationMm: number | undefined): NeckLine[] =>
    stationMm === undefined ? [] : [{stationMm, name, ink: 'pencil'}]
  const all: NeckLine[] = [
    ...(scale?.lines ?? []).map(
      ({label, fromNutMm}): NeckLine => ({
        stationMm: fromNutMm,
        name: lineName(label, scale?.fretted),
        ink: scale?.fretted ? 'slot' : 'pencil',
        isPlayed: true,
      }),
    ),
    ...pencil(placeNames.bridge, bridge?.stationMm),
    ...pencil(placeNames.boxHead, box?.atMm),
    ...pencil(placeNames.boxTail, box?.tailMm),
    ...pencil(placeNames.roundOverStarts, neck?.roundOver?.fromMm),
    ...pencil(placeNames.roundOverStops, neck?.roundOver?.toMm),
    ...pencil(placeNames.boardEnds, neck?.fingerboard?.toMm),
    ...(head && head.ledgeMm > 0 ? pencil(placeNames.slope, -head.ledgeMm) : []),
  ]
  return [
    {stationMm: 0, name: plan.nut?.kind === 'zero-fret' ? placeNames.zeroFret : placeNames.nut, ink: 'slot'},
    ...all.filter(({stationMm}) => stationMm <= tailMm),
  ]
}

/** List what is drilled from the playing face, or from the back and marked here, in order from the nut. */
const neckHoles = ({plan}: Instrument) =>
  drilledIn(plan, ['playing face', 'neck back'])
    .map((hole) => ({...hole, what: holeKind(hole.what)}))
    .sort((a, b) => a.stationMm - b.stationMm)

/** Where each string crosses nut and bridge. */
function stringTicks({plan: {scale, bridge}, x}: Instrument): Shape[] {
  const ticks = (offs: readonly number[] = [], stationMm: number) =>
    offs.map((off) => path('slot', [x(off), stationMm - 2.5], [x(off), stationMm + 2.5]))
  return [...ticks(scale?.nutOffMm, 0), ...(bridge ? ticks(scale?.bridgeOffMm, bridge.stationMm) : [])]
}

/** Dots go on the player's edge: a short line over the edge for each. */
const dotTicks = (instrument: Instrument): Shape[] =>
  dotsAlong(instrument, 4).map(({stationMm, out, halfMm}) =>
    path('punch', [out * halfMm, stationMm], [out * halfMm - out * 3, stationMm]),
  )

/** How far it reaches past the board on both sides, and how high it stands over the arc (mm). */
const pastMm = 5
const overMm = 15

/**
 * Draw the gauge of a round fingerboard at full size: a card with the board's own curve cut out of its lower edge, to
 * stand across the board while it is sanded. Mm from the middle of its upper edge.
 */
export function radiusGauge({plan}: Instrument): Template | undefined {
  const {radiusMm = 0, checks = []} = plan.neck?.boardRadius ?? {}
  if (checks.length === 0) return undefined
  const boardMm = Math.max(...checks.map(({widthMm}) => widthMm / 2))
  const halfMm = Math.min(boardMm + pastMm, radiusMm)
  const centreMm = overMm + radiusMm
  const cornerMm = centreMm - Math.sqrt(radiusMm ** 2 - halfMm ** 2)
  const openDeg = (Math.asin(halfMm / radiusMm) * 180) / Math.PI
  const shapes: Shape[] = [
    path('cut', [-halfMm, cornerMm], [-halfMm, 0], [halfMm, 0], [halfMm, cornerMm]),
    arc('cut', [0, centreMm], radiusMm, [270 - openDeg, 270 + openDeg]),
    path('centre', [0, -4], [0, overMm + 2]),
    label(radiusOf(radiusMm, plan), [2, overMm / 2], textMm),
  ]
  return {name: templateNames.radius, shapes, frame: extent(shapes, 2)}
}
