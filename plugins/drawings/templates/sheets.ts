import type {Plan} from '../../plan/plan.ts'
import {type PaperName, paper} from '../../tables/paper.ts'
import {box, move, type Shape, type Sheet, type Text} from '../kit/shapes.ts'
import {boxTemplate} from './box.ts'
import {headTemplate} from './head.ts'
import {bothBars, type Template} from './marks.ts'
import {neckTemplate} from './neck.ts'
import {footMm, sheetFoot} from './sheet-foot.ts'
import {joinMarks, seamsOf, type Tiling, tile} from './tiles.ts'

/** Draw every template that a build has, neck first. */
export function templates(plan: Plan): Template[] {
  return [neckTemplate(plan), headTemplate(plan), boxTemplate(plan)].filter((one) => one !== undefined)
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
 * map, and bars on each sheet to check the printer by. `file` and `day` are printed as they are given.
 */
export function templateSheets(
  plan: Plan,
  paperName: PaperName,
  {file, day}: {file: string; day?: string | undefined},
): Sheet[] {
  const laid = templates(plan).map((template) => layOut(template, paperName))
  const sheets = laid.reduce((sum, {tiling}) => sum + tiling.tiles.length, 0)
  let sheet = 0
  let seams = 0
  return laid.flatMap(({template, widthMm, heightMm, tiling}) => {
    const joins = joinMarks(tiling, seams)
    seams += seamsOf(tiling)
    return tiling.tiles.map((window, i): Sheet => {
      sheet++
      const foot = {
        title: plan.title ?? plan.slug,
        template: `${template.name}, full size`,
        file,
        day,
        sheet,
        sheets,
        tiling,
        tile: i,
      }
      return {
        widthMm,
        heightMm,
        content: [
          {
            shapes: [
              ...template.shapes,
              ...joins,
              box('join', [window.x, window.y], [window.x + window.width, window.y + window.height]),
            ],
            by: [marginMm - window.x, marginMm - window.y],
            window: {x: marginMm, y: marginMm, width: window.width, height: window.height},
          },
          {shapes: sheetFoot(foot, widthMm - 2 * marginMm), by: [marginMm, heightMm - marginMm - footMm]},
        ],
      }
    })
  })
}

/** Take the paper upright, or lying where that needs fewer sheets. */
function layOut(template: Template, paperName: PaperName): Laid {
  const {widthMm: short, heightMm: long} = paper[paperName]
  const [upright, lying] = [
    [short, long],
    [long, short],
  ].map(
    ([widthMm, heightMm]): Laid => ({
      template,
      widthMm: widthMm!,
      heightMm: heightMm!,
      tiling: tile(template.frame, widthMm! - 2 * marginMm, heightMm! - 2 * marginMm - footMm - 3),
    }),
  )
  return lying!.tiling.tiles.length < upright!.tiling.tiles.length ? lying! : upright!
}

const gapMm = 15

/**
 * Lay every template of a build side by side on one sheet as large as they need, in mm, with the bars to check a
 * machine by, the build's name, its file and its day; nothing where there is no template.
 */
export function templateSheet(
  plan: Plan,
  {file, day}: {file: string; day?: string | undefined},
): Sheet | undefined {
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
  shapes.push(
    words(gapMm, gapMm, [plan.title ?? plan.slug, file, ...(day ? [day] : [])].join(', ')),
    ...bothBars([gapMm, footY]),
  )
  return {
    widthMm: Math.max(x, gapMm * 2 + 125),
    heightMm: footY + 6.5 + gapMm,
    content: [{shapes}],
  }
}

const words = (x: number, y: number, text: string): Text => ({
  is: 'text',
  ink: 'figure',
  at: [x, y],
  text,
  sizeMm: 4.2,
  anchor: 'start',
})
