import type {Plan} from '../../plan/shape/plan.ts'
import {toBox} from '../instrument/box-side.ts'
import {headPoint} from '../instrument/head-side.ts'
import {placedBox} from '../instrument/placed-box.ts'
import {scarfLine} from '../instrument/scarf-joint.ts'
import type {Note} from '../kit/notes.ts'
import type {Point} from '../kit/shape.ts'
import {angleOf, figureOf} from '../words.ts'

/** The notes on the strings' side: heights above the playing face, and where the strings bend. */
export function stringNotes(plan: Plan): Note[] {
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
export function backNotes(plan: Plan): Note[] {
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
