import {isMade} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {Proposal} from '../kit/proposal.ts'
import {withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import {planPull} from '../strings/strings.ts'
import {proposeAnchors} from './anchors.ts'
import {type Around, lookAround, type Propose} from './around.ts'
import {proposeFastening} from './fastening.ts'
import {proposeNut} from './nut.ts'
import {proposePosts} from './posts.ts'
import {proposeHole} from './sound-hole.ts'
import {proposeTopScrews} from './top-screws.ts'

/** Every proposal, in an order that works: a hole keeps clear of blocks, screws bear what the anchors leave to them. */
const all: readonly Propose[] = [
  proposeNut,
  proposeAnchors,
  proposeFastening,
  proposeTopScrews,
  proposeHole,
  proposePosts,
]

/** Sizes are proposed to marks that are easily read (mm), where the maker's ruler has them and there is room. */
const easyMm = {in: inch(1 / 8), mm: 1} as const

function easyRulerMm({units, rulerMm}: Settled): number {
  const marks = easyMm[units] / rulerMm
  return marks > 1 && Math.abs(marks - Math.round(marks)) < 1e-6 ? easyMm[units] : rulerMm
}

/**
 * Propose what an instrument still needs and nobody can compute: each proposal fits what the file says and what is
 * proposed before it, by the same computations as the plan.
 */
export function proposalsFor(settled: Settled): Proposal[] {
  const {values, units} = settled
  // An instrument that exists has what it has.
  if (!values.strings || isMade(values.status?.value)) return []
  const tensionTotalN = planPull(settled)
  const made: Proposal[] = []
  let so = settled
  let around: Around | undefined
  for (const propose of all) {
    around ??= lookAround(so, tensionTotalN)
    const coarse = propose({...so, rulerMm: easyRulerMm(so)}, around)
    const proposals = coarse.some((one) => 'open' in one) ? propose(so, around) : coarse
    for (const one of proposals) {
      if (!('texts' in one)) continue
      so = {...so, values: withTexts(so, one.texts, units)}
      around = undefined
    }
    made.push(...proposals)
  }
  return made
}
