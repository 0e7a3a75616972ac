import {draw, type ViewName, viewNames} from '../drawings/draw.ts'
import {pageSvg} from '../drawings/writers/svg.ts'
import type {Plan} from '../plan/plan.ts'
import {unitWords, viewWords} from '../words/drawings/labels.ts'
import {figure} from './kit.ts'
import type {Section, SectionInput} from './section.ts'

const usual: readonly ViewName[] = ['top', 'side']

/** The instrument drawn to scale: the view that the directive names, else from the front and from the side. */
export const drawing: Section = {
  name: 'drawing',
  title: 'Drawing',
  needs: ({plan, attributes}) =>
    draw(plan, viewsOf(attributes)).length > 0 ? [] : missing(plan, viewsOf(attributes)[0]!),
  content: ({plan, attributes}) =>
    draw(plan, viewsOf(attributes)).map((one) =>
      figure(pageSvg(one, `drawing-${one.name}`), {
        alt: one.says,
        caption: [`${viewWords[one.name as ViewName].caption}; ${unitWords(plan)}.`],
      }),
    ),
}

function viewsOf({view}: SectionInput['attributes']): readonly ViewName[] {
  const named = viewNames.filter((name) => name === view)
  return named.length > 0 ? named : usual
}

function missing({scale, box}: Plan, view: ViewName): string[] {
  if (view === 'inside') return box?.outside ? ['scale.length'] : ['box.length', 'box.width', 'box.depth']
  if (view === 'head') return ['head.length']
  if (scale?.lengthMm === undefined) return ['scale.length']
  return ['neck.width', 'neck.thickness']
}
