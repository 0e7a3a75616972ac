import {assumptionRows} from '../../build-file/assumptions.ts'
import {wholeFile} from '../../build-file/schema/problem.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import {planBoxPlace} from '../kit/box-place.ts'
import {listedAs, type Piece} from '../kit/context.ts'
import type {Settled} from '../kit/settled.ts'
import {planBlank, planBudget} from '../neck-shape/budget.ts'
import {neckModel} from '../neck-shape/model.ts'

/** Shorter than this is no instrument's string (mm); the build file takes no shorter one either. */
const shortestMm = 100

/**
 * Where no scale length is given, find the longest (mm) that leaves room for the head and for what anchors and box
 * need past the bridge: on a neck of `neck.length`, else on one whose blank the longest piece of wood at hand yields.
 * The build is laid out at a trial length, and what the stick then lacks comes off it; where `box.at` places the box,
 * the bridge's place on it settles the length, and the stick must reach.
 */
export function longestScaleMm(settled: Settled, rack: readonly Piece[]): number | undefined {
  const {values} = settled
  const {box, anchors} = values
  if (values.scale?.length || !box?.length) return undefined
  const neckMm = values.neck?.length?.mm
  const stickMm = neckMm ?? longestStick(values, rack)
  if (stickMm === undefined) return undefined
  const lacking = (scaleMm: number) => {
    const takenMm = neckMm === undefined ? blankAt(scaleMm, values) : neededAt(scaleMm, values)
    return takenMm === undefined ? Number.POSITIVE_INFINITY : takenMm - stickMm
  }
  const fromTailMm = values.bridge?.['from-tail']?.mm ?? box.length.mm / 5
  const placedMm = box.at && box.at.mm + box.length.mm - fromTailMm
  const longestMm =
    placedMm ?? Math.min(stickMm - lacking(stickMm), anchors?.at?.mm ?? Number.POSITIVE_INFINITY)
  return longestMm >= shortestMm && lacking(longestMm) <= 1e-6 ? longestMm : undefined
}

/** What head, scale and tail together take of the stick at a scale length. */
function neededAt(scaleMm: number, values: BuildValues): number | undefined {
  const trial = layOut(scaleMm, values)
  return planBudget(trial, planBoxPlace(trial))?.neededMm
}

/** The stick to start from at a scale length, the neck being as long as is assumed where the file does not say. */
function blankAt(scaleMm: number, values: BuildValues): number | undefined {
  const trial = layOut(scaleMm, values)
  const place = planBoxPlace(trial)
  const budget = planBudget(trial, place)
  const model = budget && neckModel(trial, {place, lengthMm: budget.lengthMm})
  return model && planBlank(model, budget.lengthMm, trial.saw?.kerf?.mm ?? 0)?.blankMm
}

function layOut(scaleMm: number, values: BuildValues): BuildValues {
  const written = (mm: number) => ({mm, text: '', place: wholeFile, assumed: true as const})
  const scaled = {...values, scale: {...values.scale, length: written(scaleMm)}}
  const assumed = assumptionRows.find(({path}) => path === 'neck.length')?.value(scaled, 0)
  const length = scaled.neck?.length ?? (typeof assumed === 'object' ? written(assumed.mm) : undefined)
  return {...scaled, neck: {...scaled.neck, ...(length && {length})}}
}

interface Stick extends Pick<Piece, 'lengthMm' | 'widthMm' | 'thicknessMm'> {
  clearMm?: Piece['clearMm'] | undefined
}

/**
 * Give the longest stick (mm) that can be cut from the wood at hand: within a piece's clear length, less `saw.trim` at
 * each end. Wood at hand is what the build lists or takes, else the rack. Pieces as wide as the neck and as thick as
 * it, or as its thickest layer, come first; undefined where there is none.
 */
export function longestStick(values: BuildValues, rack: readonly Piece[]): number | undefined {
  const named = new Set(values.take?.map(({value}) => value))
  const taken = rack.filter(({id}) => named.has(id) || named.has(listedAs(id)))
  const listed = stockOf(values)
  const fromRack = taken.length > 0 || listed.length > 0 ? taken : rack
  const sticks: readonly Stick[] = [...listed, ...fromRack]
  const layers = values.neck?.laminations?.map((layer) => layer.thickness?.mm ?? 0)
  const thickMm = layers?.length ? Math.max(...layers) : (values.neck?.thickness?.mm ?? 0)
  const wideMm = values.neck?.width?.nut?.mm ?? 0
  const fitting = sticks.filter(
    ({widthMm, thicknessMm}) => widthMm >= wideMm - 1e-6 && thicknessMm >= thickMm - 1e-6,
  )
  const trimMm = values.saw?.trim?.mm ?? 0
  const lengths = (fitting.length > 0 ? fitting : sticks).map(
    ({lengthMm, clearMm: [from, to] = [0, lengthMm]}) => to - from - 2 * trimMm,
  )
  return lengths.length > 0 ? Math.max(...lengths) : undefined
}

function stockOf({stock = []}: BuildValues): Stick[] {
  return stock.flatMap(({length, width, thickness, clear}) => {
    if (!length) return []
    const [from, to] = clear ?? []
    return [
      {
        lengthMm: length.mm,
        widthMm: width?.mm ?? Number.POSITIVE_INFINITY,
        thicknessMm: thickness?.mm ?? Number.POSITIVE_INFINITY,
        clearMm: from && to && ([from.mm, to.mm] as const),
      },
    ]
  })
}
