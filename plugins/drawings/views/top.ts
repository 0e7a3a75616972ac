import {sayTop} from '../../words/drawings/alt-texts.ts'
import {bareLength} from '../../words/lengths.ts'
import {boxFront} from '../instrument/box.ts'
import {anchorsFront, bridgeFront, nutFront, tunersFront} from '../instrument/hardware.ts'
import type {Instrument} from '../instrument/instrument.ts'
import {linesFront, neckFront} from '../instrument/neck.ts'
import {stringsFront} from '../instrument/strings.ts'
import {centreLine, lanes, lanesAcross, running, span} from '../kit/dimensions.ts'
import {extent, isClear, textBox} from '../kit/extent.ts'
import {notesColumn} from '../kit/notes.ts'
import {label, type Shape, type Text} from '../kit/shapes.ts'
import {spansAcross, spansAlong, topNotes} from './top-measures.ts'
import type {View} from './view.ts'

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
