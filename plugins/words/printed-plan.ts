import type {Problem} from '../build-file/schema/problem.ts'
import type {AsBuilt} from '../plan/as-built/as-built.ts'
import type {Bow} from '../plan/neck/bow.ts'
import type {Neck} from '../plan/neck/neck.ts'
import type {Budget} from '../plan/neck-shape/budget.ts'
import type {NeckCrossSection} from '../plan/neck-shape/cut.ts'
import type {Plan} from '../plan/plan.ts'
import type {BillRow} from '../plan/stock/bill.ts'
import type {PacketOff} from '../plan/strings/string-gauges.ts'
import type {StringPlan} from '../plan/strings/strings.ts'
import type {Step} from '../plan/work/step.ts'
import {waitSource} from '../tables/waits.ts'
import {effectsInWords, toleranceFromWords} from './as-built.ts'
import {billItem} from './bill.ts'
import {type CautionWords, cautionInWords} from './cautions.ts'
import {type PrintedCuts, printedCuts} from './cut-list.ts'
import {type PrintedFastener, type PrintedHole, printedFastener, printedHole} from './holes.ts'
import {type Ruler, writeGauge} from './lengths.ts'
import {bowWhy, tailNeeds} from './neck.ts'
import {
  neckPlaceName,
  type PrintedStation,
  type PrintedStepStation,
  printedStation,
  printedStepStation,
} from './places.ts'
import {assumedInWords, whyInWords} from './proposals.ts'
import {type SettingUpWords, settingUpInWords} from './setting-up.ts'
import type {StepWords} from './step-writing.ts'
import {stepInWords} from './steps.ts'

/** The plan as it is given to others: with a text wherever its contract promises one. */
export interface PrintedPlan
  extends Omit<
    Plan,
    | 'strings'
    | 'layout'
    | 'neck'
    | 'holes'
    | 'fasteners'
    | 'work'
    | 'bill'
    | 'cautions'
    | 'cuts'
    | 'asBuilt'
    | 'settingUp'
  > {
  strings?: PrintedString[] | undefined
  layout?: PrintedStation[] | undefined
  neck?: PrintedNeck | undefined
  holes?: PrintedHole[] | undefined
  fasteners?: PrintedFastener[] | undefined
  work?: PrintedStep[] | undefined
  bill?: PrintedBillRow[] | undefined
  cautions?: (CautionWords & {id: string})[] | undefined
  asBuilt?: PrintedAsBuilt[] | undefined
  settingUp?: PrintedSettingUp[] | undefined
  cuts?: PrintedCuts | undefined
}

type PrintedString = Omit<StringPlan, 'alternatives' | 'packetOff'> & {
  alternatives?: {gauge: string; tensionN: number}[] | undefined
  packetOff?: (Omit<PacketOff, 'gauge'> & {gauge?: string | undefined}) | undefined
}

interface PrintedNeck extends Omit<Neck, 'bow' | 'budget' | 'sections'> {
  sections?: PrintedCrossSection[] | undefined
  bow?: (Omit<Bow, 'freeBody'> & {why: string}) | undefined
  budget?: (Omit<Budget, 'needs'> & {needs: string}) | undefined
}

/** A wood that the file does not give says so. */
interface PrintedCrossSection extends Omit<NeckCrossSection, 'what' | 'laminations'> {
  what?: string | undefined
  laminations: (Omit<NeckCrossSection['laminations'][number], 'wood'> & {wood: string})[]
}

type PrintedBillRow = Omit<BillRow, 'item'> & {item: string}

/** `waitFrom` says where the waiting time comes from. */
type PrintedStep = Omit<Step, 'facts' | 'tool' | 'stations'> &
  StepWords & {stations: PrintedStepStation[]; waitFrom?: string | undefined}

/** Effects are in a maker's words. */
type PrintedAsBuilt = Omit<AsBuilt, 'effects' | 'toleranceFrom'> & {
  effects: string[]
  toleranceFrom?: string | undefined
}

/** `amountMm`: how far, of what is moved. */
type PrintedSettingUp = SettingUpWords & {amountMm?: number | undefined}

/** Word the plan for those who read it as data; what is undefined is dropped. */
export function printedPlan(plan: Plan): PrintedPlan {
  const {strings, layout, neck, holes, fasteners, work, bill, cautions, cuts, asBuilt, settingUp} = plan
  return defined({
    ...plan,
    assumptions: plan.assumptions.map((one) => ({
      ...one,
      value: assumedInWords(one),
      why: whyInWords(one.why),
    })),
    strings: strings?.map((string) => printedString(string, plan)),
    layout: layout?.map(printedStation),
    neck: neck && printedNeck(neck),
    holes: holes?.map(printedHole),
    fasteners: fasteners?.map(printedFastener),
    cuts: cuts && printedCuts(cuts, plan),
    work: work?.map((step) => printedStep(step, plan)),
    bill: bill?.map((row) => ({...row, item: billItem(row.item, plan)})),
    cautions: cautions?.map((one) => ({id: one.id, ...cautionInWords(one, plan)})),
    asBuilt: asBuilt?.map((measure) => ({
      ...measure,
      toleranceFrom: measure.toleranceFrom && toleranceFromWords[measure.toleranceFrom],
      effects: effectsInWords(measure, plan),
    })),
    settingUp: settingUp?.map((one) => ({
      ...settingUpInWords(one, plan),
      amountMm: 'amountMm' in one ? one.amountMm : undefined,
    })),
  })
}

function printedString(string: StringPlan, {units}: Ruler): PrintedString {
  const {alternatives, packetOff} = string
  return {
    ...string,
    alternatives: alternatives?.map((one) => ({...one, gauge: writeGauge(one.gauge, units)})),
    packetOff: packetOff && {...packetOff, gauge: packetOff.gauge && writeGauge(packetOff.gauge, units)},
  }
}

/** Write the plan and what the checks found in it as one JSON object, ended by a line feed. */
export function planJson(plan: Plan, problems: readonly Problem[]): string {
  return `${plainJson({...printedPlan(plan), problems}, 2)}\n`
}

// Controls and marks that turn the direction of writing, which a terminal obeys: U+007F-9F, 200E-F, 2028-2E, 2066-69.
const obeyed = /[\u007f-\u009f\u200e\u200f\u2028-\u202e\u2066-\u2069]/g

/** Write a value as JSON that a terminal shows and does not obey. */
export const plainJson = (value: unknown, indent = 0): string =>
  JSON.stringify(value, null, indent).replace(
    obeyed,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  )

function printedNeck({bow, budget, ...neck}: Neck): PrintedNeck {
  return {
    ...neck,
    sections: neck.sections?.map(printedCrossSection),
    bow: bow && printedBow(bow),
    budget: budget && {...budget, needs: tailNeeds[budget.needs]},
  }
}

function printedCrossSection(section: NeckCrossSection): PrintedCrossSection {
  const {what, laminations} = section
  return {
    ...section,
    what: what && neckPlaceName(what),
    // Its keys keep their order, whether the plan was made now or kept.
    laminations: laminations.map(({wood = 'wood not given', ...layer}) => ({wood, ...layer})),
  }
}

function printedBow({freeBody, ...bow}: Bow): PrintedNeck['bow'] {
  return {...bow, why: bowWhy[freeBody]}
}

function printedStep(whole: Step, ruler: Ruler): PrintedStep {
  const {facts, tool, ...step} = whole
  const waitFrom = step.waitH === undefined ? undefined : waitSource
  const stations = step.stations.map(printedStepStation)
  return {...step, stations, ...stepInWords(whole, ruler), waitFrom}
}

/** Copy a value without the keys of objects that hold undefined. */
function defined<Value>(value: Value): Value {
  if (Array.isArray(value)) return value.map(defined) as Value
  if (typeof value !== 'object' || value === null) return value
  const kept = Object.entries(value).flatMap(([key, held]) =>
    held === undefined ? [] : [[key, defined(held)] as const],
  )
  return Object.fromEntries(kept) as Value
}
