import type {Plan} from '../../plan/plan.ts'
import {sayCrossSection} from '../../words/drawings/alt-texts.ts'
import {crossSectionNames, layerName, radiusOf} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {crossSectionShapes} from '../instrument/cross-section.ts'
import type {CrossSection, Instrument} from '../instrument/instrument.ts'
import {lanes, lanesAcross, span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {across, type Shape} from '../kit/shapes.ts'
import {bassAndTreble, type View} from './view.ts'

/** The neck cut across the middle of its free length, seen from the bridge, with its layers named. */
export const crossSection = viewOf('crossSection')
/** The same where it is cut down to run through the box. */
export const insideSection = viewOf('insideSection')

function viewOf(which: 'crossSection' | 'insideSection'): View {
  return {
    bare: ({[which]: cut}) => (cut ? crossSectionShapes(cut) : []),
    compose: (instrument, drawn, textMm) => compose({...instrument, cut: instrument[which]}, drawn, textMm),
    says: ({plan, [which]: cut}) => sayCrossSection(plan, cut),
    tallest: 36,
  }
}

function compose(
  instrument: Instrument & {cut: CrossSection | undefined},
  drawn: readonly Shape[],
  textMm: number,
): Shape[] {
  const {plan, cut} = instrument
  if (!cut) return []
  const {widthMm, thicknessMm, roundOverMm, deepMm} = cut
  const neutralAxisMm = cut.neutralAxisMm === undefined ? undefined : cut.neutralAxisMm - deepMm
  const half = widthMm / 2
  const axisMm = half + 0.8 * textMm
  const axis = neutralAxisMm === undefined ? [] : [across('centre', axisMm, neutralAxisMm)]
  const column = notesColumn(notes(cut, axisMm, plan), {base: half + 1.4 * textMm, out: 1, textMm})
  const thick = span(0, thicknessMm, -half, bareLength(thicknessMm, plan))
  const deep = lanes([thick], -half - 0.8 * textMm, -1, textMm)
  const below = extent([...drawn, ...deep, ...column])
  const width = span(-half, half, thicknessMm - roundOverMm, bareLength(widthMm, plan))
  const wide = lanesAcross([width], below.y + below.height, 1, textMm)
  const laid = [...drawn, ...axis, ...column, ...deep, ...wide]
  const topMm = Math.min(extent(laid).y, -0.2 * textMm)
  return [...laid, ...bassAndTreble(instrument, half, topMm - 0.8 * textMm, 0.84 * textMm)]
}

/** Name the layers, the neutral axis where its line ends at `axisMm`, and the round-over. */
function notes(cut: CrossSection, axisMm: number, plan: Plan): Note[] {
  const {widthMm, thicknessMm, roundOverMm: radius, laminations, deepMm, under} = cut
  const neutralAxisMm = cut.neutralAxisMm === undefined ? undefined : cut.neutralAxisMm - deepMm
  const half = widthMm / 2
  const in45 = radius * (1 - Math.SQRT1_2)
  const layers = laminations.map(
    ({wood, fromFaceMm, thicknessMm: thick, strips = 1}): Note => ({
      at: [half * 0.82, layerMiddle(fromFaceMm - deepMm, thick, neutralAxisMm)],
      end: 'dot',
      name: wood && layerName(wood, strips),
      figure: bareLength(thick, plan),
    }),
  )
  const axis: Note | undefined =
    neutralAxisMm === undefined
      ? undefined
      : {
          at: [axisMm, neutralAxisMm],
          name: crossSectionNames.neutralAxis,
          figure: bareLength(neutralAxisMm, plan),
        }
  const round: Note | undefined =
    radius > 0
      ? {
          at: [half - in45, thicknessMm - in45],
          end: 'arrow',
          name: crossSectionNames.roundOver,
          figure: radiusOf(radius, plan),
        }
      : undefined
  const over: Note[] = under
    ? [
        {
          at: [half, -under.gapMm - under.topMm / 2],
          end: 'dot',
          name: crossSectionNames.top,
          figure: bareLength(under.topMm, plan),
        },
        {
          at: [half, -under.gapMm / 2],
          end: 'arrow',
          name: crossSectionNames.daylight,
          figure: bareLength(under.gapMm, plan),
        },
      ]
    : []
  const face: Note | undefined =
    cut.faceRadiusMm === undefined
      ? undefined
      : {
          at: [half * 0.5, (half * 0.5) ** 2 / (2 * cut.faceRadiusMm)],
          end: 'arrow',
          name: crossSectionNames.face,
          figure: radiusOf(cut.faceRadiusMm, plan),
        }
  return [...over, ...layers, axis, round, face].filter((note) => note !== undefined)
}

/** A layer's note starts at its middle, or clear of the neutral axis where that passes there. */
function layerMiddle(from: number, thick: number, axis: number | undefined): number {
  const middle = from + thick / 2
  return axis !== undefined && Math.abs(axis - middle) < 0.12 * thick ? from + 0.7 * thick : middle
}
