import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Box} from '../box/box.ts'
import type {Jack} from '../box/jack.ts'
import type {Fastener} from '../fasteners/fastener.ts'
import {screwHoles} from '../fasteners/screw-holes.ts'
import {pilotOf} from '../fasteners/screw-size.ts'
import {bitFor} from '../kit/bits.ts'
import type {Face, Hole} from '../kit/hole.ts'
import type {Settled} from '../kit/settled.ts'
import {signOf} from '../kit/sides.ts'
import type {Placed} from '../strings/tuners.ts'

/** What is drilled for. */
interface Drilled {
  tuners: readonly Placed[] | undefined
  anchors: readonly Placed[] | undefined
  isAnchoredOnNeck: boolean | undefined
  box: Box | undefined
  fasteners: readonly Fastener[] | undefined
  jack: Jack | undefined
}

/**
 * List every hole of the build once, in the order of the work: by face, then diameter, so that bits change seldom,
 * then station.
 */
export function planHoles({values, units}: Settled, drilled: Drilled): Hole[] | undefined {
  const {tuners, box = {}, fasteners, jack} = drilled
  const all: Hole[] = [
    ...tunerHoles(values, tuners),
    ...anchorHoles(values, drilled),
    ...soundHoleHoles(box),
    ...screwHoles(fasteners, box, values.strings?.length),
    ...jackHole(jack),
    ...strapButtonHoles(values, box),
  ]
  for (const hole of all) {
    if (box.atMm !== undefined && !offBoxFaces.includes(hole.face)) hole.alongMm = hole.stationMm - box.atMm
    hole.bit ??= bitFor(hole.diameterMm, units)
  }
  return all.length ? all.sort(byFaceAndSize) : undefined
}

const offBoxFaces: readonly Face[] = ['head', 'neck back', 'neck end', 'playing face']

function soundHoleHoles({soundHoles = []}: Box): Hole[] {
  return soundHoles.map(({of, stationMm, offMm, diameterMm, proposed}) => ({
    what: {hole: 'sound'},
    face: 'top',
    stationMm,
    offMm,
    diameterMm,
    backing: 'under top',
    of,
    proposed,
  }))
}

function jackHole(jack: Jack | undefined): Hole[] {
  const {holeMm, face, stationMm, offMm, downMm, proposed} = jack ?? {}
  if (holeMm === undefined || face === undefined || stationMm === undefined || offMm === undefined) return []
  return [
    {
      what: {hole: 'jack'},
      face,
      stationMm,
      offMm,
      downMm,
      diameterMm: holeMm,
      backing: 'inside',
      of: 'pickup.jack',
      proposed,
    },
  ]
}

function byFaceAndSize(a: Hole, b: Hole): number {
  if (a.face !== b.face) return a.face < b.face ? -1 : 1
  return a.diameterMm - b.diameterMm || a.stationMm - b.stationMm || a.offMm - b.offMm
}

/** List the tuners' post holes, through the head from its face. */
function tunerHoles(values: BuildValues, tuners: readonly Placed[] = []): Hole[] {
  const postMm = values.tuners?.['post-hole']?.mm
  if (postMm === undefined) return []
  return tuners.map(({name, stationMm, offMm, proposed}, i) => ({
    what: {hole: 'tuner', string: name},
    face: 'head',
    stationMm,
    offMm,
    diameterMm: postMm,
    backing: 'under head',
    of: `tuners.at.${i + 1}`,
    proposed,
  }))
}

/** A ferrule's usual depth, and what must stay above it for the string hole alone (mm): common practice, no source. */
const ferruleMm = inch(3 / 8)
const aboveFerruleMm = inch(1 / 4)
/** The thinnest neck that takes a ferrule whole (mm). */
export const ferruleNeedsMm = ferruleMm + aboveFerruleMm

/**
 * List what is drilled for the anchors: a string hole each, opened from the back for a ferrule's body, one hole for a
 * pin. A tailpiece is drilled for by its own screws.
 */
function anchorHoles(values: BuildValues, drilled: Drilled): Hole[] {
  const {anchors = [], isAnchoredOnNeck: isOnNeck, box = {}} = drilled
  const kind = values.anchors?.kind?.value
  if (kind === undefined || kind === 'tailpiece') return []
  const stringHoleMm = values.anchors?.['string-hole']?.mm
  const bodyMm = values.anchors?.body?.mm
  const thicknessMm = values.neck?.thickness?.mm
  return anchors.flatMap(({name, stationMm, offMm, proposed}): Hole[] => {
    const isInTail =
      !isOnNeck && box.tailMm !== undefined && stationMm >= box.tailMm - (box.outside?.sidesMm ?? 0)
    const onNeck = kind === 'ferrule' ? 'neck back' : 'playing face'
    const face = isOnNeck ? onNeck : isInTail ? 'tail end' : 'top'
    const place = {stationMm, offMm, of: 'anchors', proposed}
    const diameterMm = kind === 'pins' ? (bodyMm ?? stringHoleMm) : stringHoleMm
    const through: Hole[] =
      diameterMm === undefined
        ? []
        : [
            {
              what: {hole: kind === 'pins' ? 'pin' : 'string', string: name},
              face,
              ...place,
              diameterMm,
              backing: 'far side',
            },
          ]
    if (kind !== 'ferrule' || bodyMm === undefined || !isOnNeck || thicknessMm === undefined) return through
    const depthMm = Math.min(ferruleMm, thicknessMm - aboveFerruleMm)
    return depthMm <= 0
      ? through
      : [
          ...through,
          {what: {hole: 'ferrule', string: name}, face: 'neck back', ...place, diameterMm: bodyMm, depthMm},
        ]
  })
}

/** A button's own screw and how deep it goes, and how far from the head-side edge the second one stands (mm). */
const button = {gauge: 6, depthMm: inch(5 / 8), alongMm: inch(1.5)}

/**
 * Propose where strap buttons go: one in the middle of the tail, clear of a neck that runs through there; the second
 * in the side towards the player's chin, near the head. Common practice, no source; a number 6 screw each.
 */
function strapButtonHoles(values: BuildValues, box: Box): Hole[] {
  const index = values.extras?.findIndex(({value}) => /strap/i.test(value)) ?? -1
  if (index < 0 || box.atMm === undefined || box.tailMm === undefined || !box.outside) return []
  const diameterMm = pilotOf(button.gauge, 'hard').bit.mm
  const middleMm = box.outside.depthMm / 2
  const shared = {
    what: {hole: 'strap button'},
    diameterMm,
    depthMm: button.depthMm,
    backing: 'block',
    of: `extras.${index + 1}`,
    proposed: true,
  } as const
  return [
    {face: 'tail end', stationMm: box.tailMm, ...freeInTail(box), ...shared},
    {
      face: 'side bass',
      stationMm: box.atMm + button.alongMm,
      offMm: (signOf('bass', values.strings?.length) * box.outside.widthMm) / 2,
      downMm: middleMm,
      ...shared,
    },
  ]
}

/** Least height of wall under a neck that takes a button (mm): common practice, no source. */
const buttonNeedsMm = inch(1 / 2)

/** Give the middle of what the tail wall has free: of all of it, or of what a neck that runs through leaves under or beside it. */
function freeInTail({neck, tailMm = 0, outside}: Box): {offMm: number; downMm: number} {
  const {depthMm = 0, widthMm = 0, sidesMm = 0} = outside ?? {}
  const isCrossed = neck?.joins === 'through' && (neck.tailMm ?? tailMm) > tailMm - sidesMm
  if (!isCrossed) return {offMm: 0, downMm: depthMm / 2}
  if (depthMm - neck.backBelowTopMm >= buttonNeedsMm)
    return {offMm: 0, downMm: (neck.backBelowTopMm + depthMm) / 2}
  return {offMm: -(neck.widthMm + widthMm) / 4, downMm: depthMm / 2}
}
