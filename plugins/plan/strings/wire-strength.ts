import {musicWire, musicWireFit} from '../../tables/music-wire.ts'

const mpaPerKsi = 6.894757

/**
 * Give the least tensile strength (MPa) of music wire of this diameter (mm): the standard's table, in a straight
 * line between its rows; outside it the handbook's fit A/d^m, which runs 1 to 2.5 % above the least.
 * Source: as in the table of music wire.
 */
export function wireStrengthMpa(diameterMm: number): number {
  const diameterIn = diameterMm / 25.4
  // The last bit of a converted inch must not throw a tabled diameter out of the table.
  const upper = musicWire.findIndex((row) => diameterIn <= row.diameterIn + 1e-9)
  const above = musicWire[upper]
  const below = musicWire[Math.max(0, upper - 1)]
  if (!above || !below || diameterIn < musicWire[0]!.diameterIn - 1e-9)
    return musicWireFit.aMpa / diameterMm ** musicWireFit.exponent
  const part = above === below ? 0 : (diameterIn - below.diameterIn) / (above.diameterIn - below.diameterIn)
  return (below.minKsi + part * (above.minKsi - below.minKsi)) * mpaPerKsi
}
