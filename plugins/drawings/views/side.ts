import {saySide} from '../../words/drawings/alt-texts.ts'
import {angleOf, anglesBetween, placeOf, sideNames} from '../../words/drawings/labels.ts'
import {bareLength} from '../../words/lengths.ts'
import {boxSide} from '../instrument/box.ts'
import {bridgeSide, nutSide, postsSide} from '../instrument/hardware.ts'
import type {Instrument} from '../instrument/instrument.ts'
import {neckSide} from '../instrument/neck.ts'
import {headPoint, scarfLine, toBox} from '../instrument/profile.ts'
import {stringSide} from '../instrument/strings.ts'
import {lanesAcross, span} from '../kit/dimensions.ts'
import {extent} from '../kit/extent.ts'
import {type Note, notesColumn} from '../kit/notes.ts'
import {type Point, path, type Shape} from '../kit/shapes.ts'
import type {View} from './view.ts'

/**
 * The instrument from the side with its heights and angles, hanging from its nut line, strings to the left: mm behind
 * the playing face and down. Drawn alike for either hand.
 */
export const side: View = {bare, compose, says: ({plan}) => saySide(plan), tallest: 58}

function bare(instrument: Instrument): Shape[] {
  if (!instrument.neck) return []
  const scarf = scarfLine(instrument)
  return [
    ...boxSide(instrument),
    ...neckSide(instrument),
    ...(scarf ? [path('edge', ...scarf)] : []),
    ...nutSide(instrument),
    ...bridgeSide(instrument),
    ...postsSide(instrument),
    ...stringSide(instrument),
  ]
}

function compose(instrument: Instrument, drawn: readonly Shape[], textMm: number): Shape[] {
  const {x, y, width, height} = extent(drawn)
  const range = [y, y + height] as const
  const left = notesColumn(stringNotes(instrument), {base: x - 0.8 * textMm, out: -1, textMm, range})
  const right = notesColumn(backNotes(instrument), {base: x + width + 0.8 * textMm, out: 1, textMm, range})
  const below = extent([...drawn, ...left, ...right])
  return [...drawn, ...left, ...right, ...boxDepth(instrument, below.y + below.height, textMm)]
}

function boxDepth({neck, box, plan}: Instrument, bottomMm: number, textMm: number): Shape[] {
  if (!box || !neck || neck.tiltDeg !== 0) return []
  const fromMm = neck.aboveTopMm ?? 0
  const deep = span(fromMm, fromMm + box.depthMm, box.tailMm, bareLength(box.depthMm, plan))
  return lanesAcross([deep], bottomMm, 1, textMm)
}

/** The notes on the strings' side: heights above the playing face, and where the strings bend. */
function stringNotes({plan, head}: Instrument): Note[] {
  const {action, bridge, neck, outline, anchors} = plan
  if (!action || !bridge) return []
  const {nutMm, octaveMm, bridgeHeightMm} = action
  const angles = neck?.stringAngleDeg ?? neck?.scarf?.stringAngleDeg
  const anchorMm = anchors?.[0]?.stationMm
  const midwayMm = -(bridgeHeightMm + (outline?.anchors?.heightMm ?? 0)) / 2
  const note = (name: string, at: Point, figure: string): Note => ({at, name, figure, end: 'arrow'})
  return [
    note(sideNames.atNut, [-nutMm, 0], bareLength(nutMm, plan)),
    note(sideNames.atOctave, [-octaveMm, bridge.stationMm / 2], bareLength(octaveMm, plan)),
    ...(head && angles
      ? [note(sideNames.behindNut, headPoint(head, head.lengthMm * 0.2, nutMm), anglesBetween(angles))]
      : []),
    note(
      bridge.on === 'top' ? sideNames.bridgeOnTop : sideNames.bridge,
      [-bridgeHeightMm, bridge.stationMm],
      bareLength(bridge.heightMm ?? bridgeHeightMm, plan),
    ),
    ...(anchorMm !== undefined && bridge.breakAngleDeg !== undefined
      ? [
          note(
            sideNames.breakAngle,
            [midwayMm, (bridge.stationMm + anchorMm) / 2],
            angleOf(bridge.breakAngleDeg),
          ),
        ]
      : []),
  ]
}

/** The notes on the back: how the head leans, how thick things are, where the box stands to the playing face. */
function backNotes(instrument: Instrument): Note[] {
  const {neck, head, box, plan} = instrument
  const notes: Note[] = []
  const add = (name: string, at: Point, figure: string) => notes.push({at, name, figure, end: 'arrow'})
  if (!neck) return []
  if (head) {
    const behind = (part: number) => headPoint(head, head.lengthMm * part, -head.thicknessMm)
    add(sideNames.head, behind(0.85), bareLength(head.thicknessMm, plan))
    if (head.angleDeg > 0) add(sideNames.lean, behind(0.6), angleOf(head.angleDeg))
    if (head.stepMm > 0 && head.joint === 'straight')
      add(sideNames.step, behind(0.4), bareLength(head.stepMm, plan))
  }
  const {thicknessMm, fingerboard, roundOver, aboveTopMm} = neck
  const freeMm = box?.atMm ?? neck.tailMm
  add(sideNames.neck, [thicknessMm, freeMm * 0.4], bareLength(thicknessMm, plan))
  if (fingerboard) {
    const boardMm = fingerboard.thicknessMm
    add(sideNames.fingerboard, [boardMm, freeMm * 0.65], bareLength(boardMm, plan))
  }
  if (roundOver) {
    add(sideNames.roundedFrom, [thicknessMm, roundOver.fromMm], placeOf(roundOver.fromMm, plan))
    add(sideNames.roundedTo, [thicknessMm, roundOver.toMm], placeOf(roundOver.toMm, plan))
  }
  const [from, to] = scarfLine(instrument) ?? []
  const faceMm = plan.neck?.scarf?.faceMm
  if (from && to && faceMm !== undefined)
    notes.push({
      at: [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2],
      end: 'dot',
      name: sideNames.scarfFace,
      figure: bareLength(faceMm, plan),
    })
  if (box && aboveTopMm !== undefined)
    add(sideNames.faceAboveTop, toBox(instrument, 0, box.atMm), bareLength(aboveTopMm, plan))
  return notes
}
