import type {Element} from 'hast'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import type {Plan} from '../../plan/plan.ts'
import {partName} from '../../words/cut-list.ts'
import {apartWords} from '../../words/drawings/pictures.ts'
import {moved} from '../solids/solid.ts'
import type {Vec} from '../solids/space.ts'
import {blockPieces, woodsBeside} from './box-bodies.ts'
import {bridgePiece, hardwarePieces} from './hardware.ts'
import {picture} from './picture.ts'
import {type Note, type Piece, scene} from './scene.ts'
import {type Moment, momentsOf, pieceReach, workedBox, workedNeck} from './worked.ts'

/** Draw the finished instrument pulled apart, each part named and numbered as in the cut list; undefined without parts. */
export function apartPicture(plan: Plan, values: BuildValues): Element | undefined {
  const last = momentsOf(plan, woodsBeside(values)).at(-1)
  if (!last) return undefined
  const levels = levelsOf(last).filter((level) => level.length > 0)
  const pieces = stacked(levels)
  if (pieces.length === 0) return undefined
  const notes = named(pieces, plan)
  const told = apartWords(
    plan,
    notes.map(({text}) => text),
  )
  return picture(scene(pieces, {notes, areNotesBeside: true}), {id: 'picture-apart', ...told})
}

/** What lies over what, from below: box, blocks, top and neck as they are joined, what stands on them. */
function levelsOf(moment: Moment): Piece[][] {
  const box = workedBox(moment)
  const top = box.filter(({of}) => of === 'box.top')
  const body = box.filter(({of}) => of !== 'box.top')
  const neck = workedNeck(moment)
  const height = (piece: Piece) => pieceReach(piece)[0][2]
  const stick = neck
    .filter(({of}) => of.startsWith('neck') || of === 'fingerboard')
    .sort((a, b) => height(a) - height(b))
  const layers = [...new Set(stick.map(({of}) => of))].map((name) => stick.filter(({of}) => of === name))
  const head = neck.filter(({of}) => of === 'head')
  const plate = neck.filter(({of}) => of === 'head.plate')
  const isThrough = moment.neck?.neck.joins === 'through'
  const blocks = moment.box ? blockPieces(moment.box) : []
  const neckLevels = [head, ...layers, plate]
  return [
    body,
    blocks,
    ...(isThrough ? [...neckLevels, top] : [top, ...neckLevels]),
    [...hardwarePieces(moment), ...bridgePiece(moment)],
  ]
}

/** Air between two levels (mm). */
const gapMm = 62

/** Lift each level clear of those below it. */
function stacked(levels: readonly (readonly Piece[])[]): Piece[] {
  let topMm: number | undefined
  return levels.flatMap((level) => {
    const low = Math.min(...level.map((piece) => pieceReach(piece)[0][2]))
    const high = Math.max(...level.map((piece) => pieceReach(piece)[1][2]))
    const lift = topMm === undefined ? 0 : Math.max(topMm + gapMm - low, 0)
    topMm = high + lift
    return level.map((piece) => ({...piece, solid: moved(piece.solid, [0, 0, lift])}))
  })
}

/** Number each part as the cut list does; what is bought or comes with the box has its name alone. */
function named(pieces: readonly Piece[], plan: Plan): Note[] {
  const parts = plan.cuts?.parts ?? []
  const seen = new Set<string>()
  return pieces.flatMap((piece): Note[] => {
    const of =
      piece.of.startsWith('box.') && !piece.of.includes('block') && piece.of !== 'box.top' ? 'box' : piece.of
    if (seen.has(of)) return []
    seen.add(of)
    const own = parts.flatMap((part, i) =>
      part.of === of ? [{number: i + 1, name: partName(part.called)}] : [],
    )
    const [first] = own
    const numbers = own.length > 1 ? `${first!.number} to ${own.at(-1)!.number}` : `${first?.number ?? ''}`
    const name = first?.name.replace(/, strip 1$/, ', strips') ?? bought[of] ?? of
    return [{at: tailOf(piece), text: first ? `${numbers} · ${name}` : name}]
  })
}

const bought: Readonly<Record<string, string>> = {
  box: 'box',
  'box.top': 'top',
  head: 'head',
  tuners: 'tuners',
  bridge: 'bridge',
}

const tailOf = (piece: Piece): Vec => {
  const [low, high] = pieceReach(piece)
  return [(low[0] + high[0]) / 2, high[1] - 2, (low[2] + high[2]) / 2]
}
