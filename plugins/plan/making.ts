import type {Intonation} from './action/intonation.ts'
import {type AsBuilt, planAsBuilt} from './as-built/as-built.ts'
import type {Strung} from './as-built/likely-faults.ts'
import {planSettingUp, type SettingUp} from './as-built/setting-up.ts'
import {type Caution, planCautions} from './cautions/cautions.ts'
import type {ScrewPlace} from './fasteners/screw-places.ts'
import type {Context} from './kit/context.ts'
import type {Settled} from './kit/settled.ts'
import {planLayout, type Station} from './layout/layout.ts'
import type {Outline} from './layout/outline.ts'
import {type BillRow, planBill} from './stock/bill.ts'
import {type Cost, planCost} from './stock/cost.ts'
import {type Cuts, partsTooMany, planCuts} from './stock/cut-list.ts'
import {planStockTroubles, type StockTrouble} from './stock/stock-at-hand.ts'
import type {Placed} from './strings/tuners.ts'
import {planTunings, type Tuning} from './strings/tunings.ts'
import type {Step} from './work/step.ts'
import type {Design} from './work/work-facts.ts'
import {planWork, type WorkTime} from './work/work-order.ts'

/** What it takes to make an instrument, and what came of it; a part whose inputs are missing is absent. */
export interface Making {
  /** Every station in order, head end to tail end. */
  layout?: Station[] | undefined
  /** Other common tunings that these gauges carry. */
  tunings?: Tuning[] | undefined
  stockTroubles?: StockTrouble[] | undefined
  cuts?: Cuts | undefined
  /** More parts than can be planned. */
  tooManyParts?: {count: number; most: number} | undefined
  cautions?: Caution[] | undefined
  bill?: BillRow[] | undefined
  cost?: Cost | undefined
  asBuilt?: AsBuilt[] | undefined
  settingUp?: SettingUp[] | undefined
  /** In an order that works. */
  work?: Step[] | undefined
  workTime?: WorkTime | undefined
}

/** What is planned of the instrument that is made. */
type Planned = Partial<Omit<Design, 'cuts' | 'layout'> & Omit<Strung, 'bow' | 'asBuilt'>> & {
  intonation?: Intonation[] | undefined
  tuners?: Placed[] | undefined
  anchors?: Placed[] | undefined
  screws?: ScrewPlace[] | undefined
  outline?: Outline | undefined
  tensionTotalN?: number | undefined
}

/**
 * Plan the making of an instrument that is planned: where all has its place, how its wood is cut,
 * its work, what is bought, what was measured, how it is set up.
 */
export function planMaking(settled: Settled, planned: Planned, context: Context): Making {
  const {scale, strings, action, bridge, neck, box, holes, fasteners, screws} = planned
  const {values} = settled
  const {tuners, anchors, outline} = planned
  const neckLengthMm = neck?.budget?.lengthMm
  const stations = {scale, neckLengthMm, tuners, anchors, screws, bridge, box, outline}
  const layout = planLayout(settled, stations)
  const tunings = planTunings(values, strings)
  const stockTroubles = planStockTroubles(values, context)
  const cuts = planCuts(settled, neck, context.pieces)
  const {scarf, fretting, bow} = neck ?? {}
  const {tensionTotalN, pickup, intonation} = planned
  const cautions = planCautions(settled, {cuts, scarf, holes, notch: box?.neck?.notch, tensionTotalN})
  const bill = planBill(settled, {strings, screws, wireMm: fretting?.wireMm, cuts}, context)
  const cost = planCost(settled, bill, context.journal)
  const strung = {scale, strings, action, bridge, box}
  const made = {...strung, intonation, neckLengthMm, bowMm: bow?.reliefMm}
  const asBuilt = planAsBuilt(settled, made)
  const settingUp = planSettingUp(settled, {...strung, bow, pickup, asBuilt})
  const design = {scale, strings, bridge, neck, box, layout, holes, fasteners, cuts}
  const work = planWork(settled, design, cautions)
  const tooManyParts = partsTooMany(values)
  return {
    layout,
    tunings,
    stockTroubles,
    cuts,
    tooManyParts,
    cautions,
    bill,
    cost,
    asBuilt,
    settingUp,
    ...work,
  }
}
