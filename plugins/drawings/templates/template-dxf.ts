import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {dxf} from '../writers/dxf.ts'
import {dayOf} from './day-of.ts'
import {templateSheet} from './template-sheet.ts'

/** Write a build's templates on one sheet at full size as the text of a DXF file in mm; nothing where there is none. */
export function templateDxf(plan: Plan, build: Build): string | undefined {
  const sheet = templateSheet(plan, {file: build.slug, day: dayOf(build)})
  return sheet && dxf(sheet)
}
