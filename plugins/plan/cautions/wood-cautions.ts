import {ownAt} from '../../build-file/path.ts'
import type {HazardName} from '../../tables/hazards.ts'
import {oilyWoods, type WoodHazardRow, woodHazards} from '../../tables/wood-hazards.ts'
import type {BenchFacts, Trigger, WoodHere, WoodUsed} from './bench-facts.ts'

/** Cautions that follow from the woods: their dust, and their trade. */
export const woodCautions = {
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
