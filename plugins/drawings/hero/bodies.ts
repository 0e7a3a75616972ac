import type {Plan} from '../../plan/plan.ts'
import type {Instrument} from '../instrument/instrument.ts'
import {neckProfile, toBox} from '../instrument/profile.ts'
import {loop, type Path, type Point, rectangle} from '../kit/shapes.ts'

/** A closed outline, in mm about the nut line, and the wood that it is filled with. */
export interface Body {
  outline: Path
  wood: string | undefined
}

/** The woods of an instrument, as far as they are named. */
export interface Woods {
  box: string | undefined
  /** The playing face, the fingerboard where there is one, and the stick behind it, which the head is of. */
  face: string | undefined
  board: string | undefined
  stick: string | undefined
  head: string | undefined
}

/** Find which woods are seen. */
export function woodsOf({neck}: Plan, box: string | undefined, plate: string | undefined): Woods {
  const layers = neck?.layup?.layers ?? []
  const stick = layers.filter(({of}) => of !== 'fingerboard')
  return {
    box,
    face: stick[0]?.wood,
    board: layers.find(({of}) => of === 'fingerboard')?.wood,
    stick: stick.at(-1)?.wood,
    head: plate ?? stick.at(-1)?.wood,
  }
}

/** List what is seen from the front, the hindmost first. */
export function frontBodies({neck, head, box, halfMm}: Instrument, woods: Woods): Body[] {
  if (!neck) return []
  const stretch = (fromMm: number, toMm: number, wood: string | undefined): Body => ({
    wood,
    outline: loop(
      'outline',
      [-halfMm(fromMm), fromMm],
      [halfMm(fromMm), fromMm],
      [halfMm(toMm), toMm],
      [-halfMm(toMm), toMm],
    ),
  })
  const stick = stretch(0, neck.tailMm, woods.face)
  const board = neck.fingerboard
  const boards = board
    ? [stretch(Math.max(0, board.fromMm), Math.min(neck.tailMm, board.toMm), woods.board)]
    : []
  const heads: Body[] = head
    ? [
        {
          wood: woods.head,
          outline: rectangle('outline', [-head.widthMm / 2, -head.lengthMm], [head.widthMm / 2, 0]),
        },
      ]
    : []
  const boxes: Body[] = box
    ? [
        {
          wood: woods.box,
          outline: rectangle('outline', [-box.widthMm / 2, box.atMm], [box.widthMm / 2, box.tailMm]),
        },
      ]
    : []
  const isThrough = neck.joins === 'through'
  return [...(isThrough ? [stick, ...boxes] : [...boxes, stick]), ...boards, ...heads]
}

/** List what is seen from the side, the hindmost first; the neck's layers lie on its outline, from the nut on. */
export function sideBodies(
  instrument: Instrument,
  woods: Woods,
): {bodies: Body[]; layers: Body[]; neck: Path} {
  const {neck, head, box, plan} = instrument
  if (!neck) return {bodies: [], layers: [], neck: loop('outline')}
  const profile = loop('outline', ...neckProfile(head, neck))
  const corners = (depthMm: number, fromMm: number, toMm: number): Point[] => [
    toBox(instrument, 0, fromMm),
    toBox(instrument, depthMm, fromMm),
    toBox(instrument, depthMm, toMm),
    toBox(instrument, 0, toMm),
  ]
  const boxes: Body[] = box
    ? [{wood: woods.box, outline: loop('outline', ...corners(box.depthMm, box.atMm, box.tailMm))}]
    : []
  const stick: Body = {wood: woods.stick, outline: profile}
  return {
    bodies: neck.joins === 'through' ? [stick, ...boxes] : [...boxes, stick],
    layers: neck.joins === 'through' ? [] : layersOf(plan),
    neck: profile,
  }
}

function layersOf({neck, outline}: Plan): Body[] {
  const {tailMm = 0} = outline?.neck ?? {}
  let deepMm = 0
  return (neck?.layup?.layers ?? []).map(({wood, thicknessMm, fromMm, toMm}) => {
    const from = Math.max(0, fromMm ?? 0)
    deepMm += thicknessMm
    return {wood, outline: rectangle('edge', [deepMm - thicknessMm, from], [deepMm, toMm ?? tailMm])}
  })
}
