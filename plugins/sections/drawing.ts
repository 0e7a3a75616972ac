import type {RootContent} from 'mdast'
import {draw, isDrawn, type ViewName, viewNames} from '../drawings/draw.ts'
import {heroDrawing} from '../drawings/hero/hero.ts'
import {hasBrackets} from '../drawings/hero/names.ts'
import {instrumentOf} from '../drawings/instrument/instrument.ts'
import {pageSvg} from '../drawings/writers/svg.ts'
import type {Plan} from '../plan/plan.ts'
import {sayTop} from '../words/drawings/alt-texts.ts'
import {unitWords, viewWords} from '../words/drawings/labels.ts'
import {postKey} from './drilling.ts'
import {figure, fold} from './kit.ts'
import {rowKey} from './layout.ts'
import type {Section, SectionInput} from './section.ts'

const usual: readonly ViewName[] = ['top', 'side']

/** The instrument drawn to scale: the view that the directive names, else from the front and from the side. */
export const drawing: Section = {
  name: 'drawing',
  title: 'Drawing',
  needs: ({plan, attributes}) =>
    isDrawn(plan, viewsOf(attributes)) ? [] : missing(plan, viewsOf(attributes)[0]!),
  content: (input) => {
    const {plan, attributes} = input
    const views = draw(plan, attributes.view ? viewsOf(attributes) : viewNames).map((one) =>
      figure(pageSvg(one, `drawing-${one.name}`), {
        alt: one.says,
        caption: [`${viewWords[one.name as ViewName].caption}; ${unitWords(plan)}.`],
      }),
    )
    if (attributes.view) return views
    return [...whole(input), ...fold('Every dimension: front, side, head, section, inside the top', views)]
  },
}

/** Show the whole instrument, each name on it a way to its row in the layout, a post's to that of its hole. */
function whole({plan, build: {values}, isOnPage = () => true}: SectionInput): RootContent[] {
  const rows = new Set([
    ...(isOnPage('layout') ? (plan.layout ?? []).map(rowKey) : []),
    ...(isOnPage('drilling') ? (plan.holes ?? []).map(postKey) : []),
  ])
  const svg = heroDrawing(plan, {
    boxWood: values.box?.wood?.value,
    plateWood: values.head?.plate?.wood?.value,
    leads: (key) => (rows.has(key) ? `#at-${key}` : undefined),
  })
  if (!svg) return []
  const isBracketed = hasBrackets(instrumentOf(plan))
  const caption = [
    `${viewWords.whole.caption}; ${unitWords(plan)}${isBracketed ? ', what is assumed in brackets' : ''}.`,
    ...(rows.size > 0 ? [' A name leads to its row.'] : []),
  ]
  return [figure(svg, {alt: sayTop(plan), caption})]
}

function viewsOf({view}: SectionInput['attributes']): readonly ViewName[] {
  const [named] = viewNames.filter((name) => name === view)
  return named === 'section' ? ['section', 'section-inside'] : named ? [named] : usual
}

function missing({scale, box}: Plan, view: ViewName): string[] {
  if (view === 'inside') return box?.outside ? ['scale.length'] : ['box.length', 'box.width', 'box.depth']
  if (view === 'head') return ['head.length']
  if (scale?.lengthMm === undefined) return ['scale.length']
  return ['neck.width', 'neck.thickness']
}
