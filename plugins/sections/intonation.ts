import {centsPlotted} from './intonation/cents-plotted.ts'
import {centsTable} from './intonation/cents-table.ts'
import {noSetback} from './intonation/no-setback.ts'
import {saddleDoubts} from './intonation/saddle-doubts.ts'
import {saddleFigures} from './intonation/saddle-figures.ts'
import {saddleInWords} from './intonation/saddle-in-words.ts'
import {saddleTable} from './intonation/saddle-table.ts'
import {note, paragraph} from './kit.ts'
import type {Section, SectionInput} from './section.ts'

/** Where the saddle goes so that fretted notes are in tune, and what is left over; on a fretless neck, why nowhere else. */
export const intonation: Section = {
  name: 'intonation',
  title: 'Intonation',
  needs: (input) => (input.plan.intonation || isFretless(input) ? [] : missing(input)),
  content: (input) => {
    const {plan, build} = input
    if (!plan.intonation) return isFretless(input) ? noSetback(plan).map((said) => paragraph(...said)) : []
    return [
      ...saddleInWords(plan).map((said) => paragraph(...said)),
      ...saddleTable(plan),
      ...saddleDoubts(plan, build.values.frets?.crown !== undefined).map((said) => note(...said)),
      ...centsPlotted(plan),
      ...saddleFigures(plan),
      ...centsTable(plan),
    ]
  },
}

const isFretless = ({plan: {scale}}: SectionInput) => scale?.fretted === false && scale.lengthMm !== undefined

function missing({plan: {scale, strings, action}, build: {values}}: SectionInput): string[] {
  if (scale?.lengthMm === undefined) return ['scale.length']
  if (!scale.lines?.length) return ['scale.lines']
  if (!strings) return ['strings']
  if (!action) return [values.bridge?.height ? 'neck.above-top' : 'bridge.height']
  const at = strings.findIndex(
    ({stiffnessMpa, tensionN}) => stiffnessMpa === undefined || tensionN === undefined,
  )
  return [`strings.${at + 1}.${values.strings?.[at]?.gauge ? 'material' : 'gauge'}`]
}
