import {coreSpread} from '../../tables/strings.ts'
import {type StringFacts, type StringPlace, stringFacts} from './string-facts.ts'
import type {StringValues} from './string-wire.ts'

/**
 * Say how much pull (N) and stress (MPa) hang on a core that is assumed: their least and most with a core that is
 * thinner and thicker by a twentieth of the gauge. Undefined where the core is known, or the packet tells the mass.
 */
export function coreDoubt(values: StringValues, place: StringPlace): StringFacts['coreDoubt'] {
  const {gauge, core, mass, tension} = values
  if (!gauge?.wound || !core?.assumed || mass || tension || place.lengthMm === undefined) return undefined
  const ends = [-1, 1].map((side) =>
    stringFacts({...values, core: {...core, mm: core.mm + side * coreSpread * gauge.mm}}, place),
  )
  const tensionsN = ends.flatMap(({tensionN}) => tensionN ?? [])
  const stressesMpa = ends.flatMap(({stressMpa}) => stressMpa ?? [])
  if (tensionsN.length < 2 || stressesMpa.length < 2) return undefined
  return {
    tensionN: [Math.min(...tensionsN), Math.max(...tensionsN)],
    stressMpa: [Math.min(...stressesMpa), Math.max(...stressesMpa)],
  }
}
