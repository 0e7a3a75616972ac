import type {Plan} from '../plan/plan.ts'
import type {CutPiece} from '../plan/stock/cut-list.ts'
import {sayCuts} from '../words/drawings/alt-texts.ts'
import {cutWords} from '../words/drawings/labels.ts'
import {bareLength} from '../words/lengths.ts'
import {lanes, lanesAcross, span} from './kit/dimensions.ts'
import {extent, textWidthMm} from './kit/extent.ts'
import {type Drawing, label, path, type Rect, rectangle, type Shape} from './kit/shapes.ts'
import {fitText} from './views/view.ts'

/**
 * Draw a piece as it is sawn, to scale in mm: its length down the page from the end that is measured from, strips side
 * by side in the order ripped, each cut with its number and, where it fits, the name of its part by `names`.
 * What goes back on the rack says so; what is left blank is waste.
 */
export function cutDiagram(piece: CutPiece, names: ReadonlyMap<string, string>, plan: Plan): Drawing {
  const bare = [rectangle('outline', [0, 0], [piece.widthMm, piece.lengthMm])]
  const compose = (textMm: number) => [
    ...bare,
    ...insides(piece, names, textMm),
    ...measures(piece, plan, textMm),
  ]
  const textMm = fitText(bare, compose, 50)
  const shapes = compose(textMm)
  return {
    name: 'cuts',
    title: cutWords.title(piece.id),
    says: sayCuts(piece),
    textMm,
    shapes,
    frame: extent(shapes, textMm / 2),
  }
}

function insides(piece: CutPiece, known: ReadonlyMap<string, string>, textMm: number): Shape[] {
  const {strips, offcuts, fromMm, toMm, lengthMm, widthMm} = piece
  const squared = [
    ...(fromMm > 0 ? [path('hidden', [0, fromMm], [widthMm, fromMm])] : []),
    ...(toMm < lengthMm ? [path('hidden', [0, toMm], [widthMm, toMm])] : []),
  ]
  const cuts = strips.flatMap((strip) => strip.cuts.map((cut) => ({...cut, acrossMm: strip.acrossMm})))
  const parts = cuts.flatMap((cut, i): Shape[] => {
    const number = String(i + 1)
    const name = `${number} ${known.get(cut.partId) ?? ''}`
    return [outlined('edge', cut), ...named(areaOf(cut), [name, number], 'figure', textMm)]
  })
  const kept = offcuts.flatMap((one): Shape[] => [
    outlined('hidden', one),
    ...named(areaOf(one), cutWords.kept, 'name', textMm),
  ])
  return [...squared, ...parts, ...kept]
}

interface OnPiece {
  acrossMm: number
  atMm: number
  widthMm: number
  lengthMm: number
}

const outlined = (ink: 'edge' | 'hidden', {acrossMm, atMm, widthMm, lengthMm}: OnPiece) =>
  rectangle(ink, [acrossMm, atMm], [acrossMm + widthMm, atMm + lengthMm])

const areaOf = ({acrossMm, atMm, widthMm, lengthMm}: OnPiece): Rect => ({
  x: acrossMm,
  y: atMm,
  width: widthMm,
  height: lengthMm,
})

/** Write the longer text along the strip where it fits; in a narrow or short place the shorter one. */
function named(
  {x, y, width, height}: Rect,
  [long, short]: readonly [string, string],
  ink: 'figure' | 'name',
  textMm: number,
): Shape[] {
  const at = [x + width / 2, y + height / 2] as const
  const sizeMm = Math.min(0.9 * textMm, 0.75 * width)
  const fits = (text: string) => textWidthMm(text, sizeMm) <= height - 0.5 * sizeMm
  const turned = [long, short].find(fits)
  if (sizeMm >= 0.6 * textMm && turned)
    return [label(turned, at, sizeMm, {ink, anchor: 'middle', turned: true})]
  const upright = Math.min((0.9 * width * textMm) / textWidthMm(short, textMm), 0.9 * textMm, 0.8 * height)
  if (upright < 0.4 * textMm || !short) return []
  return [label(short, at, upright, {ink, anchor: 'middle'})]
}

/** The piece's length on its left, its strips and its width below. */
function measures({strips, lengthMm, widthMm}: CutPiece, plan: Plan, textMm: number): Shape[] {
  const across = (fromMm: number, mm: number) => span(fromMm, fromMm + mm, lengthMm, bareLength(mm, plan))
  const ripped = strips.filter((strip, i) => strips[i - 1]?.widthMm !== strip.widthMm)
  const isWhole = strips.length === 1 && widthMm - strips[0]!.widthMm < 1e-6
  const wide = [
    ...(isWhole ? [] : ripped.map((strip) => across(strip.acrossMm, strip.widthMm))),
    across(0, widthMm),
  ]
  return [
    ...lanes([span(0, lengthMm, 0, bareLength(lengthMm, plan))], -0.4 * textMm, -1, textMm),
    ...lanesAcross(wide, lengthMm + 0.5 * textMm, 1, textMm),
  ]
}
