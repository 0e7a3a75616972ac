import {assumptionRows} from '../../build-file/assumptions.ts'
import {wholeFile} from '../../build-file/problem.ts'
import {boxPlace} from '../box/box.ts'
import {cutNeck} from '../neck/cut-neck.ts'
import {neckBlank} from '../neck/neck-blank.ts'
import {neckBudget} from '../neck/neck-budget.ts'
import {neckModel} from '../neck/neck-model.ts'
import type {PlanPart, Settled} from '../part.ts'
import type {Plan} from '../shape/plan.ts'
import {longestStick} from './longest-stick.ts'

/** Shorter than this is no instrument's string (mm); the build file takes no shorter one either. */
const shortestMm = 100

/**
 * Where no scale length is given, find the longest (mm) that leaves room for the head and for what anchors and box
 * need past the bridge: on a neck of `neck.length`, else on one whose blank the longest piece of wood at hand yields.
 * The build is laid out at a trial length, and what the stick then lacks comes off it; where `box.at` places the box,
 * the bridge's place on it settles the length, and the stick must reach.
 */
export const longestScale: PlanPart = (settled, soFar, {pieces}) => {
  const {values} = settled
  const {box, anchors} = values
  if (values.scale?.length || !box?.length) return {}
  const neckMm = values.neck?.length?.mm
  const stickMm = neckMm ?? longestStick(values, pieces)
  if (stickMm === undefined) return {}
  const lacking = (scaleMm: number) => {
    const takenMm =
      neckMm === undefined ? blankAt(scaleMm, settled, soFar) : neededAt(scaleMm, settled, soFar)
    return takenMm === undefined ? Number.POSITIVE_INFINITY : takenMm - stickMm
  }
  const fromTailMm = values.bridge?.['from-tail']?.mm ?? box.length.mm / 5
  const placedMm = box.at && box.at.mm + box.length.mm - fromTailMm
  const longestMm =
    placedMm ?? Math.min(stickMm - lacking(stickMm), anchors?.at?.mm ?? Number.POSITIVE_INFINITY)
  if (!(longestMm >= shortestMm) || lacking(longestMm) > 1e-6) return {}
  return {scale: {fretted: false, ...soFar.scale, longestMm}}
}

/** What head, scale and tail together take of the stick at a scale length. */
function neededAt(scaleMm: number, settled: Settled, soFar: Plan): number | undefined {
  return layOut(scaleMm, settled, soFar).neck?.budget?.neededMm
}

/** The stick to start from at a scale length, the neck being as long as is assumed where the file does not say. */
function blankAt(scaleMm: number, settled: Settled, soFar: Plan): number | undefined {
  const trial = layOut(scaleMm, settled, soFar)
  const model = neckModel(trial.settled.values, trial.soFar)
  if (!model || !trial.neck) return undefined
  return neckBlank({model, cut: cutNeck(model), settled: trial.settled, soFar: trial.soFar, neck: trial.neck})
    .budget?.blankMm
}

function layOut(scaleMm: number, settled: Settled, plan: Plan) {
  const written = (mm: number) => ({mm, text: '', place: wholeFile, assumed: true as const})
  const scaled = {...settled.values, scale: {...settled.values.scale, length: written(scaleMm)}}
  const assumed = assumptionRows.find(({path}) => path === 'neck.length')?.value(scaled, 0)
  const length = scaled.neck?.length ?? (typeof assumed === 'object' ? written(assumed.mm) : undefined)
  const trial = {...settled, values: {...scaled, neck: {...scaled.neck, ...(length && {length})}}}
  const soFar: Plan = {...plan, scale: {fretted: false, ...plan.scale, lengthMm: scaleMm}}
  const boxed = {...soFar, ...boxPlace(trial, soFar, {journal: {}, pieces: []})}
  const {neck} = neckBudget(trial, boxed, {journal: {}, pieces: []})
  return {settled: trial, soFar: {...boxed, ...(neck && {neck})}, neck}
}
