import type {BlockContent} from 'mdast'
import {cutDiagram} from '../../drawings/cut-diagram.ts'
import {unitWords} from '../../drawings/words.ts'
import {pageSvg} from '../../drawings/writers/page-svg.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Cuts, SawnPieceShape} from '../../plan/shape/stock.ts'
import {figure, inWords, note, number, paragraph, steps, subHeading} from '../kit.ts'
import {alikePieces} from './alike-pieces.ts'
import {pieceSteps} from './piece-steps.ts'

/** So many drawings a page; more ways of cutting are told in words alone. */
const mostDrawn = 12

/** Show every piece with its cuts, in the order to make them; pieces cut alike are shown once. */
export function cutPieces(cuts: Cuts, plan: Plan): BlockContent[] {
  const names = new Map(cuts.parts.map(({id, name}) => [id, name]))
  const parts = new Map(cuts.parts.map((part) => [part.id, part]))
  return alikePieces(cuts)
    .flatMap((pieces, at) => {
      const [piece] = pieces
      const numbers = new Map(
        piece!.strips.flatMap(({cuts: own}) => own).map(({partId}, i) => [partId, i + 1]),
      )
      return [
        subHeading(`${piece!.id}, ${piece!.wood}`),
        ...(pieces.length > 1
          ? [paragraph(`Cut ${number(pieces.length, 0)} pieces like this: ${someOf(pieces)}.`)]
          : []),
        ...(at < mostDrawn ? [drawn(piece!, {plan, names, numbers}, at)] : []),
        steps(pieceSteps(piece!, parts, plan)),
      ]
    })
    .concat(
      cuts.pieces.length > 0
        ? [note('Small parts stay on their strip, where it can be held, until everything else is done.')]
        : [],
    )
}

function someOf(pieces: readonly SawnPieceShape[]): string {
  const ids = pieces.map(({id}) => id)
  return ids.length > 8 ? `${ids[0]} to ${ids.at(-1)}` : inWords(ids)
}

function drawn(
  piece: SawnPieceShape,
  {
    plan,
    names,
    numbers,
  }: {plan: Plan; names: ReadonlyMap<string, string>; numbers: ReadonlyMap<string, number>},
  at: number,
): BlockContent {
  const drawing = cutDiagram(piece, {plan, names, numbers})
  return figure(pageSvg(drawing, `cuts-${at + 1}`), {
    alt: drawing.says,
    caption: [`${piece.id} from above, measured from its upper end; ${unitWords(plan)}.`],
  })
}
