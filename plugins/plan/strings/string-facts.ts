import type {StringPlan} from '../shape/strings.ts'
import {inharmonicityOf} from './inharmonicity.ts'
import {pullLimits, pullWord} from './pull-word.ts'
import {strainOf} from './strain.ts'
import {stretchMm} from './stretch.ts'
import {stringMass} from './string-mass.ts'
import {stringStiffness} from './string-stiffness.ts'
import {stringTensionN} from './string-tension.ts'
import {type StringValues, stringWire} from './string-wire.ts'

/** Where a string is put: its speaking length in mm, its pitch in Hz, how it is played. */
export interface StringPlace {
  frequencyHz: number
  lengthMm?: number | undefined
  play?: string | undefined
}

export type StringFacts = Omit<StringPlan, 'name' | 'note' | 'course' | 'alternatives'>

/**
 * Compute what a settled string does at its pitch and length: mass per length (kg/m), pull (N), stress (MPa, of the
 * core where wound), part of its strength, stretch over the length (mm), inharmonicity, pull in a word.
 * What is not known is absent: nothing of pull without a length, no verdict on breaking with an assumed core.
 */
export function stringFacts(values: StringValues, {frequencyHz, lengthMm, play}: StringPlace): StringFacts {
  const wire = stringWire(values)
  const mass = stringMass(values, wire)
  const facts: StringFacts = {
    frequencyHz,
    ...(values.gauge && {gauge: values.gauge.text}),
    ...(values.ends && {ends: values.ends.value}),
    ...(wire && {gaugeMm: wire.diameterMm, wound: wire.wound}),
    ...(wire?.material && {material: wire.material}),
    ...(wire?.wrap && {wrap: wire.wrap}),
    ...(wire?.coreMm !== undefined && {coreMm: wire.coreMm, coreAssumed: !wire.coreKnown}),
    ...(mass && {massPerLengthKgM: mass.kgM, massFrom: mass.from}),
  }
  if (!mass || lengthMm === undefined) return facts
  const tensionN = stringTensionN(mass.kgM, lengthMm, frequencyHz)
  const stiffness = wire && stringStiffness(values, wire)
  const limits = pullLimits(wire?.material, play)
  return {
    ...facts,
    tensionN,
    pull: pullWord(tensionN, limits),
    pullLimits: limits,
    ...(wire && strainOf(wire, tensionN)),
    ...(stiffness && {
      stiffnessMpa: stiffness.stiffnessMpa,
      sectionMm: stiffness.sectionMm,
      stiffnessFrom: values.stiffness ? 'file' : (wire?.material ?? 'steel'),
      stretchMm: stretchMm(stiffness, tensionN, lengthMm),
      inharmonicity: inharmonicityOf(stiffness, tensionN, lengthMm),
    }),
  }
}
