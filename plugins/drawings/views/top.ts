import {sayTop} from '../../words/drawings/alt-texts.ts'
import {holesName, inBrackets, lineName, placeNames, placeOf} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {boxFront} from '../instrument/box.ts'
import {anchorsFront, bridgeFront, nutFront, tunersFront} from '../instrument/hardware.ts'
import {type Instrument, inRows} from '../instrument/instrument.ts'
import {linesFront, neckFront} from '../instrument/neck.ts'
import {stringsFront} from '../instrument/strings.ts'
import {centreLine, lanes, lanesAcross, running, type Span, span} from '../kit/dimensions.ts'
import {extent, isClear, textBox} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {label, type Shape, type Text} from '../kit/shapes.ts'
import {offSpans, type View} from './view.ts'

/** The instrument from the front, hanging from its nut line, with what is measured along and across it. */
export const top: View = {bare, compose, says: ({plan}) => sayTop(plan), tallest: 58}

function bare(instrument: Instrument): Shape[] {
  if (!instrument.neck) return []
  return [
    ...boxFront(instrument),
    ...neckFront(instrument),
    ...linesFront(instrument),
    ...nutFront(instrument),
    ...bridgeFront(instrument, 'nut'),
    ...tunersFront(instrument),
    ...anchorsFront(instrument),
    ...stringsFront(instrument),
  ]
}

function compose(instrument: Instrument, drawn: readonly Shape[], textMm: number): Shape[] {
  const {x, y, width, height} = extent(drawn)
  const [right, bottom] = [x + width, y + height]
  const notes = topNotes(instrument, (halfWidthMm) => -halfWidthMm - 0.35 * textMm)
  const runningX = x - 1.2 * textMm
  const stations = notes.map(({at}) => at[1])
  const left = [
    ...running(stations, 0, runningX, textMm),
    ...notesColumn(notes, {base: runningX - 0.5 * textMm, out: -1, textMm, range: [y, bottom]}),
  ]
  const along = lanes(spansAlong(instrument), right + 0.4 * textMm, 1, textMm)
  const below = extent([...drawn, ...left, ...along])
  const across = lanesAcross(spansAcross(instrument), below.y + below.height + 0.5 * textMm, 1, textMm)
  const above = nutWidth(instrument, Math.min(y, below.y), textMm)
  const laid = [centreLine(y, bottom, textMm), ...drawn, ...left, ...along, ...across, ...above]
  return [...laid, ...lineNumbers(instrument, laid, textMm)]
}

/** The neck's width at the nut, above the head. */
function nutWidth({neck, head, plan}: Instrument, topMm: number, textMm: number): Shape[] {
  if (!neck) return []
  const half = neck.nutWidthMm / 2
  const wide = span(-half, half, head ? -head.lengthMm : 0, bareLength(neck.nutWidthMm, plan))
  return lanesAcross([wide], topMm - 0.3 * textMm, -1, textMm)
}

/** Number the lines that carry dots (or else the octaves) beside the neck, octaves first, where nothing is in the way. */
function lineNumbers({plan, halfMm}: Instrument, laid: readonly Shape[], textMm: number): Text[] {
  const {lines = [], dots = []} = plan.scale ?? {}
  const dotted = new Set(dots.map((dot) => dot.label))
  const octaves = lines.filter(({semitones}) => Math.abs(semitones % 12) < 0.01)
  const wanted = [...octaves, ...lines.filter((line) => dotted.has(line.label) && !octaves.includes(line))]
  const numbers: Text[] = []
  for (const {label: number, fromNutMm} of wanted) {
    const at = [halfMm(fromNutMm) + 0.4 * textMm, fromNutMm] as const
    const text = label(number, at, 0.72 * textMm, {ink: 'name'})
    if (isClear(textBox(text), [...laid, ...numbers])) numbers.push(text)
  }
  return numbers
}

// What the view from the front measures: places by their notes, what lies between them by dimensions.

export type StationKey =
  | 'headEnd'
  | 'nut'
  | 'octave'
  | 'boxHead'
  | 'bridge'
  | 'anchors'
  | 'boxTail'
  | 'tailEnd'

/** A place that makers measure to: mm from the nut line, and how far from the centre line it reaches. */
export interface Station {
  key: StationKey
  name: string
  stationMm: number
  halfWidthMm: number
  proposed?: true | undefined
}

/** List the places along an instrument that its drawing names, head end to tail end, as far as they are known. */
export function stations({plan, neck, head, box, halfMm}: Instrument): Station[] {
  const {outline, scale, bridge, anchors = []} = plan
  const octave = scale?.lines?.find(({semitones}) => Math.abs(semitones - 12) < 0.01)
  const names = {...placeNames, octave: octave ? lineName(octave.label, scale?.fretted) : ''}
  const at = (key: StationKey, stationMm: number | undefined, halfWidthMm: number): Station[] =>
    stationMm === undefined ? [] : [{key, name: names[key], stationMm, halfWidthMm}]
  const tailMm = neck?.isOpen ? undefined : neck?.tailMm
  const boxHalfMm = (box?.widthMm ?? 0) / 2
  const anchorsHalfMm =
    Math.max(0, ...anchors.map(({offMm}) => Math.abs(offMm))) + (outline?.anchors?.bodyMm ?? 0) / 2
  return [
    ...at('headEnd', head && -head.lengthMm, (head?.widthMm ?? 0) / 2),
    ...at('nut', neck && 0, halfMm(0)),
    ...at('octave', octave?.fromNutMm, halfMm(octave?.fromNutMm ?? 0)),
    ...at('boxHead', box?.atMm, boxHalfMm),
    ...at('bridge', bridge?.stationMm, (outline?.bridge?.lengthMm ?? 0) / 2),
    ...at('anchors', anchors[0]?.stationMm, anchorsHalfMm).map((one) => ({
      ...one,
      proposed: anchors[0]?.proposed,
    })),
    ...at('boxTail', box?.tailMm, boxHalfMm),
    ...at('tailEnd', tailMm, halfMm(tailMm ?? 0)),
  ].sort((a, b) => a.stationMm - b.stationMm)
}

const mostHoles = 4

/** Name the places along an instrument at its left, each with its figure from the nut line. */
function topNotes(instrument: Instrument, leftOf: (halfWidthMm: number) => number): Note[] {
  const places = stations(instrument).map(
    ({name, stationMm, halfWidthMm, proposed}): Note => ({
      at: [leftOf(halfWidthMm), stationMm],
      name,
      figure: stationMm === 0 ? undefined : inBrackets(placeOf(stationMm, instrument.plan), proposed),
    }),
  )
  return [...places, ...holeNotes(instrument, leftOf)]
}

/** One note a row of equal sound holes; of many rows only the first and the last. */
function holeNotes({plan, x}: Instrument, leftOf: (halfWidthMm: number) => number): Note[] {
  const rows = inRows(plan.box?.soundHoles ?? [], ({diameterMm}) => diameterMm.toFixed(2))
  const kept = rows.length > mostHoles ? [rows[0]!, rows.at(-1)!] : rows
  return kept.map((row) => {
    const {stationMm, diameterMm, proposed} = row[0]
    const left = Math.max(...row.map((hole) => -x(hole.offMm) + hole.diameterMm / 2))
    return {
      at: [leftOf(left), stationMm],
      name: holesName(row.length, diameterMm, plan),
      figure: inBrackets(bareLength(stationMm, plan), proposed),
    }
  })
}

/** The dimensions down the right of an instrument: head, nut to box to bridge to tail, scale length and overall. */
function spansAlong(instrument: Instrument): Span[] {
  const places = new Map(stations(instrument).map((place) => [place.key, place]))
  const between = (fromKey: StationKey, toKey: StationKey): Span[] => {
    const [from, to] = [places.get(fromKey), places.get(toKey)]
    const lengthMm = from && to ? Math.abs(to.stationMm - from.stationMm) : 0
    return from && to && lengthMm > 0.01
      ? [
          {
            from: from.stationMm,
            to: to.stationMm,
            fromEdge: from.halfWidthMm,
            toEdge: to.halfWidthMm,
            figure: bareLength(lengthMm, instrument.plan),
          },
        ]
      : []
  }
  return [
    ...between('headEnd', 'nut'),
    ...between('nut', 'boxHead'),
    ...between('boxHead', 'bridge'),
    ...between('bridge', 'boxTail'),
    ...between('nut', 'bridge'),
    ...between('headEnd', 'tailEnd'),
  ]
}

/** The dimensions across: the box, and sound holes off the centre line. They start at the box's tail edge. */
function spansAcross(instrument: Instrument): Span[] {
  const {neck, box, plan} = instrument
  const edgeMm = Math.max(box?.tailMm ?? 0, neck?.tailMm ?? 0)
  const width = (mm: number, edge: number) => span(-mm / 2, mm / 2, edge, bareLength(mm, plan))
  return [
    ...offSpans(instrument, plan.box?.soundHoles ?? [], {edgeMm, most: 3}),
    ...(box ? [width(box.widthMm, box.tailMm)] : []),
    ...(neck && neck.tailWidthMm !== neck.nutWidthMm ? [width(neck.tailWidthMm, neck.tailMm)] : []),
  ]
}
