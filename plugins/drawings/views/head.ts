import type {HeadOutline} from '../../plan/outline.ts'
import type {Plan} from '../../plan/plan.ts'
import {handOf} from '../instrument/hand.ts'
import {nutAndBridge, tunersFront} from '../instrument/hardware.ts'
import {scarfFront} from '../instrument/head.ts'
import {headFront, neckWidth} from '../instrument/neck.ts'
import {centreLine, lanes, type Span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {type Point, path, type Shape, transpose} from '../kit/shapes.ts'
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

/** How much of the neck is drawn with its head, in mm. */
const stubMm = ({lengthMm}: HeadOutline): number => lengthMm * 0.16

/** Draw the head along its own face with posts, edges and string paths, and a stretch of neck below the nut line. */
export function bareHead(plan: Plan): Shape[] {
  const {outline, scale, bridge, tuners = []} = plan
  const {neck, head} = outline ?? {}
  if (!outline || !neck || !head) return []
  const hand = handOf(plan)
  const stub = stubMm(head)
  const half = neckWidth(neck, stub) / 2
  const {bridge: _, ...nutOnly} = plan
  const strings = (scale?.nutOffMm ?? []).map((nutOff, i) => {
    const post = tuners[i]
    const from: Point[] = post ? [[hand.x(post.offMm), post.stationMm]] : []
    const part = bridge ? stub / bridge.stationMm : 0
    const at = nutOff + ((scale?.bridgeOffMm?.[i] ?? nutOff) - nutOff) * part
    return path('string', ...from, [hand.x(nutOff), 0], [hand.x(at), stub])
  })
  return [
    ...headFront(outline),
    ...scarfFront(plan),
    path('outline', [-neck.nutWidthMm / 2, 0], [-half, stub]),
    path('outline', [neck.nutWidthMm / 2, 0], [half, stub]),
    broken(half, stub),
    ...nutAndBridge(nutOnly),
    ...tunersFront(plan, hand),
    ...strings,
  ]
}

/** The line where a drawing stops and the thing goes on (ISO 128: thin, with a zigzag). */
const broken = (half: number, y: number): Shape => {
  const step = half * 0.16
  return path(
    'dimension',
    [-half - step, y],
    [-step, y],
    [-step / 2, y - step],
    [step / 2, y + step],
    [step, y],
    [half + step, y],
  )
}
