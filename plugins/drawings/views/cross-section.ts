import type {Plan} from '../../plan/plan.ts'
import {roundOverAt, sectionShapes, shownSection} from '../instrument/cross-section.ts'
import {handOf} from '../instrument/hand.ts'
import {lanes} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {path, type Shape, transpose} from '../kit/shapes.ts'
import {figureOf, shortName} from '../words.ts'
import {bassAndTreble} from './view.ts'

/** What is drawn of the section itself. */
export function bareSection(plan: Plan): Shape[] {
  const section = shownSection(plan)
  return section ? sectionShapes(section, roundOverAt(plan, section)) : []
}

/** Draw the section across the middle of the neck, seen from the bridge, with its layers named. */
export function composeSection(plan: Plan, textMm: number): Shape[] {
  const section = shownSection(plan)
  if (!section) return []
  const {widthMm, thicknessMm, neutralAxisMm, laminations} = section
  const half = widthMm / 2
  const radius = roundOverAt(plan, section)
  const drawn = bareSection(plan)
  const axis =
    neutralAxisMm === undefined
      ? []
      : [path('centre', [-half - 0.8 * textMm, neutralAxisMm], [half + 0.8 * textMm, neutralAxisMm])]
  const layers = laminations.map(
    ({wood, fromFaceMm, thicknessMm: thick, strips = 1}): Note => ({
      at: [half * 0.82, layerMiddle(fromFaceMm, thick, neutralAxisMm)],
      end: 'dot',
      ...(wood && {name: strips > 1 ? `${shortName(wood)}, ${strips} strips` : shortName(wood)}),
      figure: figureOf(thick, plan),
    }),
  )
  const notes: Note[] = [
    ...layers,
    ...(neutralAxisMm === undefined
      ? []
      : [
          {
            at: [half + 0.8 * textMm, neutralAxisMm],
            name: 'neutral axis',
            figure: figureOf(neutralAxisMm, plan),
          } satisfies Note,
        ]),
    ...(radius > 0 ? [roundNote(half, thicknessMm, radius, figureOf(radius, plan))] : []),
  ]
  const column = notesColumn(notes, {base: half + 1.4 * textMm, out: 1, textMm})
  const deep = lanes(
    [{from: 0, to: thicknessMm, fromEdge: -half, toEdge: -half, figure: figureOf(thicknessMm, plan)}],
    -half - 0.8 * textMm,
    -1,
    textMm,
  )
  const below = extent([...drawn, ...deep, ...column])
  const wide = transpose(
    lanes(
      [
        {
          from: -half,
          to: half,
          fromEdge: thicknessMm - radius,
          toEdge: thicknessMm - radius,
          figure: figureOf(widthMm, plan),
        },
      ],
      below.y + below.height,
      1,
      textMm,
    ),
  )
  const laid = [...drawn, ...axis, ...column, ...deep, ...wide]
  const top = Math.min(extent(laid).y, -0.2 * textMm)
  return [...laid, ...bassAndTreble(handOf(plan), half, top - 0.8 * textMm, 0.84 * textMm)]
}

/** A layer's note starts at its middle, or clear of the neutral axis where that passes there. */
function layerMiddle(from: number, thick: number, axis: number | undefined): number {
  const middle = from + thick / 2
  return axis !== undefined && Math.abs(axis - middle) < 0.12 * thick ? from + 0.7 * thick : middle
}

function roundNote(half: number, thickness: number, radius: number, figure: string): Note {
  const in45 = radius * (1 - Math.SQRT1_2)
  return {at: [half - in45, thickness - in45], end: 'arrow', name: 'round-over', figure: `R ${figure}`}
}
