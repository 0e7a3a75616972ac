import type {Plan} from '../../plan/shape/plan.ts'
import {type PaperName, paper} from '../../tables/paper.ts'
import {box} from '../kit/shape.ts'
import type {Sheet} from '../kit/sheet.ts'
import {joinMarks, seamsOf} from './join-marks.ts'
import {footMm, sheetFoot} from './sheet-foot.ts'
import type {Template} from './template.ts'
import {templates} from './templates.ts'
import {type Tiling, tile} from './tiling.ts'

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
