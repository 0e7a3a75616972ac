import type {Element, Properties} from 'hast'
import {toHtml} from 'hast-util-to-html'
import {s} from 'hastscript'
import {capitalHeight} from '../kit/extent.ts'
import {type Ink, type InkName, inks, paperTextMm} from '../kit/inks.ts'
import {
  type Drawing,
  type Point,
  pointOnCircle,
  type Shape,
  type Sheet,
  shapesOn,
  type Text,
} from '../kit/shapes.ts'

// Classes for the style sheet (drawing.css): the svg is `drawing drawing-<name>`; inside it are groups `ink-outline`,
// `ink-edge`, `ink-hidden`, `ink-centre`, `ink-string`, `ink-grain`, `ink-dimension`, `ink-arrow`, `ink-dot`, `ink-nut`,
// `ink-figure` and `ink-name` (see kit/inks.ts). Everything is drawn in the colour of the text around it; widths and
// dashes are attributes. At its width attribute, figures are 14 px high; in a narrower place it shrinks as a whole.

/** How high figures are on a screen, in px, where the drawing has the width that it asks for. */
export const screenTextPx = 14

/**
 * Write a drawing for a page: SVG as a syntax tree, with title and description for those who don't see it.
 * No style attribute or element, so that it stands under a strict content policy.
 * `id` starts the ids of title and description; drawings of one page need different ones.
 */
export function pageSvg(drawing: Drawing, id: string): Element {
  const {name, title, says, frame, textMm} = drawing
  const px = (mm: number) => Math.round((mm * screenTextPx) / textMm)
  const num = (value: number) => Number(value.toFixed(2))
  const size = {
    className: ['drawing', `drawing-${name}`],
    viewBox: [frame.x, frame.y, frame.width, frame.height].map(num).join(' '),
    width: px(frame.width),
    height: px(frame.height),
  }
  const svg = pictureSvg({id, title, says}, size, inkGroups(drawing, 2))
  return {...svg, properties: {...svg.properties, strokeLineCap: 'round', strokeLineJoin: 'round'}}
}

/**
 * Frame a picture of a page as SVG: named by its title, told by its description, in the colour of the text around it.
 * `id` starts the ids of both.
 */
export function pictureSvg(
  {id, title, says}: {id: string; title: string; says: string},
  size: Properties,
  parts: readonly Element[],
): Element {
  const [titleId, sayId] = [`${id}-title`, `${id}-desc`]
  const properties = {
    ...size,
    role: 'img',
    ariaLabelledBy: [titleId],
    ariaDescribedBy: [sayId],
    fill: 'none',
    stroke: 'currentColor',
  }
  return s('svg', properties, [s('title', {id: titleId}, title), s('desc', {id: sayId}, says), ...parts])
}

const order = Object.keys(inks) as InkName[]

/** Write a sheet as the text of an SVG file whose unit is a millimetre, with a group a layer, named by its id. */
export function fileSvg(sheet: Sheet, title: string): string {
  const {widthMm, heightMm} = sheet
  const shapes = shapesOn(sheet)
  const sorted = order.flatMap((ink) => shapes.filter((shape) => shape.ink === ink))
  const num = (value: number) => String(Number(value.toFixed(4)))
  const svg = s(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${num(widthMm)}mm`,
      height: `${num(heightMm)}mm`,
      viewBox: `0 0 ${num(widthMm)} ${num(heightMm)}`,
      color: '#000',
      fill: 'none',
      stroke: '#000',
      fontFamily: 'sans-serif',
    },
    [
      s('title', title),
      ...inkGroups({shapes: sorted, textMm: paperTextMm}, 4).map((group) => ({
        ...group,
        properties: {...group.properties, id: layerOf(group.properties.className)},
      })),
    ],
  )
  return `<?xml version="1.0" encoding="UTF-8"?>\n${svgText(svg)}`
}

/** Write an element of SVG as the text of a file. */
export const svgText = (svg: Element): string =>
  `${wellFormed(toHtml(svg, {space: 'svg', closeEmptyElements: true}))}\n`

/** Leave out what no XML document can hold (XML 1.0, 2.2), and escape what would end a section of text (2.4). */
const wellFormed = (written: string): string =>
  written.replaceAll(/[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g, '').replaceAll(']]>', ']]&gt;')

// The class is `ink-cut`, the id `cut`.
const layerOf = (className: unknown): string => String(className).replace(/^ink-/, '')

/**
 * Write shapes as SVG groups, one a run of shapes of one ink: one path for its lines, one text element a text.
 * The group's class is the ink's name; widths and dashes are attributes, in the drawing's mm, and grow with its text.
 */
function inkGroups({shapes, textMm}: Pick<Drawing, 'shapes' | 'textMm'>, places: number): Element[] {
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
  return s('g', {className: [`ink-${name}`], ...pen(ink, grows, num)}, [
    ...(lines ? [s('path', {d: lines})] : []),
    ...texts,
  ])
}

type Num = (value: number) => string

function pen({widthMm, dashMm, filled}: Ink, grows: number, num: Num): Properties {
  if (filled) return {fill: 'currentColor', stroke: 'none'}
  const width: Properties = {strokeWidth: num(widthMm * grows)}
  return dashMm ? {...width, strokeDashArray: dashMm.map((mm) => num(mm * grows))} : width
}

/** Write a line, circle or arc as an SVG path; nothing for a text. */
export function pathData(shape: Shape, num: Num): string {
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

function textElement({at: [x, y], text, sizeMm, anchor, turned}: Text, num: Num): Element {
  const properties: Properties = {fontSize: num(sizeMm)}
  if (turned)
    Object.assign(properties, {
      transform: `translate(${num(x)} ${num(y)}) rotate(-90)`,
      y: num((capitalHeight / 2) * sizeMm),
    })
  else Object.assign(properties, {x: num(x), y: num(y + (capitalHeight / 2) * sizeMm)})
  if (anchor !== 'start') properties.textAnchor = anchor
  return s('text', properties, text)
}
