import type {HoleBit} from '../../plan/kit/bits.ts'
import {bareBit, shortBitName} from '../../words/holes.ts'
import {writing} from '../../words/step-writing.ts'
import {convex, half, madeNow} from '../solids/convex.ts'
import {moved, nowOf} from '../solids/solid.ts'
import {plus, times, type Vec} from '../solids/space.ts'
import {headFrame} from './neck-look.ts'
import {type Note, type Piece, scene} from './scene.ts'
import {across, between, counted, faceZ, type Moment, pieceReach, type SceneOf, workedNeck} from './worked.ts'

export const sawScarf: SceneOf = (moment) => {
  const {neck, plan, step} = moment
  if (!neck?.head || step.facts.of !== 'saw-scarf') return undefined
  const {size} = writing(plan)
  const {angleDeg, runMm} = step.facts.setting
  const {face, up: out} = headFrame(neck.head)
  const stays = workedNeck(moment).map((piece) => ({
    ...piece,
    solid: {...piece.solid, less: piece.solid.less.map((body) => madeNow(body))},
  }))
  const before = workedNeck({...moment, done: new Set([...moment.done].filter((id) => id !== step.id))})
  const over = {...half(out, face), isNow: true}
  const away: Vec = [0, -22, 16]
  const cutOff = before
    .map(
      (piece): Piece => ({
        ...piece,
        solid: moved(
          {
            of: piece.solid.of.map((body) =>
              convex([
                ...body.halves,
                {normal: [-over.normal[0], -over.normal[1], -over.normal[2]], atMm: -over.atMm},
                half([0, 1, 0], [0, -neck.head!.ledgeMm, 0]),
              ]),
            ),
            less: [],
          },
          away,
        ),
      }),
    )
    .filter(({solid: {of}}) => of.some(({outlines}) => outlines.length > 3))
  const [endMm, z] = [160, pieceReach(stays[0]!)[0][2]]
  const startMm = Math.min(...cutOff.map((piece) => pieceReach(piece)[0][1]))
  return scene(between([...stays, ...cutOff], startMm - 1, endMm), {
    notes: [
      {at: [0, -neck.head.ledgeMm - runMm / 2, z / 2], text: `${Number(angleDeg.toFixed(1))}°`},
      {at: [neck.roughMm, -neck.head.ledgeMm - runMm, z], text: `runs ${size(runMm)}`},
    ],
    pushes: [],
  })
}

export const glueHead: SceneOf = (moment) => {
  const {neck} = moment
  if (!neck?.head) return undefined
  const by: Vec = [0, -14, -26]
  const pieces = workedNeck(moment).map((piece) =>
    piece.of === 'head'
      ? {
          ...piece,
          solid: moved(
            nowOf(piece.solid, (n) => n[2] > 0.999),
            by,
          ),
        }
      : piece,
  )
  const glued = pieces.find(({of}) => of === 'head')
  if (!glued) return undefined
  const [low, high] = pieceReach(glued)
  const y = low[1] + 0.72 * (high[1] - low[1])
  return scene(between(pieces, low[1] - 1, 160), {
    pushes: [{from: [neck.roughMm, y, low[2] - 12], to: [neck.roughMm, y, low[2] + 14]}],
    notes: [{at: [0, low[1] + 0.25 * (high[1] - low[1]), low[2] + 20], text: 'turned over'}],
  })
}

export const shapeHead: SceneOf = (moment) => {
  const {neck, plan, step} = moment
  if (!neck?.head || step.facts.of !== 'shape-head') return undefined
  const {size} = writing(plan)
  const {face, end, up: out} = headFrame(neck.head)
  const pieces = workedNeck(moment).map((piece) =>
    piece.of === 'head' || neck.head!.joint !== 'scarf'
      ? {
          ...piece,
          solid: nowOf(piece.solid, (n) => n[1] < -0.5),
        }
      : piece,
  )
  const {thicknessMm, angleDeg} = {angleDeg: step.facts.angleDeg, ...step.facts.setting}
  const side = neck.neck.nutWidthMm / 2
  return scene(between(pieces, end[1] - 40, 70), {
    marks: [across(moment, 0, false)],
    notes: [
      {at: plus(plus(end, out, -thicknessMm / 2), [side, 0, 0]), text: `${size(thicknessMm)} thick`},
      {at: times(plus(face, end), 0.5), text: `${size(neck.head.lengthMm)} from the nut line`},
      ...(angleDeg ? [{at: face, text: `${Number(angleDeg.toFixed(1))}°`}] : []),
    ],
  })
}

/** A bit by one size, where another would do as well. */
const shortest = (bit: HoleBit): string =>
  bit.with === 'twist' && bit.bit && bit.or
    ? bareBit(bit.units === 'in' ? bit.bit : bit.or)
    : shortBitName(bit)

/** Say which bit makes which hole. */
export function bitNotes(moment: Moment, id: string): Note[] {
  const {plan, step} = moment
  const {size} = writing(plan)
  return counted(
    moment.bores(id).map(({bore, diameterMm}, i) => {
      const bit = step.stations[i]?.bit
      return {at: bore.at, text: bit ? shortest(bit) : size(diameterMm)}
    }),
  )
}

export const drillHead: SceneOf = (moment) => {
  const {neck} = moment
  if (!neck?.head) return undefined
  const {end} = headFrame(neck.head)
  return scene(between(workedNeck(moment), end[1] - 40, 60), {
    notes: [...bitNotes(moment, 'drill-head'), {at: [0, 0, faceZ(moment)], text: 'nut line'}],
    marks: [across(moment, 0, false)],
  })
}

export const drillNeck: SceneOf = (moment) => {
  const bores = moment.bores('drill-neck')
  if (bores.length === 0) return undefined
  const places = bores.map(({bore}) => bore.at[1])
  const isTurned = bores.some(({bore}) => bore.way[2] > 0.5)
  const [from, to] = [Math.min(...places) - 110, Math.max(...places) + 110]
  return scene(between(workedNeck(moment), from, to), {
    isTurned,
    notes: bitNotes(moment, 'drill-neck'),
    marks: isTurned
      ? []
      : (moment.plan.scale?.lines ?? []).slice(0, 0).map(({fromNutMm}) => across(moment, fromNutMm, false)),
  })
}
