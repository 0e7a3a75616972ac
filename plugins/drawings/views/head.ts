import {sayHead} from '../../words/drawings/alt-texts.ts'
import {inBrackets, placeNames, postName} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {nutFront, tunersFront} from '../instrument/hardware.ts'
import {type Instrument, placed} from '../instrument/instrument.ts'
import {headFront, isStepped, scarfFront} from '../instrument/neck.ts'
import {stringsAtHead} from '../instrument/strings.ts'
import {centreLine, lanesAcross, type Span, span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {path, type Shape} from '../kit/shapes.ts'
import type {View} from './view.ts'

/** The head along its own face, and a stretch of neck below the nut line, with the place of each post. */
export const head: View = {bare, compose, says: ({plan}) => sayHead(plan), tallest: 36}

/** How much of the neck is drawn with its head, as a part of the head's length. */
const stub = 0.16

function bare(instrument: Instrument): Shape[] {
  const {neck, head, halfMm} = instrument
  if (!neck || !head) return []
  const stubMm = head.lengthMm * stub
  const half = halfMm(stubMm)
  return [
    ...headFront(instrument),
    ...scarfFront(instrument),
    path('outline', [-neck.nutWidthMm / 2, 0], [-half, stubMm]),
    path('outline', [neck.nutWidthMm / 2, 0], [half, stubMm]),
    broken(half, stubMm),
    ...nutFront(instrument),
    ...tunersFront(instrument),
    ...stringsAtHead(instrument, stubMm),
  ]
}

/** The line where a drawing stops and the thing goes on (ISO 128: thin, with a zigzag). */
function broken(half: number, y: number): Shape {
  const step = half * 0.16
  return path(
    'dimension',
    [-half - step, y],
    [-step, y],
    [-step / 2, y - step],
    [step / 2, y + step],
    [step, y],
    [half + step, y],
  )
}

function compose(instrument: Instrument, drawn: readonly Shape[], textMm: number): Shape[] {
  const {head, plan} = instrument
  if (!head) return []
  const {x, y, width, height} = extent(drawn)
  const range = [y, y + height] as const
  const notes = [...posts(instrument), ...ends(instrument)]
  const [left, right] = [notes.filter(({at}) => at[0] < 0), notes.filter(({at}) => at[0] >= 0)]
  const columns = [
    ...notesColumn(left, {base: x - 0.7 * textMm, out: -1, textMm, range}),
    ...notesColumn(right, {base: x + width + 0.7 * textMm, out: 1, textMm, range}),
  ]
  const reach = extent([...drawn, ...columns])
  const half = head.widthMm / 2
  const wide = span(-half, half, -head.lengthMm, bareLength(head.widthMm, plan))
  return [
    centreLine(y, y + height, textMm),
    ...drawn,
    ...columns,
    ...lanesAcross([wide], reach.y - 0.2 * textMm, -1, textMm),
    ...lanesAcross(stringSpan(instrument), reach.y + reach.height + 0.5 * textMm, 1, textMm),
  ]
}

function posts(instrument: Instrument): Note[] {
  const {plan} = instrument
  const radius = (plan.outline?.tuners?.postHoleMm ?? 0) / 2
  return (plan.tuners ?? []).map((tuner) => {
    const [x, y] = placed(instrument, tuner)
    return {
      at: [x + (x < 0 ? -radius : radius), y],
      name: postName(tuner.name, tuner.offMm, plan),
      figure: inBrackets(bareLength(y, plan), tuner.proposed),
    }
  })
}

function ends({neck, head, plan}: Instrument): Note[] {
  if (!neck || !head) return []
  const at = (name: string, stationMm: number): Note => ({
    at: [-head.widthMm / 2, stationMm],
    name,
    figure: bareLength(stationMm, plan),
  })
  return [
    at(placeNames.headEnd, -head.lengthMm),
    ...(isStepped(head) ? [at(placeNames.slope, -head.ledgeMm)] : []),
    {at: [-neck.nutWidthMm / 2, 0], name: placeNames.nut},
  ]
}

/** First to last string at the nut. */
function stringSpan({head, plan, x}: Instrument): Span[] {
  const offs = plan.scale?.nutOffMm ?? []
  const [from, to] = [offs[0], offs.at(-1)]
  if (!head || from === undefined || to === undefined || to - from < 0.01) return []
  return [span(x(from), x(to), head.lengthMm * stub, bareLength(to - from, plan))]
}
