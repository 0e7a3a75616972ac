import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {BoxPlace} from '../kit/box-place.ts'
import {samePlaceMm} from './bend.ts'
import {type HeadShape, headShape} from './head-shape.ts'
import {type InsideBox, insideBox, layersAlong} from './inside.ts'
import {type Layup, type NeckLayer, neckLayers} from './layers.ts'
import {type RoundOver, roundOver} from './round-over.ts'
import {type NeckTaper, neckTaper} from './taper.ts'

/** The neck as a body, before anything is computed of it; mm from the nut line and from the playing face. */
export interface NeckModel extends NeckBody {
  /** Where its cross-section is worth knowing, from the nut line on. */
  changes: readonly Change[]
}

interface NeckBody {
  layup: Layup
  /** The same layers, parted where the neck is cut down to run through a box. */
  layersAlong: readonly NeckLayer[]
  /** Where it runs through one. */
  inside: InsideBox | undefined
  taper: NeckTaper
  tailMm: number | undefined
  boxAtMm: number | undefined
  boxTailMm: number | undefined
  scaleMm: number | undefined
  head: HeadShape | undefined
  roundOver: RoundOver | undefined
  faceRadiusMm: number | undefined
}

/** Where the box lies, and how long the neck is. */
export interface NeckEnds {
  place: BoxPlace | undefined
  lengthMm: number | undefined
}

/** Gather the neck's body from the build; undefined without width and thickness. */
export function neckModel(values: BuildValues, {place, lengthMm}: NeckEnds): NeckModel | undefined {
  const headMm = values.head?.length?.mm
  const tailMm = lengthMm !== undefined && headMm !== undefined ? Math.max(lengthMm - headMm, 0) : undefined
  const scaleMm = values.scale?.length?.mm
  const boxAtMm = place?.atMm
  const layup = neckLayers(values, (boxAtMm ?? scaleMm ?? 0) / 2)
  const taper = neckTaper(values)
  if (!layup || !taper) return undefined
  const head = headShape(values, layup)
  const inside = insideBox(values, place, {totalMm: layup.totalMm, tailMm})
  const body: NeckBody = {
    layup,
    layersAlong: layersAlong(layup.layers, inside),
    inside,
    taper: tailMm ? {...taper, tailStationMm: tailMm} : taper,
    tailMm,
    boxAtMm,
    boxTailMm: place?.tailMm,
    scaleMm,
    head,
    roundOver: roundOver(values, {head, boxAtMm, tailMm}),
    faceRadiusMm: values.fingerboard?.radius?.mm,
  }
  return {...body, changes: changesAlong(body)}
}

/** Leave so much of a neck (mm) inside the box that it runs through. */
export function deepened(model: NeckModel, insideMm: number): NeckModel {
  if (!model.inside) return model
  const inside = {...model.inside, surfaceMm: model.inside.totalMm - insideMm}
  return {...model, inside, layersAlong: layersAlong(model.layup.layers, inside)}
}

/** A station where the neck's section is worth knowing, and what is there. */
export interface Change {
  stationMm: number
  what: NeckPlace
}

/** A place of the neck that there is once. */
export type PlainNeckPlace =
  | 'nut'
  | 'free middle'
  | 'box head'
  | 'inside starts'
  | 'inside'
  | 'inside ends'
  | 'box tail'
  | 'round-over starts'
  | 'round-over full'
  | 'round-over runs out'
  | 'round-over ends'
  | 'tail end'

/** What changes along a neck, or is at a place of it; of a layer, its path in the build file. */
export type NeckPlace = {at: PlainNeckPlace} | {at: 'layer starts' | 'layer ends'; of: string}

/**
 * List the stations from the nut line to the tail end (mm) where the section is wanted: nut, middle of the free neck,
 * box edges, and wherever a layer or the round-over begins or ends.
 */
function changesAlong({layup, roundOver, inside, boxAtMm, boxTailMm, tailMm, scaleMm}: NeckBody): Change[] {
  const endMm = tailMm ?? boxAtMm ?? scaleMm ?? 0
  const freeMm = boxAtMm ?? scaleMm
  const changes: Change[] = []
  const add = (stationMm: number | undefined, what: NeckPlace) => {
    if (stationMm === undefined || stationMm < 0 || stationMm > endMm) return
    for (const other of changes) if (Math.abs(other.stationMm - stationMm) < samePlaceMm) return
    changes.push({stationMm, what})
  }
  add(0, {at: 'nut'})
  add(freeMm && freeMm / 2, {at: 'free middle'})
  add(boxAtMm, {at: 'box head'})
  if (inside) {
    const [fromMm, toMm] = inside.clear
    add(fromMm, {at: 'inside starts'})
    add((fromMm + toMm) / 2, {at: 'inside'})
    add(toMm, {at: 'inside ends'})
  }
  add(boxTailMm, {at: 'box tail'})
  for (const {of, fromMm, toMm} of layup.layers) {
    add(fromMm, {at: 'layer starts', of})
    add(toMm, {at: 'layer ends', of})
  }
  if (roundOver) {
    const {fromMm, toMm, runInMm} = roundOver
    add(fromMm, {at: 'round-over starts'})
    add(fromMm + runInMm, {at: 'round-over full'})
    add(toMm - runInMm, {at: 'round-over runs out'})
    add(toMm, {at: 'round-over ends'})
  }
  add(tailMm, {at: 'tail end'})
  return changes.sort((a, b) => a.stationMm - b.stationMm)
}
