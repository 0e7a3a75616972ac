import type {Highs} from 'highs'
import type {Saw, StockPart, StockPiece} from '../../plugins/cut-stock/cut-stock.ts'

const volume = (it: StockPart | StockPiece) => (it.lengthMm * it.widthMm * it.thicknessMm) / 1000

/**
 * Solve the cutting by a general integer program, part by part: a strip is named by its widest part, and every part
 * goes into one strip of one piece or none. First the most volume placed, then the least volume of pieces, in cm³.
 */
export function twoStageOracle(
  highs: Highs,
  parts: readonly StockPart[],
  pieces: readonly StockPiece[],
  {kerfMm, trimMm}: Saw,
  options: {time_limit?: number} = {},
): {placed: number; cut: number; isOptimal: boolean} {
  const byWidth = [...parts].sort((a, b) => b.widthMm - a.widthMm)
  const lengthOf = ({lengthMm, clearMm = [0, lengthMm]}: StockPiece) =>
    clearMm[1] - clearMm[0] - 2 * trimMm + kerfMm
  const fits = (part: StockPart, piece: StockPiece) =>
    (part.wood === 'any' || part.wood === piece.wood) &&
    part.thicknessMm <= piece.thicknessMm &&
    part.widthMm <= piece.widthMm &&
    part.lengthMm + kerfMm <= lengthOf(piece) + 1e-9
  const x = (i: number, j: number, p: number) => `x${i}_${j}_${p}`
  const rows: string[] = []
  const binary: string[] = pieces.map((_, p) => `u${p}`)
  const placed: string[] = []
  byWidth.forEach((part, i) => {
    const places = pieces.flatMap((piece, p) =>
      fits(part, piece)
        ? byWidth.slice(0, i + 1).flatMap((head, j) => (fits(head, piece) ? [x(i, j, p)] : []))
        : [],
    )
    if (places.length > 0) rows.push(`${places.join(' + ')} <= 1`)
    binary.push(...places)
    placed.push(...places.map((name) => `${volume(part).toFixed(6)} ${name}`))
  })
  pieces.forEach((piece, p) => {
    const widths: string[] = []
    byWidth.forEach((head, j) => {
      if (!fits(head, piece)) return
      const more = byWidth.flatMap((part, i) =>
        i > j && fits(part, piece) ? [`${(part.lengthMm + kerfMm).toFixed(6)} ${x(i, j, p)}`] : [],
      )
      const room = lengthOf(piece) - head.lengthMm - kerfMm
      if (more.length > 0) rows.push(`${more.join(' + ')} - ${room.toFixed(6)} ${x(j, j, p)} <= 0`)
      widths.push(`${(head.widthMm + kerfMm).toFixed(6)} ${x(j, j, p)}`)
    })
    if (widths.length > 0)
      rows.push(`${widths.join(' + ')} - ${(piece.widthMm + kerfMm).toFixed(6)} u${p} <= 0`)
  })
  const objective = placed.length > 0 ? placed.join(' + ') : '0 u0'
  const cut = pieces.map((piece, p) => `${volume(piece).toFixed(6)} u${p}`).join(' + ')
  const solve = (goal: string, more: readonly string[]) => {
    const named = [...rows, ...more].map((row, r) => `r${r}: ${row}`).join('\n')
    const model = `${goal}\nSubject To\n${named}\nBinary\n${binary.join('\n')}\nEnd`
    return highs.solve(model, {mip_rel_gap: 0, mip_abs_gap: 1e-6, ...options})
  }
  const most = solve(`Maximize\nobj: ${objective}`, ['u0 <= 1'])
  const enough = (most.ObjectiveValue * (1 - 1e-9) - 1e-6).toFixed(6)
  const least = solve(`Minimize\nobj: ${cut}`, [`${objective} >= ${enough}`])
  return {
    placed: most.ObjectiveValue,
    cut: least.ObjectiveValue,
    isOptimal: most.Status === 'Optimal' && least.Status === 'Optimal',
  }
}
