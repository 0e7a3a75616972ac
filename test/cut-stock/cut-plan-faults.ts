import type {CutPlan, Saw, StockPart, StockPiece} from '../../plugins/cut-stock/cut-stock.ts'

type Inputs = readonly [readonly StockPart[], readonly StockPiece[], Saw]

/** Look through a cut plan as a foreman would, and say what could not be sawn. Knows nothing of how it was made. */
export function cutPlanFaults(plan: CutPlan, ...[parts, pieces, {kerfMm, trimMm}]: Inputs): string[] {
  const found: string[] = []
  const say = (isBad: boolean, what: string) => isBad && found.push(what)
  const over = (a: number, b: number) => a > b + 1e-5
  const seen = [...plan.unplaced]
  say(new Set(plan.pieces.map(({piece}) => piece)).size < plan.pieces.length, 'a piece cut twice')
  for (const {piece, strips, offcuts} of plan.pieces) {
    const {lengthMm, clearMm: [from, to] = [0, lengthMm]} = piece
    say(!pieces.includes(piece), 'no such piece')
    const areas = offcuts.map((one) => [one.acrossMm, one.atMm, one.widthMm, one.lengthMm] as const)
    for (const {acrossMm, widthMm, cuts} of strips)
      for (const {partId, atMm} of cuts) {
        const part = parts.find(({id}) => id === partId)!
        seen.push(partId)
        say(part.wood !== 'any' && part.wood !== piece.wood, `${partId}: another wood`)
        say(over(part.thicknessMm, piece.thicknessMm), `${partId}: too thick for its piece`)
        say(over(part.widthMm, widthMm), `${partId}: too wide for its strip`)
        areas.push([acrossMm, atMm, widthMm, part.lengthMm])
      }
    areas.forEach(([x, y, w, l], i) => {
      say(over(0, x) || over(x + w, piece.widthMm), `${piece.id}: past an edge`)
      say(over(from + trimMm, y) || over(y + l, to - trimMm), `${piece.id}: past its clear, squared length`)
      for (const [x2, y2, w2, l2] of areas.slice(i + 1)) {
        const across = over(x + w + kerfMm, x2) && over(x2 + w2 + kerfMm, x)
        const along = over(y + l + kerfMm, y2) && over(y2 + l2 + kerfMm, y)
        say(across && along, `${piece.id}: less than a kerf between two`)
      }
    })
  }
  const all = parts.map(({id}) => id)
  say(seen.sort().join() !== all.sort().join(), 'not each part once')
  return found
}
