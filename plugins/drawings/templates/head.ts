import type {Plan} from '../../plan/plan.ts'
import {handOf} from '../instrument/hand.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {path, type Shape} from '../kit/shapes.ts'
import {diameterOf, lengthWords} from '../words.ts'
import {drilledHole, punch, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the head along its own face at full size: its edges, nut line, where the slope starts, the scarf's glue line and
 * the posts. Mm from the nut line; the head end up.
 */
export function headTemplate(plan: Plan): Template | undefined {
  const head = plan.outline?.head
  if (!head) return undefined
  const hand = handOf(plan)
  const half = head.widthMm / 2
  const postMm = plan.outline?.tuners?.postHoleMm
  const across = headLines(plan).map(({alongMm}) => path('pencil', [-half, -alongMm], [half, -alongMm]))
  const posts = plan.tuners ?? []
  const shapes: Shape[] = [
    path('centre', [0, -head.lengthMm - 4], [0, 4]),
    path('cut', [-half, 0], [-half, -head.lengthMm], [half, -head.lengthMm], [half, 0]),
    path('slot', [-half, 0], [half, 0]),
    ...across,
    ...posts.flatMap(({stationMm, offMm}) =>
      postMm ? drilledHole([hand.x(offMm), stationMm], postMm) : punch([hand.x(offMm), stationMm]),
    ),
  ]
  const postNotes = posts.map(({name, stationMm, offMm}): Note => {
    const out = hand.x(offMm) < 0 ? -1 : 1
    return {
      at: [out * (half + 0.8), stationMm],
      name: `${name ?? 'post'}${postMm ? ` ${diameterOf(postMm, plan)}` : ''}, ${lengthWords(-stationMm, plan)} from the nut`,
    }
  })
  const lineNotes = [{name: 'nut line', alongMm: 0}, ...headLines(plan)].map(
    ({name, alongMm}): Note => ({at: [-half - 0.8, -alongMm], name}),
  )
  shapes.push(
    ...notesColumn([...postNotes.filter(({at}) => at[0] < 0), ...lineNotes], {
      base: -half - 3,
      out: -1,
      textMm,
    }),
    ...notesColumn(
      postNotes.filter(({at}) => at[0] >= 0),
      {base: half + 3, out: 1, textMm},
    ),
  )
  return {name: 'head', shapes, frame: extent(shapes, 2)}
}

/** The pencil lines across the head, by how far from the nut line they lie along its face. */
function headLines({outline, neck}: Plan): {name: string; alongMm: number}[] {
  const {ledgeMm, angleDeg, stepMm, lengthMm} = outline!.head!
  const lines: {name: string; alongMm: number}[] = []
  if (ledgeMm > 0 && (angleDeg > 0 || stepMm > 0)) lines.push({name: 'slope starts', alongMm: ledgeMm})
  const glueMm = neck?.scarf && ledgeMm + neck.scarf.faceMm
  if (glueMm !== undefined && glueMm < lengthMm) lines.push({name: 'scarf’s glue line', alongMm: glueMm})
  return lines
}
