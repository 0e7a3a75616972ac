import {inBrackets, placeNames} from '../../words/drawings/labels.ts'
import {postPlace, templateNames} from '../../words/drawings/templates.ts'
import {type Instrument, placed} from '../instrument/instrument.ts'
import {isStepped, scarfOnFaceMm} from '../instrument/neck.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {across, path, type Shape} from '../kit/shapes.ts'
import {drilledHole, punch, type Template, templateTextMm as textMm} from './marks.ts'

/**
 * Draw the head along its own face at full size: its edges, nut line, where the slope starts, the scarf's glue line and
 * the posts. Mm from the nut line; the head end up.
 */
export function headTemplate(instrument: Instrument): Template | undefined {
  const {plan, head} = instrument
  if (!head) return undefined
  const half = head.widthMm / 2
  const postMm = plan.outline?.tuners?.postHoleMm
  const posts = (plan.tuners ?? []).map((tuner) => ({...tuner, at: placed(instrument, tuner)}))
  const lines = headLines(instrument)
  const drawn: Shape[] = [
    path('centre', [0, -head.lengthMm - 4], [0, 4]),
    path('cut', [-half, 0], [-half, -head.lengthMm], [half, -head.lengthMm], [half, 0]),
    across('slot', half, 0),
    ...lines.map(({alongMm}) => across('pencil', half, -alongMm)),
    ...posts.flatMap(({at}) => (postMm ? drilledHole(at, postMm) : punch(at))),
  ]
  const note = (out: -1 | 1, stationMm: number, name: string): Note => ({
    at: [out * (half + 0.8), stationMm],
    name,
  })
  const postNotes = posts.map((post) =>
    note(post.at[0] < 0 ? -1 : 1, post.stationMm, inBrackets(postPlace(post, postMm, plan), post.proposed)),
  )
  const lineNotes = [{name: placeNames.nut, alongMm: 0}, ...lines].map(({name, alongMm}) =>
    note(-1, -alongMm, name),
  )
  const left = [...postNotes.filter(({at}) => at[0] < 0), ...lineNotes]
  const right = postNotes.filter(({at}) => at[0] >= 0)
  const shapes = [
    ...drawn,
    ...notesColumn(left, {base: -half - 3, out: -1, textMm}),
    ...notesColumn(right, {base: half + 3, out: 1, textMm}),
  ]
  return {name: templateNames.head, shapes, frame: extent(shapes, 2)}
}

/** The pencil lines across the head, by how far from the nut line they lie along its face. */
function headLines(instrument: Instrument): {name: string; alongMm: number}[] {
  const {head} = instrument
  const glueMm = scarfOnFaceMm(instrument)
  return [
    ...(head && isStepped(head) ? [{name: placeNames.slope, alongMm: head.ledgeMm}] : []),
    ...(glueMm === undefined ? [] : [{name: placeNames.scarfFace, alongMm: glueMm}]),
  ]
}
