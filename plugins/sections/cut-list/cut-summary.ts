import type {BlockContent} from 'mdast'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Cuts} from '../../plan/shape/stock.ts'
import {length, number, paragraph, percent} from '../kit.ts'

/** Say how many pieces are cut, how sure it is that no plan does better, and what the saw takes. */
export function cutSummary(cuts: Cuts, plan: Plan): BlockContent[] {
  const {parts, unplaced, used, wasteFraction, kerfMm, trimMm} = cuts
  const placed = parts.length - unplaced.length
  const takes = [
    ...(kerfMm > 0 ? [['A saw cut takes ', length(kerfMm, plan), '. ']] : []),
    ...(trimMm > 0 ? [['Squaring an end takes ', length(trimMm, plan), '.']] : []),
  ]
  const saw = takes.flat()
  if (!cuts.hasStock)
    return [
      paragraph(
        `${number(parts.length, 0)} ${parts.length === 1 ? 'part' : 'parts'} to cut, and no piece listed yet to cut them from. `,
        ...saw,
      ),
    ]
  if (used === 0) return [paragraph('No piece at hand gives any of these parts. ', ...saw)]
  const pieces = used === 1 ? 'One piece gives' : `${number(used, 0)} pieces give`
  const all =
    unplaced.length > 0
      ? `${placed} of ${parts.length} parts`
      : parts.length === 1
        ? 'the one part'
        : `all ${parts.length} parts`
  return [
    paragraph(`${pieces} ${all}; ${percent(wasteFraction)} of the wood is waste. `, sure(cuts), ' ', ...saw),
  ]
}

function sure({proven, gapFraction, unplaced, used, bound}: Cuts): string {
  if (proven)
    return unplaced.length > 0
      ? 'No plan gets more out of these pieces, nor does it with less wood.'
      : 'No plan does it with less wood.'
  if (gapFraction > 0)
    return `A better plan may exist: at best it would save ${number(gapFraction * 100, 1)} % of the wood${bound < used ? ` and cut ${bound} pieces` : ''}.`
  return 'A better plan may exist; the search was stopped before it could tell.'
}
