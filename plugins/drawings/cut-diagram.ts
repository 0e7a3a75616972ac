import type {CutPiece} from '../plan/cut-list.ts'
import type {Part} from '../plan/design-parts.ts'
import type {Plan} from '../plan/plan.ts'
import {lanes, type Span} from './kit/dimensions.ts'
import {extent, textWidthMm} from './kit/extent.ts'
import {box, type Drawing, path, type Shape, transpose} from './kit/shapes.ts'
import {fitText} from './views/view.ts'
import {figureOf} from './words.ts'

/**
 * Draw a piece as it is sawn, to scale in mm: its length down the page from the end that is measured from, strips side
 * by side in the order ripped, each cut with its number and, where it fits, the name of its part.
 * What goes back on the rack says so; what is left blank is waste.
 */
export function cutDiagram(piece: CutPiece, parts: ReadonlyMap<string, Part>, plan: Plan): Drawing {
  const bare = [box('outline', [0, 0], [piece.widthMm, piece.lengthMm])]
  const compose = (textMm: number) => [
    ...bare,
    ...insides(piece, textMm, parts),
    ...measures(piece, plan, textMm),
  ]
  const textMm = fitText(bare, compose, 50)
  const shapes = compose(textMm)
  const strips = piece.strips.length === 1 ? 'one strip' : `${piece.strips.length} strips`
  const cuts = piece.strips.reduce((sum, strip) => sum + strip.cuts.length, 0)
  return {
    name: 'cuts',
    title: `${piece.id}: where to cut`,
    says: `The piece from above, its length down the page: ${strips} with ${cuts === 1 ? 'one part' : `${cuts} parts`}, and ${piece.offcuts.length === 0 ? 'nothing' : piece.offcuts.length === 1 ? 'one offcut' : `${piece.offcuts.length} offcuts`} to keep. The steps below say the same in words.`,
    textMm,
    shapes,
    frame: extent(shapes, textMm / 2),
  }
}

function insides(
  {strips, offcuts, fromMm, toMm, lengthMm, widthMm}: CutPiece,
  textMm: number,
  known: ReadonlyMap<string, Part>,
): Shape[] {
  let count = 0
  const squared = [
    ...(fromMm > 0 ? [path('hidden', [0, fromMm], [widthMm, fromMm])] : []),
    ...(toMm < lengthMm ? [path('hidden', [0, toMm], [widthMm, toMm])] : []),
  ]
  const parts = strips.flatMap(({acrossMm, cuts}) =>
    cuts.flatMap((cut): Shape[] => {
      const number = String(++count)
      const name = `${number} ${known.get(cut.partId)?.name ?? ''}`
      const area = {x: acrossMm, y: cut.atMm, width: cut.widthMm, height: cut.lengthMm}
      return [
        box('edge', [acrossMm, cut.atMm], [acrossMm + cut.widthMm, cut.atMm + cut.lengthMm]),
        ...label(area, [name, number], textMm, 'figure'),
      ]
    }),
  )
  const kept = offcuts.flatMap((one): Shape[] => [
    box('hidden', [one.acrossMm, one.atMm], [one.acrossMm + one.widthMm, one.atMm + one.lengthMm]),
    ...label(
      {x: one.acrossMm, y: one.atMm, width: one.widthMm, height: one.lengthMm},
      ['back on the rack', 'keep'],
      textMm,
      'name',
    ),
  ])
  return [...squared, ...parts, ...kept]
}

/** Write the longer text along the strip where it fits; in a narrow or short place the shorter one. */
function label(
  area: {x: number; y: number; width: number; height: number},
  [long, short]: readonly [string, string],
  textMm: number,
  ink: 'figure' | 'name',
): Shape[] {
  const at = [area.x + area.width / 2, area.y + area.height / 2] as const
  const sizeMm = Math.min(0.9 * textMm, 0.75 * area.width)
  const fits = (text: string) => textWidthMm(text, sizeMm) <= area.height - 0.5 * sizeMm
  const turned = [long, short].find(fits)
  if (sizeMm >= 0.6 * textMm && turned)
    return [{is: 'text', ink, at, text: turned, sizeMm, anchor: 'middle', turned: true}]
  const upright = Math.min(
    (0.9 * area.width * textMm) / textWidthMm(short, textMm),
    0.9 * textMm,
    0.8 * area.height,
  )
  if (upright < 0.4 * textMm || !short) return []
  return [{is: 'text', ink, at, text: short, sizeMm: upright, anchor: 'middle'}]
}

/** The piece's length on its left, its strips and its width below. */
function measures({strips, lengthMm, widthMm}: CutPiece, plan: Plan, textMm: number): Shape[] {
  const length: Span = {from: 0, to: lengthMm, fromEdge: 0, toEdge: 0, figure: figureOf(lengthMm, plan)}
  const across: Span[] = strips
    .filter((strip, i) => strips[i - 1]?.widthMm !== strip.widthMm)
    .map((strip) => ({
      from: strip.acrossMm,
      to: strip.acrossMm + strip.widthMm,
      fromEdge: lengthMm,
      toEdge: lengthMm,
      figure: figureOf(strip.widthMm, plan),
    }))
  const isWhole = strips.length === 1 && widthMm - strips[0]!.widthMm < 1e-6
  const whole: Span = {
    from: 0,
    to: widthMm,
    fromEdge: lengthMm,
    toEdge: lengthMm,
    figure: figureOf(widthMm, plan),
  }
  return [
    ...lanes([length], -0.4 * textMm, -1, textMm),
    ...transpose(lanes(isWhole ? [whole] : [...across, whole], lengthMm + 0.5 * textMm, 1, textMm)),
  ]
}
