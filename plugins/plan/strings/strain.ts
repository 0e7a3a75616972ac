import type {Wire} from './string-wire.ts'
import {wireStrengthMpa} from './wire-strength.ts'

export interface Strain {
  stressMpa?: number
  strengthMpa?: number
  breakFraction?: number
  breakKnown: boolean
}

/**
 * Give the stress (MPa) that a pull (N) puts on a string, or on its core where it is wound, and how near that comes to
 * its strength: known of plain steel and of a steel core that the file gives, else no verdict.
 */
export function strainOf({diameterMm, wound, material, coreMm, coreKnown}: Wire, tensionN: number): Strain {
  const isSteel = material === 'steel'
  const known = isSteel && (!wound || coreKnown)
  const carriesMm = !wound ? diameterMm : isSteel || coreKnown ? coreMm : undefined
  if (carriesMm === undefined) return {breakKnown: false}
  const stressMpa = tensionN / ((Math.PI / 4) * carriesMm ** 2)
  if (!known) return {stressMpa, breakKnown: false}
  const strengthMpa = wireStrengthMpa(carriesMm)
  return {stressMpa, strengthMpa, breakFraction: stressMpa / strengthMpa, breakKnown: true}
}
