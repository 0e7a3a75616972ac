import {radiusOf} from '../../words/drawings/labels.ts'
import {templateNames} from '../../words/drawings/templates.ts'
import type {Instrument} from '../instrument/instrument.ts'
import {extent} from '../kit/extent.ts'
import {arc, label, path, type Shape} from '../kit/shapes.ts'
import {type Template, templateTextMm as textMm} from './marks.ts'

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
