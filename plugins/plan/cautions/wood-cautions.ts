import {tradeNotes} from '../../tables/trade-notes.ts'
import {type WoodHazardRow, woodHazards} from '../../tables/wood-hazards.ts'
import {type BenchFacts, firstFew, type Trigger, type WoodUsed} from './bench-facts.ts'

/** Cautions that follow from the woods: their dust, and their trade. Each names the wood and where it is. */
export const woodCautions = {
  'redcedar-dust': harmful(({own}) => own === 'redcedar'),
  'rosewood-dust': harmful(({own}) => own === 'rosewood'),
  'cancer-dust': harmful(
    ({cancer}) => cancer !== undefined,
    ({cancer}) => ` (${cancer})`,
  ),
  'sensitizer-dust': harmful(
    ({own}) => own === undefined,
    ({harms}) => ` (${harms})`,
  ),
  'wood-dust': ({values, woods}) => {
    if (woods.length > 0) return `Sawn and sanded here: ${firstFew(woods.map(({name}) => name))}.`
    return values.neck && 'A neck is sawn and sanded; its wood is not named yet.'
  },
  'sheet-dust': ({woods}) =>
    sentence(woods.filter(({isSheet}) => isSheet).map(({name, where}) => `the ${where} is ${name}`)),
  'protected-wood': ({woods}) =>
    sentence(
      woods.flatMap((wood) =>
        wood.trade.map(({row, listing}) => {
          const note = tradeNotes.find((one) => listing.includes(one.listing))
          return `${nameOf(wood, row)}: ${listing}${note ? `; ${note.means}` : ''}`
        }),
      ),
    ),
} satisfies Record<string, Trigger>

/** Name each wood whose dust does what is asked, with where it is. */
function harmful(
  does: (row: WoodHazardRow) => boolean,
  says: (row: WoodHazardRow) => string = () => '',
): Trigger {
  return ({woods}: BenchFacts) =>
    sentence(
      woods.flatMap((wood) => {
        const row = wood.rows.find((one) => woodHazards[one] && does(woodHazards[one]))
        return row === undefined ? [] : [`the ${wood.where}: ${nameOf(wood, row)}${says(woodHazards[row]!)}`]
      }),
    )
}

function nameOf({name, isLoose}: WoodUsed, row: string): string {
  return isLoose ? `${name}, which may be ${row}` : name
}

function sentence(clauses: readonly string[]): string | undefined {
  const all = clauses.join('; ')
  return all === '' ? undefined : `${all.charAt(0).toUpperCase()}${all.slice(1)}.`
}
