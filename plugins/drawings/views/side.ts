import {nutAboveFaceMm} from '../../plan/action.ts'
import type {Plan} from '../../plan/plan.ts'
import {boxSide, placedBox, toBox} from '../instrument/box.ts'
import {headPoint, scarfLine, scarfSide} from '../instrument/head.ts'
import {neckSide} from '../instrument/neck.ts'
import {lanes} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {circle, type Point, path, box as rectangle, type Shape, transpose} from '../kit/shapes.ts'
import {angleOf, figureOf} from '../words.ts'

/** Draw the instrument from the side with its heights and angles, for text so many mm high. */
export function composeSide(plan: Plan, textMm: number): Shape[] {
  const drawn = side(plan)
  if (!drawn.length) return []
  const {x, y, width, height} = extent(drawn)
  const range = [y, y + height] as const
  const left = notesColumn(stringNotes(plan), {base: x - 0.8 * textMm, out: -1, textMm, range})
  const right = notesColumn(backNotes(plan), {base: x + width + 0.8 * textMm, out: 1, textMm, range})
  const below = extent([...drawn, ...left, ...right])
  return [...drawn, ...left, ...right, ...boxDepth(plan, below.y + below.height, textMm)]
}

function boxDepth(plan: Plan, bottom: number, textMm: number): Shape[] {
  const neck = plan.outline?.neck
  const box = placedBox(plan)
  if (!box || !neck || neck.tiltDeg !== 0) return []
  const from = neck.aboveTopMm ?? 0
  const edge = box.tailMm
  const figure = figureOf(box.depthMm, plan)
  return transpose(
    lanes([{from, to: from + box.depthMm, fromEdge: edge, toEdge: edge, figure}], bottom, 1, textMm),
  )
}

/** The notes on the strings' side: heights above the playing face, and where the strings bend. */
function stringNotes(plan: Plan): Note[] {
  const {action, bridge, neck, outline, anchors} = plan
  const notes: Note[] = []
  const add = (at: Point, name: string, figure: string | undefined) => {
    if (figure) notes.push({at, name, figure, end: 'arrow'})
  }
  if (action && bridge) {
    const {nutMm, octaveMm, bridgeHeightMm} = action
    const angles = neck?.stringAngleDeg ?? neck?.scarf?.stringAngleDeg
    add([-nutMm, 0], 'string at nut', figureOf(nutMm, plan))
    add([-octaveMm, bridge.stationMm / 2], 'at the octave', figureOf(octaveMm, plan))
    if (outline?.head)
      add(
        headPoint(outline.head, outline.head.lengthMm * 0.2, nutMm),
        'behind the nut',
        angles && range(angles),
      )
    add(
      [-bridgeHeightMm, bridge.stationMm],
      bridge.on === 'top' ? 'bridge, on top' : 'bridge height',
      figureOf(bridge.heightMm ?? bridgeHeightMm, plan),
    )
    const anchorMm = anchors?.[0]?.stationMm
    const height = outline?.anchors?.heightMm ?? 0
    if (anchorMm !== undefined)
      add(
        [-(bridgeHeightMm + height) / 2, (bridge.stationMm + anchorMm) / 2],
        'break angle',
        bridge.breakAngleDeg === undefined ? undefined : angleOf(bridge.breakAngleDeg),
      )
  }
  return notes
}

const range = (angles: readonly number[]) => {
  const [low, high] = [angleOf(Math.min(...angles)), angleOf(Math.max(...angles))]
  return low === high ? low : `${low.slice(0, -1)} to ${high}`
}

/** The notes on the back: how the head leans, how thick things are, where the box stands to the playing face. */
function backNotes(plan: Plan): Note[] {
  const {outline, neck: section} = plan
  const {neck, head} = outline ?? {}
  const box = placedBox(plan)
  const notes: Note[] = []
  const add = (at: Point, name: string, figure: string) => notes.push({at, name, figure, end: 'arrow'})
  if (head && neck) {
    const behind = (along: number) => headPoint(head, along, -head.thicknessMm)
    add(behind(head.lengthMm * 0.85), 'head thick', figureOf(head.thicknessMm, plan))
    if (head.angleDeg > 0) add(behind(head.lengthMm * 0.6), 'leans back', angleOf(head.angleDeg))
    if (head.stepMm > 0 && head.joint === 'straight')
      add(behind(head.lengthMm * 0.4), 'cut down', figureOf(head.stepMm, plan))
  }
  if (neck) {
    const free = box?.atMm ?? neck.tailMm
    const {roundOver} = neck
    add([neck.thicknessMm, free * 0.4], 'neck thick', figureOf(neck.thicknessMm, plan))
    if (neck.fingerboard)
      add(
        [neck.fingerboard.thicknessMm, free * 0.65],
        'fingerboard',
        figureOf(neck.fingerboard.thicknessMm, plan),
      )
    if (roundOver) {
      add([neck.thicknessMm, roundOver.fromMm], 'rounded from', figureOf(roundOver.fromMm, plan))
      add([neck.thicknessMm, roundOver.toMm], 'rounded to', figureOf(roundOver.toMm, plan))
    }
    const [from, to] = scarfLine(plan) ?? []
    if (from && to && section?.scarf)
      notes.push({
        at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
        end: 'dot',
        name: 'scarf face',
        figure: figureOf(section.scarf.faceMm, plan),
      })
  }
  if (box && neck?.aboveTopMm !== undefined)
    add(toBox(plan, 0, box.atMm), 'face above top', figureOf(neck.aboveTopMm, plan))
  return notes
}

/**
 * Draw the instrument from the side, hanging from its nut line at 0, strings to the left: mm behind the playing face
 * and down. Drawn alike for either hand.
 */
export function side(plan: Plan): Shape[] {
  if (!plan.outline?.neck) return []
  return [
    ...boxSide(plan),
    ...neckSide(plan),
    ...scarfSide(plan),
    ...nutSide(plan),
    ...bridgeSide(plan),
    ...postsSide(plan),
    ...stringSide(plan),
  ]
}

function nutSide({outline, action}: Plan): Shape[] {
  const {kind, alongMm, grooveMm} = outline?.nut ?? {kind: 'flat', alongMm: 0, grooveMm: 0}
  if (alongMm === 0) return []
  if (kind === 'rod' || kind === 'bolt') return [circle('nut', [grooveMm - alongMm / 2, 0], alongMm / 2)]
  return [rectangle('nut', [-(action?.nutMm ?? 0), -alongMm], [grooveMm, 0])]
}

function bridgeSide(plan: Plan): Shape[] {
  const {outline, action, bridge} = plan
  if (!outline?.bridge || !action || !bridge) return []
  const {stationMm, on} = bridge
  const half = outline.bridge.footMm / 2
  const under = on === 'top' ? toBox(plan, 0, stationMm)[0] : -(action.bridgeStandsMm ?? 0)
  const crown = -action.bridgeHeightMm
  return half > 0
    ? [rectangle('nut', [crown, stationMm - half], [under, stationMm + half])]
    : [path('nut', [crown, stationMm], [under, stationMm])]
}

function postsSide({outline, tuners = []}: Plan): Shape[] {
  const head = outline?.head
  const {postHoleMm, stringHeightMm = postHoleMm} = outline?.tuners ?? {}
  if (!head || !postHoleMm || !stringHeightMm) return []
  const half = postHoleMm / 2
  const posts = tuners.filter(({stationMm}) => stationMm < 0)
  return posts.map(({stationMm}) =>
    path(
      'edge',
      headPoint(head, -stationMm - half),
      headPoint(head, -stationMm - half, stringHeightMm * 1.4),
      headPoint(head, -stationMm + half, stringHeightMm * 1.4),
      headPoint(head, -stationMm + half),
    ),
  )
}

/** Draw the string's underside from the farthest post over nut and bridge to its anchor. */
function stringSide({outline, action, bridge, tuners = [], anchors = []}: Plan): Shape[] {
  if (!action || !bridge) return []
  const points: Point[] = [
    [-nutAboveFaceMm(action), 0],
    [-action.bridgeHeightMm, bridge.stationMm],
  ]
  const farMm = tuners.reduce((least, {stationMm}) => Math.min(least, stationMm), 0)
  if (outline?.head && farMm < 0)
    points.unshift(headPoint(outline.head, -farMm, outline.tuners?.stringHeightMm ?? 0))
  const anchor = anchors[0]
  if (anchor) points.push([-(outline?.anchors?.heightMm ?? 0), anchor.stationMm])
  return [path('string', ...points)]
}
