import type {HazardName} from '../../tables/hazards.ts'
import {type WoodHazardRow, woodHazards} from '../../tables/wood-hazards.ts'
import type {BenchFacts, Trigger, WoodHere} from './bench-facts.ts'

/** Cautions that follow from the woods: their dust, and their trade. */
export const woodCautions = {
  'redcedar-dust': harmful(({own}) => own === 'redcedar'),
  'rosewood-dust': harmful(({own}) => own === 'rosewood'),
  'cancer-dust': harmful(({cancer}) => cancer !== undefined),
  'sensitizer-dust': harmful(({own}) => own === undefined),
  'wood-dust': ({values, woods}) =>
    woods.length > 0 || values.neck ? {names: woods.map(({name}) => name)} : undefined,
  'sheet-dust': ({woods}) => {
    const sheets = woods.filter(({isSheet}) => isSheet).map(({name, where}) => ({name, where}))
    return sheets.length > 0 ? {sheets} : undefined
  },
  'protected-wood': ({woods}) => {
    const listed = woods.flatMap(({name, where, isLoose, trade}) =>
      trade.map(({row, listing}) => ({name, where, isLoose, row, listing})),
    )
    return listed.length > 0 ? {woods: listed} : undefined
  },
} satisfies {[Name in HazardName]?: Trigger<Name>}

/** Find each wood whose dust does what is asked. */
function harmful(does: (row: WoodHazardRow) => boolean) {
  return ({woods}: BenchFacts): {woods: WoodHere[]} | undefined => {
    const found = woods.flatMap(({name, where, isLoose, rows}) => {
      const row = rows.find((one) => woodHazards[one] && does(woodHazards[one]))
      return row === undefined ? [] : [{name, where, isLoose, row}]
    })
    return found.length > 0 ? {woods: found} : undefined
  }
}
