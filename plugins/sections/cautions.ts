import type {BlockContent, List} from 'mdast'
import type {Caution} from '../plan/cautions/cautions.ts'
import {cautionSigns, comesFirst, dustLimits, noiseLimits} from '../tables/hazards.ts'
import {type CautionWords, cautionInWords} from '../words/cautions.ts'
import {number} from '../words/quantities.ts'
import {figures, fold, type Inline, list, note, paragraph, strong} from './kit.ts'
import {table} from './kit-table.ts'
import {fractions} from './measures.ts'
import type {Section} from './section.ts'

/** What can happen while this one is made, the worst first: what to do, why it is said here, and its source. */
export const cautions: Section = {
  name: 'cautions',
  title: 'Cautions',
  quiet: true,
  needs: ({plan}) => (plan.cautions?.length ? [] : ['box', 'neck']),
  content: ({plan}) => {
    const all = plan.cautions ?? []
    return [
      paragraph(...cautionsInWords(all)),
      ...fold('All of them, with sources', [
        paragraph(comesFirst),
        apart(list(all.map((one) => ({blocks: worded(cautionInWords(one, plan))})))),
        figures('How much noise, and how much dust', [noiseTable(), dustTable()]),
      ]),
    ]
  },
}

const signs: Readonly<Record<string, {name: string} | undefined>> = cautionSigns

/** Count the cautions, and name the worst, which come first. */
function cautionsInWords(all: readonly Caution[]): Inline[] {
  const worst = all.slice(0, 4).flatMap(({id}) => signs[id]?.name ?? [])
  return [
    strong(`${all.length} on this build`),
    ', each beside its step on the bench sheet',
    ...(worst.length > 0 ? [`. The worst: ${worst.join(', ')}`] : []),
    '.',
  ]
}

/** Keep the paragraphs of each item, so that the quiet one stays quiet. */
function apart(items: List): List {
  return {...items, children: items.children.map((item) => ({...item, spread: true}))}
}

function worded({hazard, does, because, source}: CautionWords): BlockContent[] {
  return [
    paragraph(strong(hazard), ' ', ...fractions(does)),
    note('Here: ', ...fractions(because), ` Source: ${source}.`),
  ]
}

function noiseTable() {
  return table({
    caption: 'How long a day may last at each level of noise',
    columns: [
      {head: 'Noise, dBA', align: 'right'},
      {head: 'Hours a day, permitted', align: 'right'},
      {head: 'Minutes a day, recommended', align: 'right'},
    ],
    rows: noiseLimits.map(({dBA, permittedH, recommendedMin}) => [
      String(dBA),
      number(permittedH, 2),
      number(recommendedMin, 1),
    ]),
    note: 'Permitted to employers: 29 CFR 1910.95, Table G-16, 5 dB halving the time. Recommended: NIOSH 98-126, 85 dBA for 8 hours and 3 dB halving it, from memory. A meter in a telephone is a guess; if you have to raise your voice, it is too loud.',
  })
}

function dustTable() {
  return table({
    caption: 'The most dust in the air over a working day, mg/m³',
    columns: [{head: 'Dust'}, {head: 'mg/m³', align: 'right'}, {head: 'By'}, {head: 'Source'}],
    rows: dustLimits.map(({what, mgM3, by, source}) => [what, number(mgM3, 1), by, source]),
  })
}
