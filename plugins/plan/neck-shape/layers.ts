import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Words} from '../../build-file/schema/values.ts'
import {inch} from '../../tables/units.ts'
import {woodOf} from '../kit/woods.ts'

/** A layer in its place: how deep (mm) under the playing face it starts. */
export interface NeckLayer extends BareLayer {
  fromFaceMm: number
  /** Before planing. */
  bareMm: number
  /** Runs along the free neck. */
  runs: boolean
  /** Goes on to the middle of the head, and so belongs to it. */
  reachesHead: boolean
}

export interface Layup {
  layers: NeckLayer[]
  /** The stick without fingerboard and cap. */
  stickMm: number
  /** Playing face to back. */
  totalMm: number
  /** What the laminations that run along the free neck come to, before planing. */
  laminationsMm: number | undefined
  /** What they should come to. */
  wantedMm: number
}

/** What laminations may come to above the thickness, to be planed off (mm): common practice, no source. */
export const planingMostMm = inch(1 / 8)

const slackMm = 1e-6

/**
 * Stack the neck's layers from the playing face down: fingerboard, cap, laminations or the solid stick. `thickness`
 * runs from the playing face to the back; laminations that come to it by themselves carry fingerboard and cap on top
 * of it. What they come to above it is planed off the back. `midMm` is a station on the free neck, to tell layers
 * that run along it from those that do not. Undefined without a thickness.
 */
export function neckLayers({neck, fingerboard, head}: BuildValues, midMm: number): Layup | undefined {
  if (!neck?.thickness) return undefined
  const ledgeMm = head?.ledge?.mm ?? 0
  const headMiddleMm = (ledgeMm + Math.max(head?.length?.mm ?? 0, ledgeMm)) / 2
  const sheets: BareLayer[] = [
    ...sheet('fingerboard', fingerboard, fingerboard?.from?.mm ?? 0, fingerboard?.to?.mm),
    ...sheet('neck.cap', neck.cap, -ledgeMm),
  ]
  const sheetsMm = total(sheets)
  const stick = stickLayers(neck, {ledgeMm, headMiddleMm, solidMm: Math.max(neck.thickness.mm - sheetsMm, 0)})
  const running = stick.filter(({fromMm, toMm}) => fromMm <= midMm && toMm >= midMm)
  const sumMm = total(running)
  const isLaminated = neck.laminations !== undefined && stick[0]!.of !== 'neck'
  const thicknessMm = isLaminated && neck.thickness.assumed ? sumMm : neck.thickness.mm
  const carries =
    isLaminated && sumMm >= thicknessMm - slackMm && sumMm + sheetsMm > thicknessMm + planingMostMm
  const wantedMm = carries ? thicknessMm : Math.max(thicknessMm - sheetsMm, 0)
  const planedMm = isLaminated ? Math.max(0, Math.min(sumMm - wantedMm, planingMostMm)) : 0

  let fromFaceMm = 0
  const layers = [...sheets, ...stick].map((layer): NeckLayer => {
    const bareMm = layer.thicknessMm
    const thicknessMm = Math.max(bareMm - (layer === running.at(-1) ? planedMm : 0), 0)
    const reachesHead = layer.fromMm < -headMiddleMm
    const runs = running.includes(layer)
    const placed = {...layer, fromFaceMm, bareMm, runs, reachesHead, thicknessMm}
    fromFaceMm += thicknessMm
    return placed
  })
  const stickMm = sumMm - planedMm
  return {
    layers,
    stickMm,
    totalMm: sheetsMm + stickMm,
    wantedMm,
    laminationsMm: isLaminated ? sumMm : undefined,
  }
}

const total = (layers: readonly BareLayer[]) => layers.reduce((sum, {thicknessMm}) => sum + thicknessMm, 0)

function sheet(of: string, part: BuildValues['fingerboard'], fromMm: number, toMm?: number): BareLayer[] {
  if (!part?.thickness) return []
  return [
    {
      of,
      ...layerWood(part),
      thicknessMm: part.thickness.mm,
      fromMm,
      toMm: toMm ?? Number.POSITIVE_INFINITY,
      isSawn: false,
    },
  ]
}

/** A layer of the neck before it is stacked: mm from the nut line, and its own thickness. */
export interface BareLayer extends LayerWood {
  /** Its path in the build file. */
  of: string
  thicknessMm: number
  fromMm: number
  toMm: number
  /** There when the scarf is sawn, so part of the head as well. */
  isSawn: boolean
  strips?: number | undefined
}

type Neck = NonNullable<BuildValues['neck']>

/**
 * List the stick's layers from the face down: its laminations, where each has a thickness, or the solid stick of the
 * thickness given (mm). A lamination that does not reach the middle of the head is no part of it, so unless the file
 * says otherwise it is glued on after the scarf.
 */
function stickLayers(
  neck: Neck,
  {ledgeMm, headMiddleMm, solidMm}: {ledgeMm: number; headMiddleMm: number; solidMm: number},
): BareLayer[] {
  const {laminations, wood, density, stiffness} = neck
  if (!laminations?.length || laminations.some(({thickness}) => !thickness))
    return [
      {
        of: 'neck',
        ...layerWood({wood, density, stiffness}),
        thicknessMm: solidMm,
        fromMm: Number.NEGATIVE_INFINITY,
        toMm: Number.POSITIVE_INFINITY,
        isSawn: true,
      },
    ]
  return laminations.map((layer, i) => {
    const startsLate = layer.from !== undefined && layer.from.mm >= -headMiddleMm
    const isSawn = layer.glued ? layer.glued.value === 'before scarf' : !startsLate
    return {
      of: `neck.laminations.${i + 1}`,
      ...layerWood(layer),
      thicknessMm: layer.thickness!.mm,
      fromMm: layer.from?.mm ?? (isSawn ? Number.NEGATIVE_INFINITY : -ledgeMm),
      toMm: layer.to?.mm ?? Number.POSITIVE_INFINITY,
      isSawn,
      strips: layer.strips?.value,
    }
  })
}

/** What a layer is made of: as written, and worth to section, weight and movement where the wood is known. */
export interface LayerWood {
  name?: string | undefined
  densityKgM3?: number | undefined
  eMpa?: number | undefined
  /** What breaks it in bending (modulus of rupture); the least of its strips. */
  morMpa?: number | undefined
  /** Where the name leaves a range; else both the same. */
  eRangeMpa?: readonly [low: number, high: number] | undefined
  /** Change of width per 1 % of moisture, quarter-sawn and flat-sawn. */
  moves?: readonly [quarter: number, flat: number] | undefined
}

interface Written {
  wood?: Words | undefined
  woods?: Words[] | undefined
  density?: {kgM3: number} | undefined
  stiffness?: {mpa: number} | undefined
}

/**
 * Say what a layer is worth: strips of different woods side by side, all of one width, count by the mean of their
 * stiffness, density and movement, since they bend and swell together.
 */
export function layerWood({wood, woods, ...own}: Written): LayerWood {
  const strips = woods?.length ? woods : wood ? [wood] : []
  const name = strips.map(({value}) => value).join(', ')
  const found = strips.length ? strips.map(({value}) => woodOf(value, own)) : [woodOf(undefined, own)]
  const sum = {densityKgM3: 0, eMpa: 0, low: 0, high: 0, quarter: 0, flat: 0}
  let least = Number.POSITIVE_INFINITY
  for (const one of found) {
    if (!one) return {name: name || undefined}
    const {densityKgM3, eMpa, morMpa, range, moves} = one
    least = Math.min(least, morMpa ?? Number.NaN)
    sum.densityKgM3 += densityKgM3
    sum.eMpa += eMpa
    sum.low += range?.eMpa[0] ?? eMpa
    sum.high += range?.eMpa[1] ?? eMpa
    sum.quarter += moves?.[0] ?? Number.NaN
    sum.flat += moves?.[1] ?? Number.NaN
  }
  const count = found.length
  return {
    name: name || undefined,
    densityKgM3: sum.densityKgM3 / count,
    eMpa: sum.eMpa / count,
    morMpa: Number.isNaN(least) ? undefined : least,
    eRangeMpa: [sum.low / count, sum.high / count],
    moves: Number.isNaN(sum.flat) ? undefined : [sum.quarter / count, sum.flat / count],
  }
}
