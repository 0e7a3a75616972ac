import type {Element, ElementContent} from 'hast'
import {h, s} from 'hastscript'
import {stepPictures} from '../../plugins/drawings/pictures/step-pictures.ts'
import type {SiteBuild} from '../kit/site-data.ts'

/** More than two pages hold in 14 points with pictures 20 mm wide: measured on the journal's own sheets. */
const mostSigns = 7900
/** A picture takes about so many signs of text. */
const pictureSigns = 60

/** The pictures of a sheet, each beside its step; paper leaves them out where two pages are full without them. */
export interface SheetPictures {
  beside: (id: string) => Element | undefined
  /** What the steps draw from, before them. */
  store: Element | undefined
  /** Two pages of paper hold these steps with their pictures. */
  fitOnPaper: (steps: readonly Element[]) => boolean
}

/** Draw the steps of a build for its sheet. */
export function sheetPictures({plan, build}: SiteBuild): SheetPictures {
  const pictures = stepPictures(plan, build.values)
  const shown = [...pictures].map(([id, svg]) => ({id, svg}))
  return {
    beside: (id) => {
      const svg = pictures.get(id)
      return svg && h('div.step-picture', [used(svg, id)])
    },
    store:
      shown.length > 0
        ? s(
            'svg',
            {className: ['picture-store'], width: 0, height: 0, ariaHidden: 'true'},
            s(
              'defs',
              shown.map(({id, svg}) => stored(svg, id)),
            ),
          )
        : undefined,
    fitOnPaper: (steps) =>
      steps.reduce((sum, step) => sum + signsOf(step), 0) + shown.length * pictureSigns <= mostSigns,
  }
}

/** Count the signs of a step's words that come on paper. */
function signsOf(node: ElementContent): number {
  if (node.type === 'text') return node.value.length
  if (node.type !== 'element' || isOffPaper(node)) return 0
  return node.children.reduce((sum, child) => sum + signsOf(child), 0)
}

const isOffPaper = ({properties}: Element) =>
  /^(step-picture|on-screen|in-hand)$/.test(String(properties.className))

const isTold = (child: ElementContent) =>
  child.type === 'element' && (child.tagName === 'title' || child.tagName === 'desc')

/** Numbers and their leaders stand in the picture itself, since paper leaves them out. */
const isNote = (child: ElementContent) =>
  child.type === 'element' && /^pic-(text|lead)$/.test(String(child.properties.className))

const storeId = (id: string) => `store-${id}`

function stored(svg: Element, id: string): Element {
  const {fill, stroke, strokeLineCap, strokeLineJoin} = svg.properties
  const drawn = svg.children.filter((child) => !isTold(child) && !isNote(child))
  return s('g', {id: storeId(id), fill, stroke, strokeLineCap, strokeLineJoin}, drawn)
}

function used(svg: Element, id: string): Element {
  const [told, notes] = [svg.children.filter(isTold), svg.children.filter(isNote)]
  return {...svg, children: [...told, s('use', {href: `#${storeId(id)}`}), ...notes]}
}
