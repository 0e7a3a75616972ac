import type {Build} from '../../build-file/build.ts'
import type {Plan} from '../../plan/plan.ts'
import type {PaperName} from '../../tables/paper.ts'
import {dxf} from '../writers/dxf.ts'
import {sheetsPdf} from '../writers/pdf.ts'
import {fileSvg} from '../writers/svg.ts'
import {templateSheet, templateSheets} from './sheets.ts'

/** Write a build's templates on one sheet at full size as the text of an SVG file; nothing where there is none. */
export function templateSvg(plan: Plan, build: Build): string | undefined {
  const sheet = templateSheet(plan, {file: build.slug, day: dayOf(build)})
  return sheet && fileSvg(sheet, plan.title ?? plan.slug)
}

/** Write a build's templates on one sheet at full size as the text of a DXF file in mm; nothing where there is none. */
export function templateDxf(plan: Plan, build: Build): string | undefined {
  const sheet = templateSheet(plan, {file: build.slug, day: dayOf(build)})
  return sheet && dxf(sheet)
}

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

/** The day that a build's papers bear: when it was done, or else begun. */
const dayOf = ({values}: Build): string | undefined => values.finished?.iso ?? values.started?.iso
