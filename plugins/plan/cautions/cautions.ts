import {ownAt} from '../../build-file/schema/path.ts'
import {type HazardName, hazards} from '../../tables/hazards.ts'
import {oilyWoods, type WoodHazardRow, woodHazards} from '../../tables/wood-hazards.ts'
import type {Settled} from '../kit/settled.ts'
import {
  type BenchFacts,
  type Brought,
  benchFacts,
  placeOf,
  type Trigger,
  type WoodHere,
  type WoodUsed,
} from './bench-facts.ts'
import {finishCautions, hardwareCautions} from './hardware-cautions.ts'

/** A bit of this size and more catches in wood of that thickness and less (mm): common practice, no source. */
const bigBitMm = 19.05
const thinTopMm = 6.35
/** As sawn, planing allowance included (mm): common practice, no source. */
const thinPartMm = 9.525

/** Cautions that follow from what is sawn, planed, routed and drilled, with the sizes that bring them. */
const machineCautions = {
  'saw-kickback': ({values, made}) => {
    const [part] = made.cuts?.parts ?? []
    if (part) return {part}
    return values.neck && {}
  },
  'short-part': ({made}) => {
    const small = made.cuts?.parts.filter(({isSmall}) => isSmall) ?? []
    if (small.length === 0) return undefined
    return {parts: small, shortestMm: Math.min(...small.map(({lengthMm}) => lengthMm))}
  },
  'scarf-saw': ({made: {scarf}}) => scarf && {angleDeg: scarf.angleDeg, runMm: scarf.runMm},
  'router-direction': ({values}) => {
    const radius = values.neck?.['round-over']?.radius
    return radius && {radius: radius.text}
  },
  'big-bit': ({values}) => {
    const topMm = values.box?.top?.thickness?.mm
    const mm = Math.max(0, ...(values.box?.holes ?? []).map(({diameter}) => diameter?.mm ?? 0))
    if (topMm === undefined || topMm > thinTopMm || mm < bigBitMm) return undefined
    return {mm, topMm}
  },
  planer: ({made}) => {
    const thin = (made.cuts?.parts ?? []).filter(({thicknessMm}) => thicknessMm <= thinPartMm)
    const [first] = thin
    return first && {part: first, places: thin.map(placeOf)}
  },
  'drill-clamp': ({made: {holes}}) => (holes?.length ? {count: holes.length} : undefined),
  eyes: ({values}) => values.neck && {},
  noise: ({values}) => values.neck && {},
} satisfies {[Name in HazardName]?: Trigger<Name>}

/** Cautions that follow from the woods: their dust, and their trade. */
const woodCautions = {
  'redcedar-dust': harmful(({own}) => own === 'redcedar'),
  'rosewood-dust': harmful(({own}) => own === 'rosewood'),
  'cancer-dust': harmful(({cancer}) => cancer !== undefined),
  'sensitizer-dust': harmful(({own}) => own === undefined),
  'wood-dust': ({values, woods}) =>
    woods.length > 0 || values.neck
      ? {names: woods.map(({name}) => name), places: ['neck', ...woods.flatMap(({places}) => places)]}
      : undefined,
  'sheet-dust': ({woods}) => {
    const sheets = woods
      .filter(({isSheet}) => isSheet)
      .map(({name, where, places}) => ({name, where, places}))
    return sheets.length > 0 ? {sheets} : undefined
  },
  'oily-wood': found((row, {places}) => oilyWoods.includes(row) && places.some(isGlued)),
  'protected-wood': ({woods}) => {
    const listed = woods.flatMap(({name, where, places, isLoose, trade}) =>
      trade.map(({row, listing}) => ({name, where, places, isLoose, row, listing})),
    )
    return listed.length > 0 ? {woods: listed} : undefined
  },
} satisfies {[Name in HazardName]?: Trigger<Name>}

/** A found box stands as it is; all else is glued to something. */
const isGlued = (place: string) => place !== 'box' && place !== 'box.top'

/** Find each wood whose dust does what is asked. */
function harmful(does: (row: WoodHazardRow) => boolean) {
  return found((row) => {
    const hazard = ownAt(woodHazards, row)
    return hazard !== undefined && does(hazard)
  })
}

/** Find each wood that is, or may be, of a row that is asked for. */
function found(is: (row: string, wood: WoodUsed) => boolean) {
  return ({woods}: BenchFacts): {woods: WoodHere[]} | undefined => {
    const those = woods.flatMap((wood) => {
      const {name, where, places, isLoose, rows} = wood
      const row = rows.find((one) => is(one, wood))
      return row === undefined ? [] : [{name, where, places, isLoose, row}]
    })
    return those.length > 0 ? {woods: those} : undefined
  }
}

/** A hazard of the table and what brings it here, or a caution of the maker's own. */
export type Caution = {id: HazardName; here: Brought[HazardName]} | {id: `own-${number}`; does: string}

/** What brings each hazard to a build. */
const triggers: {[Name in HazardName]: Trigger<Name>} = {
  ...machineCautions,
  ...hardwareCautions,
  ...finishCautions,
  ...woodCautions,
}

const names = Object.keys(hazards) as HazardName[]

/**
 * List what can happen while this build is made, the worst first as in the table of hazards, with what brings it
 * here, then the build's own cautions. Undefined while there is nothing to work on.
 */
export function planCautions(settled: Settled, made: BenchFacts['made']): Caution[] | undefined {
  const facts = benchFacts(settled, made)
  const all: Caution[] = []
  for (const id of names) {
    const here = triggers[id](facts)
    if (here) all.push({id, here})
  }
  for (const [i, {value}] of (settled.values.cautions ?? []).entries())
    all.push({id: `own-${i + 1}`, does: value})
  return all.length > 0 ? all : undefined
}
