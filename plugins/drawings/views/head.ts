import type {Plan} from '../../plan/shape/plan.ts'
import {bareHead, stubMm} from '../instrument/bare-head.ts'
import {handOf} from '../instrument/hand.ts'
import {centreLine} from '../kit/centre-line.ts'
import {extent} from '../kit/extent.ts'
import {lanes, type Span} from '../kit/lanes.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import type {Point, Shape} from '../kit/shape.ts'
import {transpose} from '../kit/transpose.ts'
import {figureOf} from '../words.ts'

/** Draw the head with the place of each post, for text so many mm high. */
export function composeHead(plan: Plan, textMm: number): Shape[] {
  const drawn = bareHead(plan)
  const {neck, head} = plan.outline ?? {}
  if (!neck || !head || !drawn.length) return []
  const {x, y, width, height} = extent(drawn)
  const [left, right] = [x - 0.7 * textMm, x + width + 0.7 * textMm]
  const range = [y, y + height] as const
  const notes = [...posts(plan), ...ends(plan)]
  const columns = [
    ...notesColumn(
      notes.filter(({at}) => at[0] < 0),
      {base: left, out: -1, textMm, range},
    ),
    ...notesColumn(
      notes.filter(({at}) => at[0] >= 0),
      {base: right, out: 1, textMm, range},
    ),
  ]
  const reach = extent([...drawn, ...columns])
  const wide: Span = {
    from: -head.widthMm / 2,
    to: head.widthMm / 2,
    fromEdge: -head.lengthMm,
    toEdge: -head.lengthMm,
    figure: figureOf(head.widthMm, plan),
  }
  return [
    centreLine(y, y + height, textMm),
    ...drawn,
    ...columns,
    ...transpose(lanes([wide], reach.y - 0.2 * textMm, -1, textMm)),
    ...transpose(lanes(stringSpan(plan), reach.y + reach.height + 0.5 * textMm, 1, textMm)),
  ]
}

function posts(plan: Plan): Note[] {
  const hand = handOf(plan)
  const radius = (plan.outline?.tuners?.postHoleMm ?? 0) / 2
  return (plan.tuners ?? []).map(({name, stationMm, offMm}) => {
    const x = hand.x(offMm)
    return {
      at: [x + (x < 0 ? -radius : radius), stationMm],
      name: `${name ?? 'post'}, ${offMm === 0 ? 'centred' : `off ${figureOf(Math.abs(offMm), plan)}`}`,
      figure: figureOf(stationMm, plan),
    }
  })
}

function ends(plan: Plan): Note[] {
  const {neck, head} = plan.outline!
  const isStepped = head!.ledgeMm > 0 && (head!.angleDeg > 0 || head!.stepMm > 0)
  const at = (station: number): Point => [-head!.widthMm / 2, station]
  return [
    {at: at(-head!.lengthMm), name: 'head end', figure: figureOf(-head!.lengthMm, plan)},
    ...(isStepped
      ? [{at: at(-head!.ledgeMm), name: 'slope starts', figure: figureOf(-head!.ledgeMm, plan)}]
      : []),
    {at: [-neck!.nutWidthMm / 2, 0], name: 'nut line'},
  ]
}

/** First to last string at the nut. */
function stringSpan(plan: Plan): Span[] {
  const offs = plan.scale?.nutOffMm ?? []
  const hand = handOf(plan)
  const [from, to] = [offs[0], offs.at(-1)]
  if (from === undefined || to === undefined || to - from < 0.01) return []
  const edge = stubMm(plan.outline!.head!)
  return [
    {from: hand.x(from), to: hand.x(to), fromEdge: edge, toEdge: edge, figure: figureOf(to - from, plan)},
  ]
}
