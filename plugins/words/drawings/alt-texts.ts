import type {NeckCrossSection} from '../../plan/neck-shape/cut.ts'
import type {Plan} from '../../plan/plan.ts'
import type {CutPiece} from '../../plan/stock/cut-list.ts'
import {lengthWords} from '../lengths.ts'
import {toSide, toSideSeen} from '../sides.ts'
import {angleOf} from './labels.ts'

// What each drawing shows, in sentences, for those who don't see it.

const sentence = (parts: readonly (string | false | undefined)[]): string =>
  `${parts.filter(Boolean).join('; ')}.`.replace(/^./, (first) => first.toUpperCase())

const counted = (count: number, one: string) => `${count} ${one}${count === 1 ? '' : 's'}`

const offCentre = (offMm: number, plan: Plan) =>
  offMm === 0 ? ` ${toSide(0, plan)}` : `, ${lengthWords(Math.abs(offMm), plan)} ${toSideSeen(offMm, plan)}`

export function sayTop(plan: Plan): string {
  const {scale, outline, bridge, box} = plan
  const say = (mm: number) => lengthWords(mm, plan)
  const lines = scale?.lines?.length ?? 0
  const {neck, head} = outline ?? {}
  const holes = box?.soundHoles ?? []
  const {atMm, outside} = box ?? {}
  const isPlaced = atMm !== undefined && outside
  return sentence([
    'the instrument from the front, to scale, head up',
    head && neck && !neck.isOpen && `${say(head.lengthMm + neck.tailMm)} overall`,
    scale?.lengthMm !== undefined && `scale length ${say(scale.lengthMm)}`,
    isPlaced &&
      `box ${say(outside.lengthMm)} by ${say(outside.widthMm)}, from ${say(atMm)} to ${say(atMm + outside.lengthMm)} from the nut line`,
    isPlaced && bridge && `bridge line ${say(bridge.stationMm - atMm)} along the box`,
    lines > 0 && counted(lines, scale?.fretted ? 'fret' : 'marker line'),
    holes.length > 0 &&
      holes.length <= 6 &&
      holes
        .map(
          ({stationMm, offMm, diameterMm}) =>
            `sound hole ${say(diameterMm)} wide, ${say(stationMm)} from the nut line${offCentre(offMm, plan)}`,
        )
        .join('; '),
  ])
}

export function saySide(plan: Plan): string {
  const {action, bridge, outline, neck, box} = plan
  const say = (mm: number) => lengthWords(mm, plan)
  const {head} = outline ?? {}
  return sentence([
    'the instrument from the side, to scale, strings to the left',
    action && `the string ${say(action.nutMm)} high at the nut and ${say(action.octaveMm)} at the octave`,
    bridge?.heightMm !== undefined && `the bridge ${say(bridge.heightMm)} high`,
    bridge?.breakAngleDeg !== undefined && `strings break by ${angleOf(bridge.breakAngleDeg)} over it`,
    outline?.neck && `neck ${say(outline.neck.thicknessMm)} thick`,
    head &&
      `head ${say(head.thicknessMm)} thick${head.angleDeg > 0 ? `, leaning back ${angleOf(head.angleDeg)}` : ''}`,
    neck?.scarf && `scarf ${say(neck.scarf.faceMm)} long`,
    box?.atMm !== undefined && box.outside && `box ${say(box.outside.depthMm)} deep`,
  ])
}

export function sayHead(plan: Plan): string {
  const say = (mm: number) => lengthWords(mm, plan)
  return sentence([
    'the head along its own face, to scale, with each string’s path to its post',
    plan.outline?.head && `${say(plan.outline.head.lengthMm)} from the nut line to its end`,
    ...(plan.tuners ?? []).map(
      ({name, stationMm, offMm}) =>
        `post ${name ?? ''} ${say(Math.abs(stationMm))} behind the nut line${offCentre(offMm, plan)}`,
    ),
  ])
}

export function sayCrossSection(plan: Plan, shown: NeckCrossSection | undefined): string {
  if (!shown) return ''
  const say = (mm: number) => lengthWords(mm, plan)
  return sentence([
    `a section across the neck ${say(shown.stationMm)} from the nut line, seen from the bridge`,
    `${say(shown.widthMm)} wide and ${say(shown.thicknessMm)} thick`,
    ...shown.laminations.map(({wood, thicknessMm}) => `${wood ?? 'a layer'} ${say(thicknessMm)}`),
    shown.neutralAxisMm !== undefined && `neutral axis ${say(shown.neutralAxisMm)} below the playing face`,
  ])
}

/** `drilled` counts the holes besides the sound holes. */
export function sayInside({box}: Plan, drilled: number): string {
  const {soundHoles = [], blocks = []} = box ?? {}
  return sentence([
    'the box’s top seen from inside, to scale, head side up, so that bass and treble change places',
    blocks.length > 0 && counted(blocks.length, 'block'),
    drilled > 0 && counted(drilled, 'drilled hole'),
    soundHoles.length > 0 && counted(soundHoles.length, 'sound hole'),
  ])
}

export function sayCuts({strips, offcuts}: CutPiece): string {
  const cuts = strips.reduce((sum, strip) => sum + strip.cuts.length, 0)
  const words = (count: number, one: string) => (count === 1 ? `one ${one}` : `${count} ${one}s`)
  const kept = offcuts.length === 0 ? 'nothing' : words(offcuts.length, 'offcut')
  return `The piece from above, its length down the page: ${words(strips.length, 'strip')} with ${words(cuts, 'part')}, and ${kept} to keep. The steps below say the same in words.`
}
