import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import type {PaperName} from '../../tables/paper.ts'
import {sheetsPdf} from '../pdf.ts'
import {dayOf} from './day-of.ts'
import {templateSheets} from './template-sheets.ts'

/** Print a build's templates on Letter or A4, as PDF at full size; nothing where there is none. Runs on Node alone. */
export async function templatePdf(
  plan: Plan,
  build: Build,
  paper: PaperName,
): Promise<Uint8Array | undefined> {
  const day = dayOf(build)
  const sheets = templateSheets(plan, paper, {file: build.slug, day})
  return sheets.length > 0 ? sheetsPdf(sheets, {title: plan.title ?? plan.slug, day}) : undefined
}
