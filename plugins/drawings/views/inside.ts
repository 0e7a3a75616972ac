import {sayInside} from '../../words/drawings/alt-texts.ts'
import {
  blockName,
  diameterOf,
  inBrackets,
  insideWords,
  placeNames,
  rowName,
} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {boxInside} from '../instrument/box.ts'
import {fromInside, type Instrument, inRows} from '../instrument/instrument.ts'
import {centreLine, lanes, lanesAcross, running, span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {label, type Shape} from '../kit/shapes.ts'
import {bassAndTreble, offSpans, type View} from './view.ts'

/** The box's top from inside, with what is glued and drilled there, measured from the box's head-side edge. */
export const inside: View = {
  bare: (instrument) => boxInside(fromInside(instrument)),
  compose: (instrument, drawn, textMm) => compose(fromInside(instrument), drawn, textMm),
  says: ({plan, topHoles}) => sayInside(plan, topHoles.length),
  tallest: 36,
}

function compose(turned: Instrument, drawn: readonly Shape[], textMm: number): Shape[] {
  const {plan, box, topHoles} = turned
  if (!box) return []
  const {x, y, width, height} = extent(drawn)
  const half = box.widthMm / 2
  const notes = notesOf(turned)
  const runningX = x - 1.2 * textMm
  const stations = notes.flatMap(({at, figure}) => (figure ? [at[1]] : []))
  const left = [
    ...running(stations, box.atMm, runningX, textMm),
    ...notesColumn(notes, {base: runningX - 0.5 * textMm, out: -1, textMm, range: [y, y + height]}),
  ]
  const long = span(box.atMm, box.tailMm, half, bareLength(box.lengthMm, plan))
  const right = lanes([long], x + width + 0.2 * textMm, 1, textMm)
  const reach = extent([...drawn, ...left, ...right])
  const wide = [
    ...offSpans(turned, [...(plan.box?.soundHoles ?? []), ...topHoles], {edgeMm: box.tailMm, most: 4}),
    span(-half, half, box.tailMm, bareLength(box.widthMm, plan)),
  ]
  const topMm = Math.min(y, reach.y)
  return [
    centreLine(y, y + height, textMm),
    ...drawn,
    ...left,
    ...right,
    ...lanesAcross(wide, reach.y + reach.height + 0.5 * textMm, 1, textMm),
    ...bassAndTreble(turned, half, topMm - 0.9 * textMm, 0.84 * textMm),
    label(insideWords, [0, topMm - 2.2 * textMm], textMm, {anchor: 'middle'}),
  ]
}

const mostRows = 12

/** Name what is glued and drilled inside, a row at a time, with its distance from the box's head-side edge. */
function notesOf({plan, box, topHoles, x}: Instrument): Note[] {
  if (!box) return []
  const {bridge, outline} = plan
  const isBridged = bridge && bridge.stationMm > box.atMm && bridge.stationMm < box.tailMm
  const things = [
    ...(plan.box?.blocks ?? []).map(({stationMm, offMm, widthMm, lengthMm, proposed}) => ({
      name: blockName(widthMm, lengthMm, plan),
      stationMm,
      offMm,
      widthMm,
      proposed,
    })),
    ...[...topHoles, ...(plan.box?.soundHoles ?? [])].map(({stationMm, offMm, diameterMm, proposed}) => ({
      name: diameterOf(diameterMm, plan),
      stationMm,
      offMm,
      widthMm: diameterMm,
      proposed,
    })),
    ...(isBridged
      ? [
          {
            name: placeNames.bridge,
            stationMm: bridge.stationMm,
            offMm: 0,
            widthMm: outline?.bridge?.lengthMm ?? 0,
            proposed: undefined,
          },
        ]
      : []),
  ]
  const rows = inRows(things, ({name}) => name).slice(0, mostRows)
  return [
    {at: [-box.widthMm / 2, box.atMm], name: placeNames.boxHead},
    ...rows.map((row): Note => {
      const {name, stationMm, proposed} = row[0]
      return {
        at: [Math.min(...row.map(({offMm, widthMm}) => x(offMm) - widthMm / 2)), stationMm],
        name: rowName(row.length, name),
        figure: inBrackets(bareLength(stationMm - box.atMm, plan), proposed),
      }
    }),
  ]
}
