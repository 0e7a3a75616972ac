import type {BlockContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {fineBoth} from '../words/lengths.ts'
import {type Inline, paragraph} from './kit.ts'
import {table} from './kit-table.ts'
import {length, lengthAlone, measure} from './measures.ts'

/** Say how a round fingerboard is sanded and checked, and how nut, bridge and strings follow it. */
export function boardRadius(plan: Plan): BlockContent[] {
  const {boardRadius: round} = plan.neck ?? {}
  if (!round || round.checks.length === 0) return []
  const fine = (mm: number) => measure(...fineBoth(mm, plan, 3))
  const {radiusMm, checks, edgeMm, isNutStraight, strings = [], bridgeRadiusMm} = round
  const at = (stationMm: number): Inline[] =>
    stationMm > 0 ? [' at ', lengthAlone(stationMm, plan), ' from the nut'] : [' at the nut']
  const middle: Inline[] =
    bridgeRadiusMm === undefined
      ? []
      : [' Over the bridge they lie on a curve of ', length(bridgeRadiusMm, plan), ' radius.']
  return [
    paragraph(
      'The fingerboard’s face is round across the strings, ',
      length(radiusMm, plan),
      ' radius. Check it with a straightedge across its middle: each edge lies lower than that by ',
      ...checks.flatMap(({stationMm, sagittaMm}, i): Inline[] => [
        ...(i > 0 ? [', and by '] : []),
        fine(sagittaMm),
        ...at(stationMm),
      ]),
      '. The board keeps ',
      lengthAlone(edgeMm, plan, 'down'),
      ' at its edges. A gauge with its curve, at full size, is among the templates.',
    ),
    ...(strings.length > 1
      ? [
          paragraph(
            isNutStraight
              ? 'A straight rod at the nut does not follow it: the outer strings stand higher over the board there than the middle ones. A flat nut or a zero fret can be shaped to it.'
              : 'Nut and bridge follow it, so that every string stands as high over its own part of the board as the drawing says.',
            ...middle,
          ),
          table({
            caption:
              'How high each string stands: at the nut over the middle of the board, at the bridge over what that stands on',
            columns: [
              {head: 'String'},
              {head: 'At the nut', align: 'right'},
              {head: 'At the bridge', align: 'right'},
            ],
            rows: strings.map(({nutMm, bridgeMm}, i) => [
              plan.strings?.[i]?.name ?? `${i + 1}`,
              fine(isNutStraight ? (plan.nut?.heightMm ?? nutMm) : nutMm),
              fine(bridgeMm),
            ]),
          }),
        ]
      : []),
  ]
}
