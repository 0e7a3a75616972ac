import type {Plan} from '../../plan/plan.ts'
import {placedBox} from '../instrument/box.ts'
import {topHoles} from '../instrument/box-inside.ts'
import {shownSection} from '../instrument/cross-section.ts'
import {angleOf, lengthWords} from '../words.ts'

// What each drawing shows, in sentences, for those who don't see it.

const sentence = (parts: readonly (string | false | undefined)[]): string =>
  `${parts.filter(Boolean).join('; ')}.`.replace(/^./, (first) => first.toUpperCase())

const counted = (count: number, one: string, many = `${one}s`) => `${count} ${count === 1 ? one : many}`

export function sayTop(plan: Plan): string {
  const {scale, outline, bridge} = plan
  const box = placedBox(plan)
  const say = (mm: number) => lengthWords(mm, plan)
  const lines = scale?.lines?.length ?? 0
  const {neck, head} = outline ?? {}
  const holes = plan.box?.soundHoles ?? []
  return sentence([
    'the instrument from the front, to scale, head up',
    head && neck && !neck.isOpen && `${say(head.lengthMm + neck.tailMm)} overall`,
    scale?.lengthMm !== undefined && `scale length ${say(scale.lengthMm)}`,
    box &&
      `box ${say(box.tailMm - box.atMm)} by ${say(box.widthMm)}, from ${say(box.atMm)} to ${say(box.tailMm)} from the nut line`,
    box && bridge && `bridge line ${say(bridge.stationMm - box.atMm)} along the box`,
    lines > 0 && `${counted(lines, scale?.fretted ? 'fret' : 'marker line')}`,
    holes.length > 0 &&
      holes.length <= 6 &&
      holes
        .map(
          ({stationMm, offMm, diameterMm}) =>
            `sound hole ${say(diameterMm)} wide, ${say(stationMm)} from the nut line${offMm === 0 ? ' on the centre line' : `, ${say(Math.abs(offMm))} off the centre line`}`,
        )
        .join('; '),
  ])
}

export function saySide(plan: Plan): string {
  const {action, bridge, outline, neck} = plan
  const box = placedBox(plan)
  const say = (mm: number) => lengthWords(mm, plan)
  return sentence([
    'the instrument from the side, to scale, strings to the left',
    action && `the string ${say(action.nutMm)} high at the nut and ${say(action.octaveMm)} at the octave`,
    bridge?.heightMm !== undefined && `the bridge ${say(bridge.heightMm)} high`,
    bridge?.breakAngleDeg !== undefined && `strings break by ${angleOf(bridge.breakAngleDeg)} over it`,
    outline?.neck && `neck ${say(outline.neck.thicknessMm)} thick`,
    outline?.head &&
      `head ${say(outline.head.thicknessMm)} thick${outline.head.angleDeg > 0 ? `, leaning back ${angleOf(outline.head.angleDeg)}` : ''}`,
    neck?.scarf && `scarf ${say(neck.scarf.faceMm)} long`,
    box && `box ${say(box.depthMm)} deep`,
  ])
}

export function sayHead(plan: Plan): string {
  const say = (mm: number) => lengthWords(mm, plan)
  return sentence([
    'the head along its own face, to scale, with each string’s path to its post',
    plan.outline?.head && `${say(plan.outline.head.lengthMm)} from the nut line to its end`,
    ...(plan.tuners ?? []).map(
      ({name, stationMm, offMm}) =>
        `post ${name ?? ''} ${say(Math.abs(stationMm))} behind the nut line${offMm === 0 ? ' on the centre line' : `, ${say(Math.abs(offMm))} off the centre line`}`,
    ),
  ])
}

export function saySection(plan: Plan): string {
  const section = shownSection(plan)
  const say = (mm: number) => lengthWords(mm, plan)
  if (!section) return ''
  return sentence([
    `a section across the neck ${say(section.stationMm)} from the nut line, seen from the bridge`,
    `${say(section.widthMm)} wide and ${say(section.thicknessMm)} thick`,
    ...section.laminations.map(({wood, thicknessMm}) => `${wood ?? 'a layer'} ${say(thicknessMm)}`),
    section.neutralAxisMm !== undefined &&
      `neutral axis ${say(section.neutralAxisMm)} below the playing face`,
  ])
}

export function sayInside(plan: Plan): string {
  const {soundHoles = [], blocks = []} = plan.box ?? {}
  const holes = topHoles(plan).length
  return sentence([
    'the box’s top seen from inside, to scale, head side up, so that bass and treble change places',
    blocks.length > 0 && counted(blocks.length, 'block'),
    holes > 0 && counted(holes, 'drilled hole'),
    soundHoles.length > 0 && counted(soundHoles.length, 'sound hole'),
  ])
}
