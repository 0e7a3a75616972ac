import type {Build} from '../../build-file/schema/build.ts'
import type {Plan} from '../../plan/plan.ts'
import {type PaperName, paper} from '../../tables/paper.ts'
import {instrumentOf} from '../instrument/instrument.ts'
import {label, move, rectangle, type Shape, type Sheet} from '../kit/shapes.ts'
import {dxf} from '../writers/dxf.ts'
import {sheetsPdf} from '../writers/pdf.ts'
import {fileSvg} from '../writers/svg.ts'
import {boxTemplate} from './box.ts'
import {headTemplate} from './head.ts'
import {bothBars, type Template} from './marks.ts'
import {neckTemplate, radiusGauge} from './neck.ts'
import {footMm, sheetFoot} from './sheet-foot.ts'
import {joinMarks, seamsOf, type Tiling, tile} from './tiles.ts'

/** Draw every template that a build has, neck first. */
export function templates(plan: Plan): Template[] {
  const instrument = instrumentOf(plan)
  return [
    neckTemplate(instrument),
    headTemplate(instrument),
    boxTemplate(instrument),
    radiusGauge(instrument),
  ].filter((one) => one !== undefined)
}

/** What a build's papers are marked with: its file's name, and a day as it is printed. */
interface Marked {
  file: string
  day?: string | undefined
}

const gapMm = 15

/**
 * Lay every template of a build side by side on one sheet as large as they need, in mm, with the bars to check a
 * machine by, the build's name, its file and its day; nothing where there is no template.
 */
export function templateSheet(plan: Plan, {file, day}: Marked): Sheet | undefined {
  const all = templates(plan)
  if (all.length === 0) return undefined
  const tallest = Math.max(...all.map(({frame}) => frame.height))
  const shapes: Shape[] = []
  let x = gapMm
  for (const {shapes: drawn, frame} of all) {
    shapes.push(...move(drawn, x - frame.x, gapMm + 10 - frame.y))
    x += frame.width + gapMm
  }
  const footY = gapMm + 10 + tallest + gapMm
  const heading = [plan.title ?? plan.slug, file, ...(day ? [day] : [])].join(', ')
  shapes.push(label(heading, [gapMm, gapMm], 4.2), ...bothBars([gapMm, footY]))
  return {
    widthMm: Math.max(x, gapMm * 2 + 125),
    heightMm: footY + 6.5 + gapMm,
    content: [{shapes}],
  }
}

/** What no home printer reaches, on every side (mm): 1/2 in, common practice, no source. */
const marginMm = 12.7

interface Laid {
  template: Template
  widthMm: number
  heightMm: number
  tiling: Tiling
}

/**
 * Lay every template of a build out on sheets of one paper at full size: cut into tiles, with marks to join them by, a
 * map, and bars on each sheet to check the printer by.
 */
export function templateSheets(plan: Plan, paperName: PaperName, marked: Marked): Sheet[] {
  const laid = templates(plan).map((template) => layOut(template, paperName))
  const sheets = laid.reduce((sum, {tiling}) => sum + tiling.tiles.length, 0)
  const title = plan.title ?? plan.slug
  let sheet = 0
  let seams = 0
  return laid.flatMap((one) => {
    const {template, tiling} = one
    const joins = joinMarks(tiling, seams)
    seams += seamsOf(tiling)
    return tiling.tiles.map((_, tile) => {
      sheet++
      const foot = {...marked, title, template: template.name, sheet, sheets, tiling, tile}
      return tileSheet(one, joins, sheetFoot(foot, one.widthMm - 2 * marginMm), tile)
    })
  })
}

/** One tile of a template within its frame, over the sheet's foot. */
function tileSheet(
  {template, widthMm, heightMm, tiling}: Laid,
  joins: readonly Shape[],
  foot: readonly Shape[],
  tile: number,
): Sheet {
  const {x, y, width, height} = tiling.tiles[tile]!
  return {
    widthMm,
    heightMm,
    content: [
      {
        shapes: [...template.shapes, ...joins, rectangle('join', [x, y], [x + width, y + height])],
        by: [marginMm - x, marginMm - y],
        window: {x: marginMm, y: marginMm, width, height},
      },
      {shapes: foot, by: [marginMm, heightMm - marginMm - footMm]},
    ],
  }
}

/** Take the paper upright, or lying where that needs fewer sheets. */
function layOut(template: Template, paperName: PaperName): Laid {
  const {widthMm: short, heightMm: long} = paper[paperName]
  const laid = (widthMm: number, heightMm: number): Laid => ({
    template,
    widthMm,
    heightMm,
    tiling: tile(template.frame, widthMm - 2 * marginMm, heightMm - 2 * marginMm - footMm - 3),
  })
  const [upright, lying] = [laid(short, long), laid(long, short)]
  return lying.tiling.tiles.length < upright.tiling.tiles.length ? lying : upright
}

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
