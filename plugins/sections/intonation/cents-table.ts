import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {figures, fractions, number, source, table} from '../kit.ts'

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
