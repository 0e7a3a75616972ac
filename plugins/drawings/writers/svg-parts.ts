import type {Element, ElementContent} from 'hast'
import {type Ink, type InkName, inks, paperTextMm} from '../kit/inks.ts'
import {pointOnCircle} from '../kit/point-on-circle.ts'
import type {Drawing, Point, Shape, Text} from '../kit/shape.ts'

type Properties = Element['properties']

export const element = (
  tagName: string,
  properties: Properties,
  children: ElementContent[] = [],
): Element => ({
  type: 'element',
  tagName,
  properties,
  children,
})

/**
 * Write shapes as SVG groups, one a run of shapes of one ink: one path for its lines, one text element a text.
 * The group's class is the ink's name; widths and dashes are attributes, in the drawing's mm, and grow with its text.
 */
export function inkGroups({shapes, textMm}: Pick<Drawing, 'shapes' | 'textMm'>, places: number): Element[] {
  const runs: {ink: InkName; shapes: Shape[]}[] = []
  for (const shape of shapes) {
    const last = runs.at(-1)
    if (last?.ink === shape.ink) last.shapes.push(shape)
    else runs.push({ink: shape.ink, shapes: [shape]})
  }
  return runs.map(({ink, shapes: run}) => group(ink, run, textMm / paperTextMm, places))
}

function group(name: InkName, shapes: readonly Shape[], grows: number, places: number): Element {
  const num = (value: number) => String(Number(value.toFixed(places)) + 0)
  const ink: Ink = inks[name]
  const lines = shapes.map((shape) => pathData(shape, num)).join('')
  const texts = shapes.flatMap((shape) => (shape.is === 'text' ? [textElement(shape, num)] : []))
  return element('g', {className: [`ink-${name}`], ...pen(ink, grows, num)}, [
    ...(lines ? [element('path', {d: lines})] : []),
    ...texts,
  ])
}

type Num = (value: number) => string

function pen({widthMm, dashMm, filled}: Ink, grows: number, num: Num): Properties {
  if (filled) return {fill: 'currentColor', stroke: 'none'}
  const width: Properties = {strokeWidth: num(widthMm * grows)}
  return dashMm ? {...width, strokeDashArray: dashMm.map((mm) => num(mm * grows))} : width
}

function pathData(shape: Shape, num: Num): string {
  const at = ([x, y]: Point) => `${num(x)} ${num(y)}`
  if (shape.is === 'text') return ''
  if (shape.is === 'path') return `M${shape.points.map(at).join('L')}${shape.closed ? 'Z' : ''}`
  const {
    centre: [x, y],
    radiusMm: r,
  } = shape
  if (shape.is === 'circle') {
    const half = (to: number) => `A${num(r)} ${num(r)} 0 1 1 ${at([x + to * r, y])}`
    return `M${at([x - r, y])}${half(1)}${half(-1)}Z`
  }
  const end = (deg: number) => at(pointOnCircle([x, y], r, deg))
  const large = Math.abs(shape.toDeg - shape.fromDeg) > 180 ? 1 : 0
  const sweep = shape.toDeg > shape.fromDeg ? 1 : 0
  return `M${end(shape.fromDeg)}A${num(r)} ${num(r)} 0 ${large} ${sweep} ${end(shape.toDeg)}`
}

// A capital is about 0.7 of the size high, so its middle lies 0.35 above the line it stands on.
function textElement({at: [x, y], text, sizeMm, anchor, turned}: Text, num: Num): Element {
  const properties: Properties = {fontSize: num(sizeMm)}
  if (turned)
    Object.assign(properties, {
      transform: `translate(${num(x)} ${num(y)}) rotate(-90)`,
      y: num(0.35 * sizeMm),
    })
  else Object.assign(properties, {x: num(x), y: num(y + 0.35 * sizeMm)})
  if (anchor !== 'start') properties.textAnchor = anchor
  return element('text', properties, [{type: 'text', value: text}])
}
