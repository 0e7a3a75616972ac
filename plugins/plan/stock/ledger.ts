import type {CutPiece, Cuts} from './cut-list.ts'

/** What became of a piece that was cut, as areas of its face (mm²); together they are the whole piece. */
export interface Shares {
  parts: number
  /** Offcuts that go back on the rack. */
  kept: number
  /** What the saw turned to dust. */
  saw: number
  /** Ends that are squared off, and rests too small to keep. */
  waste: number
}

/**
 * Tell what became of a piece (mm²): a rip takes a kerf along the squared length, a crosscut one across its strip,
 * none where the cut lies at the piece's own edge.
 */
export function sharesOf(
  {lengthMm, widthMm, fromMm, toMm, strips, offcuts}: CutPiece,
  {kerfMm}: Pick<Cuts, 'kerfMm'>,
): Shares {
  const cuts = strips.flatMap((strip) => strip.cuts)
  const parts = cuts.reduce((sum, cut) => sum + cut.lengthMm * cut.widthMm, 0)
  const kept = offcuts.reduce((sum, off) => sum + off.lengthMm * off.widthMm, 0)
  const sawnBefore = (endMm: number, edgeMm: number) => Math.max(0, Math.min(kerfMm, edgeMm - endMm))
  const saw = strips.reduce((sum, strip) => {
    const rip = sawnBefore(strip.acrossMm + strip.widthMm, widthMm) * (toMm - fromMm)
    const across = strip.cuts.reduce((all, cut) => all + sawnBefore(cut.atMm + cut.lengthMm, toMm), 0)
    return sum + rip + across * strip.widthMm
  }, 0)
  return {parts, kept, saw, waste: lengthMm * widthMm - parts - kept - saw}
}
