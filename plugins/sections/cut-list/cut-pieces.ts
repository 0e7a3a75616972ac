import type {BlockContent} from 'mdast'
import {cutDiagram} from '../../drawings/cut-diagram.ts'
import {unitWords} from '../../drawings/words.ts'
import {pageSvg} from '../../drawings/writers/svg.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import type {Cuts, Part, SawnPieceShape} from '../../plan/shape/stock.ts'
import {figure, inWords, note, number, paragraph, steps, subHeading} from '../kit.ts'
import {alikePieces} from './alike-pieces.ts'
import {pieceSteps} from './piece-steps.ts'
import {plainName} from './plain-name.ts'

/** So many drawings a page; more ways of cutting are told in words alone, and after so many not at all. */
const mostDrawn = 12
const mostTold = 60

/** Show every piece with its cuts, in the order to make them; pieces cut alike are shown once. */
export function cutPieces(cuts: Cuts, plan: Plan): BlockContent[] {
  const alike = alikePieces(cuts)
  const rest = alike.slice(mostTold).flat().length
  return [
    ...alike.slice(0, mostTold).flatMap((pieces, at) => cutAlike(pieces, cuts, plan, at)),
    ...(rest > 0
      ? [
          paragraph(
            `${number(rest, 0)} more pieces are cut in other ways; the plan of this page lists them all.`,
          ),
        ]
      : []),
    ...(cuts.pieces.length > 0 && cuts.parts.some(({isSmall}) => isSmall)
      ? [note('Small parts stay on their strip, where it can be held, until everything else is done.')]
      : []),
  ]
}

function cutAlike(pieces: readonly SawnPieceShape[], cuts: Cuts, plan: Plan, at: number): BlockContent[] {
  const piece = pieces[0]!
  const several = pieces.length > 1
  const parts = new Map(
    cuts.parts.map((part) => [part.id, several ? {...part, name: plainName(part.name)} : part]),
  )
  const ids = pieces.map(({id}) => id)
  const all =
    ids.length > 8 ? `${inWords([...ids.slice(0, 3), `${number(ids.length - 3, 0)} more`])}` : inWords(ids)
  return [
    subHeading(`${piece.id}, ${piece.wood}`),
    ...(several ? [paragraph(`Cut ${number(pieces.length, 0)} pieces like this: ${all}.`)] : []),
    ...(at < mostDrawn ? [drawn(piece, parts, plan, at)] : []),
    steps(pieceSteps(piece, parts, plan)),
  ]
}

function drawn(
  piece: SawnPieceShape,
  parts: ReadonlyMap<string, Part>,
  plan: Plan,
  at: number,
): BlockContent {
  const drawing = cutDiagram(piece, parts, plan)
  return figure(pageSvg(drawing, `cuts-${at + 1}`), {
    alt: drawing.says,
    caption: [`${piece.id} from above, measured from its upper end; ${unitWords(plan)}.`],
  })
}
