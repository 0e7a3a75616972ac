import {paragraph} from './kit.ts'
import type {Section, SectionInput} from './section.ts'
import {otherGauges} from './strings/other-gauges.ts'
import {otherTunings} from './strings/other-tunings.ts'
import {pullsInWords} from './strings/pulls-in-words.ts'
import {pullsPlotted} from './strings/pulls-plotted.ts'
import {stringFigures} from './strings/string-figures.ts'
import {toBuy} from './strings/to-buy.ts'

/** What strings to buy, how hard each pulls, what else would do, and what else they can be tuned to. */
export const strings: Section = {
  name: 'strings',
  title: 'Strings',
  needs: ({plan, build}) => (plan.strings ? [] : missing(build)),
  content: ({plan}) => [
    ...pullsInWords(plan).map((said) => paragraph(...said)),
    ...toBuy(plan),
    ...pullsPlotted(plan),
    ...otherGauges(plan),
    ...otherTunings(plan),
    ...stringFigures(plan),
  ],
}

function missing({values}: SectionInput['build']): string[] {
  const at = (values.strings ?? []).findIndex(({note}) => !note)
  return at < 0 ? ['strings'] : [`strings.${at + 1}.note`]
}
