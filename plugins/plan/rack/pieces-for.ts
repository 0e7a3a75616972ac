import type {Context, GonePiece} from '../part.ts'
import type {RackBuild} from './in-rack-order.ts'
import type {Shelf} from './shelf.ts'

/**
 * Give the pieces that stand on the rack on the day a build is started (any day for one without a date), and those of
 * its `take` that it cannot have, with why.
 */
export function piecesFor(
  {pieces, cut}: Shelf,
  {values: {started, take = []}}: RackBuild,
): Required<Omit<Context, 'journal'>> {
  const isThere = (bought: string | undefined) => !bought || !started || bought <= started.iso
  const asked = new Set(take.map(({value}) => value))
  const isAsked = (id: string) => asked.has(id) || asked.has(id.replace(/\.\d+$/, ''))
  const later = pieces.flatMap(({id, bought}): GonePiece[] =>
    bought && !isThere(bought) && isAsked(id) ? [{id, why: 'later', on: bought}] : [],
  )
  const gone = cut.flatMap(({id, by}): GonePiece[] => (isAsked(id) ? [{id, why: 'cut', by}] : []))
  return {
    pieces: pieces
      .filter(({bought}) => isThere(bought))
      .map(({id, wood, lengthMm, widthMm, thicknessMm, clearMm}) => ({
        id,
        wood,
        lengthMm,
        widthMm,
        thicknessMm,
        ...(clearMm && {clearMm}),
      })),
    gone: [...gone, ...later],
  }
}
