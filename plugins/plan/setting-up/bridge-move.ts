/**
 * Say how far the bridge has to move (mm; positive: away from the nut) for a line that sounds so many cents sharp.
 * A line at ratio r stops L/r, so moving the bridge by d makes it flat by (1200/ln 2)·(r − 1)·d/L; at the octave,
 * where r − 1 is 1, that is L·cents/1731. Source: derivative of cents = 1200·log2 of a ratio of lengths.
 */
export function bridgeMoveMm(cents: number, lengthMm: number, lineCents = 1200): number {
  const ratio = 2 ** (lineCents / 1200)
  return (lengthMm * cents * Math.LN2) / (1200 * (ratio - 1))
}
