import type {BlockContent} from 'mdast'
import {centsPlot} from '../drawings/plots/cents-plot.ts'
import type {Plan} from '../plan/plan.ts'
import {inWords, number} from '../words/quantities.ts'
import {figure, figures, type Inline, source} from './kit.ts'
import {table} from './kit-table.ts'
import {fractions, lengthAlone} from './measures.ts'

/** Plot the cents over the lines, as drawn and with each string set back; its table follows it. */
export function centsPlotted({intonation = [], scale, bridge}: Plan): BlockContent[] {
  const {lines = [], noticeableCents} = scale ?? {}
  if (lines.length < 2 || noticeableCents === undefined) return []
  const worst = (bridge?.setbacks ?? []).map(
    ({name, plainWorstCents, worstCents}) =>
      `${name} from ${number(plainWorstCents, 1)} to ${number(worstCents, 1)}`,
  )
  const says = `Setting the saddle back brings the furthest of the first twelve lines, in cents, ${inWords(worst)}.`
  const strings = intonation.map(({name, plainCents, compensatedCents}) => ({
    name,
    beforeCents: plainCents,
    afterCents: compensatedCents,
  }))
  return [
    figure(
      centsPlot(strings, {
        id: 'cents-plot',
        says,
        lines,
        noticeableCents,
        before: 'saddle as drawn',
        after: 'saddle set back',
      }),
      {
        alt: says,
        caption: [
          'Cents off at each line, each at its place along the neck; within the band ears notice nothing.',
        ],
      },
    ),
  ]
}

const model =
  'full model of Anderson and Beausoleil, Classical guitar intonation and compensation, J. Acoust. Soc. Am. 156, 683 (2024), string pinned at the saddle and clamped at nut and fret'

/** Fold away what is left over with saddle and nut together and with straight saddles, and where the model comes from. */
export function saddleFigures(plan: Plan): BlockContent[] {
  const {setbacks = [], slantedSaddle, squareSaddle} = plan.bridge ?? {}
  return [
    figures('Figures: saddle and nut together, straight saddles', [
      table({
        caption:
          'What each way of placing the strings’ ends leaves over, root mean square of cents over the first twelve lines',
        columns: [
          {head: 'String'},
          {head: 'As drawn', align: 'right'},
          {head: 'Saddle alone', align: 'right'},
          {head: 'Saddle with nut', align: 'right'},
          {head: 'Nut to the frets then', align: 'right'},
          {head: 'Both', align: 'right'},
          ...(slantedSaddle ? [{head: 'Straight, slanted', align: 'right' as const}] : []),
          ...(squareSaddle ? [{head: 'Straight, square', align: 'right' as const}] : []),
        ],
        rows: setbacks.map(({name, plainRmsCents, rmsCents, together}, at) => [
          name,
          number(plainRmsCents, 2),
          number(rmsCents, 2),
          lengthAlone(together.saddleMm, {units: 'mm', rulerMm: 0.01}),
          towards(together.nutMm),
          number(together.rmsCents, 2),
          ...[slantedSaddle, squareSaddle].flatMap((saddle) => {
            const one = saddle?.strings[at]
            return one ? [number(one.rmsCents, 2)] : []
          }),
        ]),
      }),
      source(`${model}; twelve lines from the nut, half frets counted, or all where there are fewer.`),
    ]),
  ]
}

/** Say how far a nut moves, and which way. */
function towards(mm: number): Inline[] {
  const by = lengthAlone(Math.abs(mm), {units: 'mm', rulerMm: 0.01})
  return mm === 0 ? [by] : [by, mm < 0 ? ' nearer' : ' further']
}

/** Fold away the cents at every line, as drawn and set back, string by string. */
export function centsTable({intonation = [], scale}: Plan): BlockContent[] {
  const signed = (value: number | undefined) =>
    value === undefined ? '' : `${value > 0.05 ? '+' : ''}${number(value, 1)}`
  return [
    figures('Figures: cents at every line', [
      table({
        caption: 'Cents off at every line, as drawn and with the saddle set back',
        columns: [
          {head: 'Line'},
          ...intonation.flatMap(({name}) => [
            {head: `${name} as drawn`, align: 'right' as const},
            {head: `${name} set back`, align: 'right' as const},
          ]),
        ],
        rows: (scale?.lines ?? []).map(({label}, at) => [
          fractions(label),
          ...intonation.flatMap(({plainCents, compensatedCents}) => [
            signed(plainCents[at]),
            signed(compensatedCents[at]),
          ]),
        ]),
      }),
      source(
        'a blind hearing of a straight saddle against perfect intonation by 32 players and makers told no difference (R. M. Mottola, Blind Listening Evaluation of Steel String Acoustic Guitar Compensation Strategies).',
      ),
    ]),
  ]
}
