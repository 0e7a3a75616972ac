import type {Element} from 'hast'
import type {Plan} from '../../plan/plan.ts'
import {sayCard} from '../../words/drawings/alt-texts.ts'
import {boxFront} from '../instrument/box.ts'
import {bridgeFront, nutFront} from '../instrument/hardware.ts'
import {instrumentOf} from '../instrument/instrument.ts'
import {neckFront} from '../instrument/neck.ts'
import {stringsFront} from '../instrument/strings.ts'
import {extent} from '../kit/extent.ts'
import {pageSvg} from '../writers/svg.ts'

/** An instrument drawn with little, to hang beside others from one nut line at one scale. */
interface CardDrawing {
  svg: Element
  widthMm: number
  heightMm: number
  /** From the top of the picture down to the nut line. */
  nutYMm: number
  /** From its left edge to the centre line. */
  centreXMm: number
}

const marginMm = 4
/** Line widths come out as beside text of this height. */
const weightMm = 20

/**
 * Draw the portfolio's small picture: outlines, sound holes, nut, bridge and strings, no figures, nothing that is
 * hidden. Undefined where the neck is not known. `widthMm` and `heightMm` are its size at full scale, and its viewBox.
 */
export function cardDrawing(plan: Plan): CardDrawing | undefined {
  const instrument = instrumentOf(plan)
  if (!instrument.neck) return undefined
  const drawn = [
    ...boxFront(instrument),
    ...neckFront(instrument),
    ...nutFront(instrument),
    ...bridgeFront(instrument, 'nut'),
    ...stringsFront(instrument),
  ]
  const shapes = drawn.filter(({ink}) => ink !== 'hidden')
  const frame = extent(shapes, marginMm)
  const svg = pageSvg(
    {name: 'card', title: plan.title ?? plan.slug, says: sayCard, frame, textMm: weightMm, shapes},
    `card-${plan.slug}`,
  )
  return {svg, widthMm: frame.width, heightMm: frame.height, nutYMm: -frame.y, centreXMm: -frame.x}
}
