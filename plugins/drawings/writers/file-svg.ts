import {toHtml} from 'hast-util-to-html'
import {type InkName, inks, paperTextMm} from '../kit/inks.ts'
import {move} from '../kit/move.ts'
import type {Sheet} from '../kit/sheet.ts'
import {element, inkGroups} from './svg-parts.ts'

const order = Object.keys(inks) as InkName[]

/** Write a sheet as the text of an SVG file whose unit is a millimetre, with a group a layer, named by its id. */
export function fileSvg({widthMm, heightMm, content}: Sheet, title: string): string {
  const shapes = content.flatMap(({shapes, by: [dx, dy] = [0, 0]}) => move(shapes, dx, dy))
  const sorted = order.flatMap((ink) => shapes.filter((shape) => shape.ink === ink))
  const num = (value: number) => String(Number(value.toFixed(4)))
  const svg = element(
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
      element('title', {}, [{type: 'text', value: title}]),
      ...inkGroups({shapes: sorted, textMm: paperTextMm}, 4).map((group) => ({
        ...group,
        properties: {...group.properties, id: layerOf(group.properties.className)},
      })),
    ],
  )
  return `<?xml version="1.0" encoding="UTF-8"?>\n${toHtml(svg, {space: 'svg', closeEmptyElements: true})}\n`
}

// The class is `ink-cut`, the id `cut`.
const layerOf = (className: unknown): string => String(className).replace(/^ink-/, '')
