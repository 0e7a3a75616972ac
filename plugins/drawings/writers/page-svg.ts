import type {Element} from 'hast'
import type {Drawing} from '../kit/shape.ts'
import {element, inkGroups} from './svg-parts.ts'

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
  const [titleId, sayId] = [`${id}-title`, `${id}-desc`]
  const px = (mm: number) => Math.round((mm * screenTextPx) / textMm)
  const num = (value: number) => Number(value.toFixed(2))
  return element(
    'svg',
    {
      className: ['drawing', `drawing-${name}`],
      viewBox: [frame.x, frame.y, frame.width, frame.height].map(num).join(' '),
      width: px(frame.width),
      height: px(frame.height),
      role: 'img',
      ariaLabelledBy: [titleId],
      ariaDescribedBy: [sayId],
      fill: 'none',
      stroke: 'currentColor',
      strokeLineCap: 'round',
      strokeLineJoin: 'round',
    },
    [
      element('title', {id: titleId}, [{type: 'text', value: title}]),
      element('desc', {id: sayId}, [{type: 'text', value: says}]),
      ...inkGroups(drawing, 2),
    ],
  )
}
