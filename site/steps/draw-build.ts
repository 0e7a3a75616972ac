import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import type {RuleName} from '../../plugins/checks/all.ts'
import {figureDrawing} from '../../plugins/drawings/hero/figure.ts'
import {coverOf} from '../../plugins/drawings/pictures/step-pictures.ts'
import {svgText} from '../../plugins/drawings/writers/svg.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {markup} from '../kit/markup.ts'
import type {Hanging} from '../kit/site-data.ts'
import {programFails, tried} from './program-fails.ts'

/** What a build is drawn from for the pages of others. */
export interface DrawParts {
  build: Build
  plan: Plan
  /** It has a photograph that stands for it. */
  isPictured: boolean
}

/** A build as it is shown in other places than its own page. */
export interface Drawn {
  /** What stands for it where it has no photograph, as SVG. */
  cover?: string | undefined
  hanging?: Hanging | undefined
  /** What this program failed to draw, which is its own fault. */
  faults: readonly Problem[]
}

/** Draw a build for other places than its own page: made of its dimensions, and not again for every word of its prose. */
export function drawBuild({build: {values}, plan, isPictured}: DrawParts): Drawn {
  const faults: Problem<RuleName>[] = []
  const failed = (what: string, error: unknown) => void faults.push(programFails(`show ${what} of`, error))
  const cover = isPictured ? undefined : tried('the cover', () => coverOf(plan, values), failed)
  const woods = {boxWood: values.box?.wood?.value, plateWood: values.head?.plate?.wood?.value}
  const figure = tried('the drawing', () => figureDrawing(plan, woods), failed)
  return {
    cover: cover && svgText(cover),
    hanging: figure && {shapes: markup(figure.parts, 'svg'), frame: figure.frame, woods: figure.woods},
    faults,
  }
}
