import type {Element} from 'hast'
import {s} from 'hastscript'
import type {Plan} from '../../plan/plan.ts'
import {tunersFromAfar} from '../instrument/hardware.ts'
import {instrumentOf} from '../instrument/instrument.ts'
import {stringsFront} from '../instrument/strings.ts'
import {extent} from '../kit/extent.ts'
import type {Rect, Shape} from '../kit/shapes.ts'
import {woodsOf} from './bodies.ts'
import {frontParts} from './front.ts'

/** An instrument as it hangs among others: its parts in mm, the nut line at y = 0, the centre line at x = 0. */
export interface Figure {
  parts: Element[]
  frame: Rect
  /** The woods whose patterns fill it. */
  woods: string[]
}

const marginMm = 3

/** What is too fine to be seen from afar, or drawn with less there. */
const fine: ReadonlySet<string> = new Set(['fret-edge', 'dot', 'metal'])

/** Draw an instrument from the front in its woods, without a word or figure; undefined where its neck is not known. */
export function figureDrawing(
  plan: Plan,
  {boxWood, plateWood}: {boxWood?: string | undefined; plateWood?: string | undefined},
): Figure | undefined {
  const instrument = instrumentOf(plan)
  if (!instrument.neck) return undefined
  const woods = woodsOf(plan, boxWood, plateWood)
  const parts = [
    ...frontParts(instrument, woods).filter(({className}) => !fine.has(className)),
    {className: 'metal', shapes: tunersFromAfar(instrument)},
    {className: 'string', shapes: stringsFront(instrument)},
  ].filter(({shapes}) => shapes.length > 0)
  return {
    parts: parts.map(({shapes, ...properties}) =>
      s('path', {...properties, d: shapes.map(shortPath).join('')}),
    ),
    frame: extent(
      parts.flatMap(({shapes}) => shapes),
      marginMm,
    ),
    woods: [...new Set(Object.values(woods).map((wood) => wood ?? 'unknown'))].sort(),
  }
}

/** To half a mm: a fraction of a px among others. */
const half = (mm: number) => Math.round(mm * 2) / 2 + 0

/** Write a line or circle from place to place, since a row of many is to come over a slow line. */
function shortPath(shape: Shape): string {
  if (shape.is === 'circle') {
    const {radiusMm} = shape
    const [x = 0, y = 0, r = 0] = [...shape.centre, radiusMm].map(half)
    return `M${x - r} ${y}a${r} ${r} 0 1 1 ${2 * r} 0a${r} ${r} 0 1 1 ${-2 * r} 0`
  }
  if (shape.is !== 'path') return ''
  const points = shape.points.map(([x, y]) => [half(x), half(y)] as const)
  const steps = points.map(([x, y], at) => {
    const before = points[at - 1]
    if (!before) return `M${x} ${y}`
    const [across, down] = [x - before[0], y - before[1]]
    return down === 0 ? `h${across}` : across === 0 ? `v${down}` : `l${across} ${down}`
  })
  return `${steps.join('')}${shape.closed ? 'Z' : ''}`
}
