import {writing} from '../../words/step-writing.ts'
import {box, cylinder, madeNow} from '../solids/convex.ts'
import {nowOf, solid} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {type Mark, type Note, type Piece, scene, upNow} from './scene.ts'
import {across, between, faceZ, halfAt, type Moment, type SceneOf, withCuts, workedNeck} from './worked.ts'

const linesOf = (moment: Moment, isNow: boolean): Mark[] => [
  across(moment, 0, isNow),
  ...(moment.plan.scale?.lines ?? []).map(({fromNutMm}) => across(moment, fromNutMm, isNow)),
]

/** A little past the last line, or past the bridge line where that is not much farther (mm from the nut line). */
function farthest({plan}: Moment): number {
  const last = plan.scale?.lines?.at(-1)?.fromNutMm ?? 300
  const bridgeMm = plan.bridge?.stationMm ?? plan.scale?.lengthMm ?? last
  return (bridgeMm < last * 1.5 ? bridgeMm : last) + 45
}

/** The fingerboard by itself, still square and wide. */
function boardAlone({plan, neck}: Moment): Piece[] {
  const layer = plan.neck?.layup?.layers.find(({of}) => of === 'fingerboard')
  if (!layer || !neck) return []
  const [from, to] = [
    Math.max(layer.fromMm ?? 0, 0),
    Math.min(layer.toMm ?? neck.neck.tailMm, neck.neck.tailMm),
  ]
  const {roughMm} = neck
  return [
    {
      of: 'fingerboard',
      wood: layer.wood,
      solid: solid(box([-roughMm, from, -layer.thicknessMm], [roughMm, to, 0])),
    },
  ]
}

/** What lines and slots come on to by now, and those lines, at the height of its face. */
export function lined(moment: Moment, isNow: boolean): {pieces: Piece[]; marks: Mark[]; z: number} {
  const {facts} = moment.step
  const isAlone = 'onBoard' in facts && facts.onBoard && !moment.done.has('glue-up-board')
  const pieces = isAlone ? boardAlone(moment) : workedNeck(moment)
  const z = isAlone ? 0 : faceZ(moment)
  const level = ([x, y]: Vec): Vec => [x, y, z]
  const marks = linesOf(moment, isNow).map((mark) => ({...mark, a: level(mark.a), b: level(mark.b)}))
  return {pieces, marks, z}
}

export const lines: SceneOf = (moment) => {
  const {plan} = moment
  const {pieces, marks, z} = lined(moment, true)
  if (pieces.length === 0) return undefined
  const {size} = writing(plan)
  const octave = plan.scale?.lines?.find(({semitones}) => Math.abs(semitones - 12) < 0.01)
  const bridgeMm = plan.bridge?.stationMm ?? plan.scale?.lengthMm
  return scene(between(pieces, -50, farthest(moment)), {
    marks,
    notes: [
      {at: [0, 0, z], text: 'nut line 0'},
      ...(octave ? [{at: [0, octave.fromNutMm, z] as Vec, text: size(octave.fromNutMm)}] : []),
      ...(bridgeMm && moment.neck && bridgeMm < Math.min(moment.neck.neck.tailMm, farthest(moment))
        ? [{at: [0, bridgeMm, z] as Vec, text: `bridge ${size(bridgeMm)}`}]
        : []),
    ],
  })
}

/** A dot as it is drilled (mm): common practice, no source. */
const dotMm = {wide: 5, deep: 3}

export const dots: SceneOf = (moment) => {
  const z = faceZ(moment)
  const pits = (moment.plan.scale?.dots ?? []).map(({stationMm, side}) => {
    const x = Math.sign(moment.x(side === 'bass' ? -1 : 1)) * (halfAt(moment, stationMm) - dotMm.wide)
    return madeNow(cylinder([x, stationMm, z + 1], [x, stationMm, z - dotMm.deep], dotMm.wide))
  })
  const pieces = between(workedNeck(moment), -50, farthest(moment)).map((piece) => withCuts(piece, pits))
  return scene(pieces, {marks: linesOf(moment, false)})
}

/** Saw or cut into the neck: what is cut now shows by itself; numbers at its ends. */
const cutInto =
  (
    numbers: (moment: Moment) => Note[],
    window?: (moment: Moment) => readonly [number, number] | undefined,
    isTurned = false,
  ): SceneOf =>
  (moment) => {
    const pieces = workedNeck(moment)
    if (pieces.length === 0) return undefined
    const [from, to] = window?.(moment) ?? [-5000, 5000]
    return scene(window ? between(pieces, from, to) : pieces, {notes: numbers(moment), isTurned})
  }

export const cutDown = cutInto(
  ({plan, step}) => {
    if (step.facts.of !== 'cut-down') return []
    const {size} = writing(plan)
    const {deepMm, leftMm, fromMm, toMm} = step.facts.setting
    return [
      {at: [0, (fromMm + toMm) / 2, -deepMm], text: `${size(deepMm)} off, ${size(leftMm)} left`},
      {at: [0, fromMm, 0], text: size(fromMm)},
      {at: [0, toMm, 0], text: size(toMm)},
    ]
  },
  ({step}) =>
    step.facts.of === 'cut-down'
      ? [step.facts.setting.fromMm - 120, step.facts.setting.toMm + 120]
      : undefined,
)

export const groove = cutInto(
  ({plan, step}) => {
    if (step.facts.of !== 'groove-nut') return []
    const {asWritten} = writing(plan)
    return [{at: [0, 0, -step.facts.setting.deep.mm], text: `${asWritten(step.facts.setting.deep)} deep`}]
  },
  () => [-70, 70],
)

/** A place along the neck, in few words. */
const place = (mm: number, size: (mm: number) => string) => (mm < -0.01 ? `${size(-mm)} behind` : size(mm))

export const roundOver = cutInto(
  ({plan, step, neck}) => {
    if (step.facts.of !== 'round-over' || !neck?.neck.roundOver) return []
    const {size} = writing(plan)
    const {fromMm, toMm} = neck.neck.roundOver
    const {nutWidthMm, thicknessMm} = neck.neck
    const edge = (y: number): Vec => [-nutWidthMm / 2, y, -thicknessMm]
    return [
      {at: edge((fromMm + toMm) / 2), text: `radius ${size(step.facts.setting.radiusMm)}`},
      {at: edge(fromMm), text: place(fromMm, size)},
      {at: edge(toMm), text: place(toMm, size)},
    ]
  },
  undefined,
  true,
)

export const sandBoard: SceneOf = (moment) => {
  if (moment.step.facts.of !== 'sand-board') return undefined
  const {size} = writing(moment.plan)
  const pieces = workedNeck(moment).map((piece) => (piece.of === 'fingerboard' ? upNow(piece) : piece))
  return scene(pieces, {
    notes: [{at: [0, 120, 0], text: `radius ${size(moment.step.facts.setting.radiusMm)}`}],
  })
}

export const frets: SceneOf = (moment) => {
  const {pieces, marks: all} = lined(moment, true)
  const fretted = moment.plan.scale?.fretted
  const marks = fretted ? all : all.slice(0, 1)
  return scene(fretted ? between(pieces, -50, farthest(moment)) : between(pieces, -60, 120), {
    marks: marks.slice(moment.done.has('cut-rod-nut') || !fretted ? 0 : 1),
  })
}

export const planeSides: SceneOf = (moment) => {
  const {neck, plan, step} = moment
  if (!neck || step.facts.of !== 'plane-sides') return undefined
  const {size} = writing(plan)
  const pieces = workedNeck(moment).map((piece) => ({
    ...piece,
    solid: nowOf(piece.solid, (n) => Math.abs(n[0]) > 0.9),
  }))
  const {nutMm, tailMm} = step.facts.setting ?? {}
  const z = faceZ(moment)
  const notes: Note[] = [
    ...(nutMm ? [{at: [0, 0, z] as Vec, text: size(nutMm)}] : []),
    ...(tailMm ? [{at: [0, neck.neck.tailMm, z] as Vec, text: size(tailMm)}] : []),
  ]
  return scene(pieces, {notes, marks: [across(moment, 0, false)]})
}
