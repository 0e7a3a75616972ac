import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {fileSvg} from '../writers/file-svg.ts'
import {dayOf} from './day-of.ts'
import {templateSheet} from './template-sheet.ts'

/** Write a build's templates on one sheet at full size as the text of an SVG file; nothing where there is none. */
export function templateSvg(plan: Plan, build: Build): string | undefined {
  const sheet = templateSheet(plan, {file: build.slug, day: dayOf(build)})
  return sheet && fileSvg(sheet, plan.title ?? plan.slug)
}
