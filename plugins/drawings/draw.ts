import type {Plan} from '../plan/plan.ts'
import {titleOf, viewWords} from '../words/drawings/labels.ts'
import {type Instrument, instrumentOf} from './instrument/instrument.ts'
import {extent} from './kit/extent.ts'
import type {Drawing, Shape} from './kit/shapes.ts'
import {crossSection, insideSection} from './views/cross-section.ts'
import {head} from './views/head.ts'
import {inside} from './views/inside.ts'
import {side} from './views/side.ts'
import {top} from './views/top.ts'
import {fitText, type View} from './views/view.ts'

export const viewNames = ['top', 'side', 'head', 'section', 'inside'] as const
/** A section of the neck is drawn inside the box as well, where it runs through one. */
export type ViewName = (typeof viewNames)[number] | 'section-inside'

const views: Record<ViewName, View> = {
  top,
  side,
  head,
  section: crossSection,
  'section-inside': insideSection,
  inside,
}

/** A view of an instrument as far as it is drawn, and the height of text that it would have by itself. */
interface Begun {
  name: ViewName
  bare: readonly Shape[]
  textMm: number
}

/**
 * Draw views of an instrument, each to scale in mm with its figures in the build's units; one whose inputs are
 * missing is left out. Top and side asked for together have one scale and one frame down the page, so that their
 * nut lines lie level.
 */
export function draw(plan: Plan, names: readonly ViewName[]): Drawing[] {
  const instrument = instrumentOf(plan)
  const begun = names.flatMap((name) => begin(instrument, name))
  const known = begun.map(({name}) => name)
  const isHung = ({name}: {name: string}) =>
    (name === 'top' || name === 'side') && known.includes('top') && known.includes('side')
  const sharedMm = Math.max(...begun.filter(isHung).map(({textMm}) => textMm))
  const drawings = begun.map((one) => finish(instrument, isHung(one) ? {...one, textMm: sharedMm} : one))
  const hung = drawings.filter(isHung)
  return drawings.map((drawing) => (isHung(drawing) ? level(drawing, hung) : drawing))
}

/** Tell whether one of these views of an instrument can be drawn. */
export function isDrawn(plan: Plan, names: readonly ViewName[]): boolean {
  const instrument = instrumentOf(plan)
  return names.some((name) => views[name].bare(instrument).length > 0)
}

function begin(instrument: Instrument, name: ViewName): Begun[] {
  const {bare: drawBare, compose, tallest} = views[name]
  const bare = drawBare(instrument)
  if (bare.length === 0) return []
  return [{name, bare, textMm: fitText(bare, (textMm) => compose(instrument, bare, textMm), tallest)}]
}

function finish(instrument: Instrument, {name, bare, textMm}: Begun): Drawing {
  const {compose, says} = views[name]
  const shapes = compose(instrument, bare, textMm)
  return {
    name,
    title: titleOf(instrument.plan, viewWords[name].title),
    says: says(instrument),
    textMm,
    shapes,
    frame: extent(shapes, textMm / 2),
  }
}

/** Give a drawing the height that it and those beside it need. */
function level(drawing: Drawing, beside: readonly Drawing[]): Drawing {
  const top = Math.min(...beside.map(({frame}) => frame.y))
  const bottom = Math.max(...beside.map(({frame}) => frame.y + frame.height))
  return {...drawing, frame: {...drawing.frame, y: top, height: bottom - top}}
}
