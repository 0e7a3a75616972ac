import {draw, type ViewName, viewNames} from '../drawings/draw.ts'
import {unitWords} from '../drawings/words.ts'
import {pageSvg} from '../drawings/writers/svg.ts'
import type {Plan} from '../plan/plan.ts'
import {figure} from './kit.ts'
import type {Section, SectionInput} from './section.ts'

const captions: Record<ViewName, string> = {
  top: 'From the front, hanging from the nut line; the head along its own face',
  side: 'From the side',
  head: 'The head along its own face, measured from the nut line',
  section: 'Across the middle of the neck, seen from the bridge',
  inside: 'The box’s top from inside, measured from its head side',
}

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
        caption: [`${captions[one.name as ViewName]}; ${unitWords(plan)}.`],
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
