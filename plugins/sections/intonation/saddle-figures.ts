import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import {figures, lengthAlone, number, source, table} from '../kit.ts'

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
          {head: 'Nut with saddle', align: 'right'},
          {head: 'Both', align: 'right'},
          ...(slantedSaddle ? [{head: 'Straight, slanted', align: 'right' as const}] : []),
          ...(squareSaddle ? [{head: 'Straight, square', align: 'right' as const}] : []),
        ],
        rows: setbacks.map(({name, plainRmsCents, rmsCents, together}, at) => [
          name,
          number(plainRmsCents, 2),
          number(rmsCents, 2),
          lengthAlone(together.saddleMm, {units: 'mm', rulerMm: 0.01}),
          lengthAlone(together.nutMm, {units: 'mm', rulerMm: 0.01}),
          number(together.rmsCents, 2),
          ...[slantedSaddle, squareSaddle].flatMap((saddle) => {
            const one = saddle?.strings[at]
            return one ? [number(one.rmsCents, 2)] : []
          }),
        ]),
        note: 'A nut below 0 moves towards the frets.',
      }),
      source(`${model}; twelve lines from the nut, half frets counted, or all where there are fewer.`),
    ]),
  ]
}
