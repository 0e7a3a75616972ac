import type {HoleBit} from '../../plan/bits.ts'
import type {Part} from '../../plan/design-parts.ts'
import {bareBit, shortBitName} from '../../words/holes.ts'
import {writing} from '../../words/step-writing.ts'
import {box, convex, cylinder, half, madeNow} from '../solids/convex.ts'
import {moved, nowOf, solid} from '../solids/solid.ts'
import {plus, times, type Vec} from '../solids/space.ts'
import {headFrame} from './neck-bodies.ts'
import {type Mark, type Note, type Piece, type Push, type Scene, scene, upNow} from './scene.ts'
import {
  across,
  between,
  counted,
  faceZ,
  halfAt,
  type Moment,
  pieceReach,
  withCuts,
  workedNeck,
} from './worked.ts'

/** Show what a step of the neck has in hand; undefined where there is nothing to show. */
export type SceneOf = (moment: Moment) => Scene | undefined

/** Lay parts to cut beside each other, with the faces that are cut now in the accent. */
function laidOut(
  parts: readonly Part[],
  isNow: (normal: Vec) => boolean,
  label: (part: Part) => string | undefined,
): Scene | undefined {
  let x = 0
  const shown = parts.slice(0, 6)
  const notes: Note[] = []
  const pieces = shown.map((part): Piece => {
    const size = label === thickness && part.why !== 'listed' ? part.why : part
    const body = box([x, 0, 0], [x + size.widthMm, size.lengthMm, size.thicknessMm])
    const text = label(part)
    if (text) notes.push({at: [x + size.widthMm / 2, size.lengthMm * 0.5, size.thicknessMm], text})
    x += size.widthMm * 1.25 + 6
    return {of: part.id, wood: part.wood, solid: solid(madeNow(body, isNow))}
  })
  return pieces.length > 0 ? scene(pieces, {notes: counted(notes)}) : undefined
}
const thickness = () => undefined

const partsHere = ({plan}: Moment, isSmall: boolean) =>
  (plan.cuts?.parts ?? []).filter((part) => part.isSmall === isSmall)

const mill: SceneOf = (moment) =>
  laidOut(
    partsHere(moment, false),
    (n) => n[2] > 0.5 || n[0] > 0.5,
    () => undefined,
  )

const rip =
  (isSmall: boolean): SceneOf =>
  (moment) => {
    const {size} = writing(moment.plan)
    return laidOut(
      partsHere(moment, isSmall),
      (n) => Math.abs(n[0]) > 0.5,
      ({widthMm}) => size(widthMm),
    )
  }

const trim: SceneOf = (moment) => {
  const {size} = writing(moment.plan)
  return laidOut(
    partsHere(moment, true),
    (n) => Math.abs(n[1]) > 0.5,
    ({lengthMm, why}) => size(why === 'listed' ? lengthMm : why.lengthMm),
  )
}

/** Lift the neck's layers off each other by so much, the lower ones staying. */
function liftedOff(
  pieces: readonly Piece[],
  isLifted: (piece: Piece) => boolean,
  byMm: number,
): {pieces: Piece[]; pushes: Push[]} {
  let lift = 0
  const sorted = [...pieces].sort((a, b) => pieceReach(a)[0][2] - pieceReach(b)[0][2])
  const pushes: Push[] = []
  const all = sorted.map((piece): Piece => {
    if (!isLifted(piece)) return lift ? {...piece, solid: moved(piece.solid, [0, 0, lift])} : piece
    lift += byMm
    const [low, high] = pieceReach(piece)
    for (const part of [0.25, 0.75]) {
      const y = low[1] + part * (high[1] - low[1])
      pushes.push({from: [0, y, high[2] + lift + byMm * 1.2], to: [0, y, high[2] + lift + 2]})
    }
    return {...piece, solid: nowBelow(moved(piece.solid, [0, 0, lift]))}
  })
  return {pieces: all, pushes}
}

const nowBelow = (one: Piece['solid']): Piece['solid'] => nowOf(one, (n) => Math.abs(n[2]) > 0.9)

/** The neck's layers apart, strips of one layer beside each other; `isNow` says which faces are in hand. */
function layersApart(moment: Moment, isNow: (normal: Vec) => boolean): Piece[] {
  const pieces = workedNeck(moment)
  const heights = [...new Set(pieces.map((piece) => pieceReach(piece)[0][2].toFixed(2)))].sort(
    (a, b) => Number(a) - Number(b),
  )
  const middle = (piece: Piece) => (pieceReach(piece)[0][0] + pieceReach(piece)[1][0]) / 2
  return pieces.map((piece) => {
    const level = heights.indexOf(pieceReach(piece)[0][2].toFixed(2))
    const solid = nowOf(piece.solid, isNow)
    return {...piece, solid: moved(solid, [middle(piece) * 0.9, 0, level * 32])}
  })
}

const isSideways = (pieces: readonly Piece[]) =>
  pieces.filter((piece) => Math.abs(pieceReach(piece)[0][0]) > 0.1).length

const planeFaces: SceneOf = (moment) => {
  const pieces = layersApart(moment, (n) => Math.abs(n[2]) > 0.9 || Math.abs(n[0]) > 0.9)
  return isSideways(pieces) > 0 ? scene(pieces) : undefined
}

const glueUp: SceneOf = (moment) => {
  const whole = workedNeck(moment)
  const isSide = new Set(whole.map((piece) => pieceReach(piece)[0][0].toFixed(1))).size > 1
  const pieces = layersApart(moment, (n) => Math.abs(n[isSide ? 0 : 2]) > 0.9)
  if (pieces.length === 0) return undefined
  const [lows, highs] = [pieces.map((one) => pieceReach(one)[0]), pieces.map((one) => pieceReach(one)[1])]
  const [near, high] = [Math.max(...highs.map((one) => one[0])), Math.max(...highs.map((one) => one[2]))]
  const [from, to] = [Math.min(...lows.map((one) => one[1])), Math.max(...highs.map((one) => one[1]))]
  const pushes = [0.25, 0.6].map((part): Push => {
    const y = from + part * (to - from)
    return isSide
      ? {from: [near + 70, y, high / 2], to: [near + 4, y, high / 2]}
      : {from: [0, y, high + 60], to: [0, y, high + 3]}
  })
  return scene(pieces, {pushes})
}

const plane: SceneOf = (moment) => {
  const {neck, plan, step} = moment
  const pieces = workedNeck(moment).map(upNow)
  if (!neck || pieces.length === 0 || step.facts.of !== 'plane') return undefined
  const {size} = writing(plan)
  const {stickMm} = step.facts.setting ?? {}
  const [low, high] = pieceReach(pieces[0]!)
  return scene(pieces, {
    notes: stickMm
      ? [{at: [high[0], low[1] + 0.3 * (high[1] - low[1]), (low[2] + high[2]) / 2], text: size(stickMm)}]
      : [],
  })
}

/** Strike the nut line round the stick, and the centre line along it. */
const strike: SceneOf = (moment) => {
  const {neck} = moment
  const pieces = workedNeck(moment)
  if (!neck || pieces.length === 0) return undefined
  const z = faceZ(moment)
  const face = pieces.filter((piece) => Math.abs(pieceReach(piece)[1][2] - z) < 0.01)
  const [from, to] = [
    Math.min(...face.map((one) => pieceReach(one)[0][1])),
    Math.max(...face.map((one) => pieceReach(one)[1][1])),
  ]
  const side = halfAt(moment, 0)
  const marks: Mark[] = [
    {of: 'nut', a: [-side, 0, z], b: [side, 0, z], isNow: true},
    {of: 'nut side', a: [side, 0, z], b: [side, 0, z - (neck.neck.thicknessMm + z)], isNow: true},
    {of: 'centre', a: [0, Math.max(from, -(neck.head?.ledgeMm ?? -from)), z], b: [0, to, z], isNow: true},
  ]
  return scene(pieces, {
    marks,
    notes: [
      {at: [side, 0, z], text: 'nut line'},
      {at: [0, to * 0.6, z], text: 'centre line'},
    ],
  })
}

const sawScarf: SceneOf = (moment) => {
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

const glueHead: SceneOf = (moment) => {
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

/** A part that is glued on, lifted over its place, with arrows that press it down. */
const gluedOn = (moment: Moment): Scene | undefined => {
  const parts = new Set(
    (moment.plan.cuts?.parts ?? []).flatMap(({id, of}) => (moment.step.parts?.includes(id) ? [of] : [])),
  )
  const is = (of: string) => parts.has(of)
  const pieces = workedNeck(moment)
  const lifted = liftedOff(pieces, ({of}) => is(of), 40)
  if (lifted.pushes.length === 0) return undefined
  const part = lifted.pieces.find(({of}) => is(of))!
  const [low, high] = pieceReach(part)
  const isShort = high[1] - low[1] < 250
  const here = isShort ? between(lifted.pieces, low[1] - 30, high[1] + 120) : lifted.pieces
  return scene(here, {pushes: lifted.pushes})
}

const planeSides: SceneOf = (moment) => {
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

const shapeHead: SceneOf = (moment) => {
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

const drillHead: SceneOf = (moment) => {
  const {neck} = moment
  if (!neck?.head) return undefined
  const {end} = headFrame(neck.head)
  return scene(between(workedNeck(moment), end[1] - 40, 60), {
    notes: [...bitNotes(moment, 'drill-head'), {at: [0, 0, faceZ(moment)], text: 'nut line'}],
    marks: [across(moment, 0, false)],
  })
}

const drillNeck: SceneOf = (moment) => {
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

const lines: SceneOf = (moment) => {
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

const dots: SceneOf = (moment) => {
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

const cutDown = cutInto(
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

const groove = cutInto(
  ({plan, step}) => {
    if (step.facts.of !== 'groove-nut') return []
    const {asWritten} = writing(plan)
    return [{at: [0, 0, -step.facts.setting.deep.mm], text: `${asWritten(step.facts.setting.deep)} deep`}]
  },
  () => [-70, 70],
)

/** A place along the neck, in few words. */
const place = (mm: number, size: (mm: number) => string) => (mm < -0.01 ? `${size(-mm)} behind` : size(mm))

const roundOver = cutInto(
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

const sandBoard: SceneOf = (moment) => {
  if (moment.step.facts.of !== 'sand-board') return undefined
  const {size} = writing(moment.plan)
  const pieces = workedNeck(moment).map((piece) => (piece.of === 'fingerboard' ? upNow(piece) : piece))
  return scene(pieces, {
    notes: [{at: [0, 120, 0], text: `radius ${size(moment.step.facts.setting.radiusMm)}`}],
  })
}

const frets: SceneOf = (moment) => {
  const {pieces, marks: all} = lined(moment, true)
  const fretted = moment.plan.scale?.fretted
  const marks = fretted ? all : all.slice(0, 1)
  return scene(fretted ? between(pieces, -50, farthest(moment)) : between(pieces, -60, 120), {
    marks: marks.slice(moment.done.has('cut-rod-nut') || !fretted ? 0 : 1),
  })
}

export const neckScenes: Readonly<Record<string, SceneOf>> = {
  mill,
  rip: rip(false),
  'rip-small': rip(true),
  trim,
  'plane-faces': planeFaces,
  'glue-up': glueUp,
  plane,
  'mark-lines-stick': strike,
  'mark-lines-face': strike,
  'mark-lines-board': strike,
  'saw-scarf': sawScarf,
  'glue-head': glueHead,
  'glue-up-plate': gluedOn,
  'glue-up-face': gluedOn,
  'glue-up-board': gluedOn,
  'plane-sides': planeSides,
  'shape-head': shapeHead,
  'drill-head': drillHead,
  'drill-neck': drillNeck,
  'mark-lines': lines,
  'burn-marks': lines,
  'drill-neck-dots': dots,
  'cut-down': cutDown,
  'groove-nut': groove,
  'round-over': roundOver,
  'sand-board': sandBoard,
  'slot-frets': frets,
  fret: frets,
  'fret-ends': frets,
}
