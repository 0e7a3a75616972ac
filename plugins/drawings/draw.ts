import type {Plan} from '../plan/plan.ts'
import {boxInside} from './instrument/box-inside.ts'
import type {Drawing, Rect, Shape} from './kit/shapes.ts'
import {bareSection, composeSection} from './views/cross-section.ts'
import {bareHead, composeHead} from './views/head.ts'
import {composeInside} from './views/inside.ts'
import {sayHead, sayInside, saySection, saySide, sayTop} from './views/says.ts'
import {composeSide, side} from './views/side.ts'
import {composeTop, front} from './views/top.ts'
import {fitText, view} from './views/view.ts'

export const viewNames = ['top', 'side', 'head', 'section', 'inside'] as const
export type ViewName = (typeof viewNames)[number]

interface View {
  title: string
  /** What is drawn of the instrument, without words and dimensions. */
  bare: (plan: Plan) => Shape[]
  compose: (plan: Plan, textMm: number) => Shape[]
  says: (plan: Plan) => string
  /** How tall it may be, in text heights, so that it keeps to a part of a screen. */
  tallest: number
}

const views: Record<ViewName, View> = {
  top: {title: 'from the front', bare: front, compose: composeTop, says: sayTop, tallest: 58},
  side: {title: 'from the side', bare: side, compose: composeSide, says: saySide, tallest: 58},
  head: {title: 'the head', bare: bareHead, compose: composeHead, says: sayHead, tallest: 36},
  section: {
    title: 'section of the neck',
    bare: bareSection,
    compose: composeSection,
    says: saySection,
    tallest: 36,
  },
  inside: {
    title: 'the top from inside',
    bare: boxInside,
    compose: composeInside,
    says: sayInside,
    tallest: 36,
  },
}

/**
 * Draw views of an instrument, each to scale in mm with its figures in the build's units; one whose inputs are
 * missing is left out. Top and side asked for together have one scale and one frame down the page, so that their
 * nut lines lie level.
 */
export function draw(plan: Plan, names: readonly ViewName[]): Drawing[] {
  const known = names.filter((name) => views[name].bare(plan).length > 0)
  const together = known.includes('top') && known.includes('side')
  const hung = (name: ViewName) => together && (name === 'top' || name === 'side')
  const sharedMm = Math.max(...known.filter(hung).map((name) => textOf(plan, name)))
  const drawings = known.map((name) => {
    const textMm = hung(name) ? sharedMm : textOf(plan, name)
    return framed(plan, name, textMm)
  })
  const hanging = drawings.filter((_, i) => hung(known[i]!))
  return drawings.map((drawing) => (hanging.includes(drawing) ? level(drawing, hanging) : drawing))
}

const textOf = (plan: Plan, name: ViewName): number =>
  fitText(views[name].bare(plan), (textMm) => views[name].compose(plan, textMm), views[name].tallest)

function framed(plan: Plan, name: ViewName, textMm: number): Drawing {
  const {title, compose, says} = views[name]
  return view(plan, {name, title, says: says(plan)}, compose(plan, textMm), textMm)
}

/** Give a drawing the height that it and those beside it need. */
function level(drawing: Drawing, beside: readonly Drawing[]): Drawing {
  const top = Math.min(...beside.map(({frame}) => frame.y))
  const bottom = Math.max(...beside.map(({frame}) => frame.y + frame.height))
  const frame: Rect = {...drawing.frame, y: top, height: bottom - top}
  return {...drawing, frame}
}
