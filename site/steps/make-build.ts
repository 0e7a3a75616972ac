import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {cardDrawing} from '../../plugins/drawings/views/card.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {type PageInput, renderPageBody} from '../../plugins/rehype/render-page-body.ts'
import {markup, withPrefix} from '../markup.ts'
import {type Picture, showPicture} from '../pictures/picture.ts'
import {wordsOf} from '../search-words.ts'
import type {Hanging, MadeBuild} from '../site-data.ts'

/** All that the costly part of a build's pages is made of. */
interface BuildParts extends Omit<PageInput, 'picture'> {
  /** The build's photographs, by the names that its file gives them. */
  pictures: Readonly<Record<string, Picture>>
}

/** Photographs of the prose fill its column. */
const inTheColumn = '(min-width: 40rem) 36rem, 100vw'

/** Word and draw a build: made of its input alone, so that it can be kept by it. */
export function makeBuild(input: BuildParts): MadeBuild {
  const {pictures, pathPrefix, ...page} = input
  const picture = ({target, alt, title}: {target: string; alt: string; title?: string}): ElementContent[] => {
    const found = pictures[target]
    if (!found) return [h('em', alt || title || target)]
    const shown = withPrefix(showPicture(found, alt || title || '', inTheColumn), pathPrefix)
    return [title ? h('span.captioned', [shown, h('span.caption', title)]) : shown]
  }
  const {html, headings} = renderPageBody({...page, pathPrefix, picture})
  return {html, headings: [...headings], hanging: hangingOf(input.plan), words: wordsOf(input.text)}
}

/** Heavier lines than a drawing to work from, in mm at the instrument's own size; thin ones vanish at this scale. */
const strokeMm: Readonly<Record<string, number>> = {outline: 4, edge: 2.5, nut: 2.5, string: 1.6}

/** Take the portfolio's drawing apart, so that a row can hang it and a card can lay it on its side. */
function hangingOf(plan: Plan): Hanging | undefined {
  const drawing = cardDrawing(plan)
  if (!drawing) return undefined
  const {svg, widthMm, heightMm, nutYMm, centreXMm} = drawing
  const shapes = svg.children.filter(
    (child) => child.type === 'element' && child.tagName === 'g',
  ) as Element[]
  for (const {properties} of shapes) {
    const [ink] = properties.className as string[]
    const width = strokeMm[ink?.replace('ink-', '') ?? '']
    if (width !== undefined) properties.strokeWidth = String(width)
  }
  return {shapes: markup(shapes, 'svg'), frame: {x: -centreXMm, y: -nutYMm, width: widthMm, height: heightMm}}
}
