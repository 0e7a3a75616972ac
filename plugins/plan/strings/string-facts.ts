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
  const facts: StringFacts = {frequencyHz}
  if (values.gauge) facts.gauge = values.gauge.text
  if (values.ends) facts.ends = values.ends.value
  if (wire) {
    facts.gaugeMm = wire.diameterMm
    facts.wound = wire.wound
    if (wire.material) facts.material = wire.material
    if (wire.wrap) facts.wrap = wire.wrap
    if (wire.coreMm !== undefined) {
      facts.coreMm = wire.coreMm
      facts.coreAssumed = !wire.coreKnown
    }
  }
  if (!mass) return facts
  facts.massPerLengthKgM = mass.kgM
  facts.massFrom = mass.from
  if (lengthMm === undefined) return facts
  const tensionN = stringTensionN(mass.kgM, lengthMm, frequencyHz)
  facts.tensionN = tensionN
  facts.pullLimits = pullLimits(wire?.material, play)
  facts.pull = pullWord(tensionN, facts.pullLimits)
  if (!wire) return facts
  Object.assign(facts, strainOf(wire, tensionN))
  const stiffness = stringStiffness(values, wire)
  if (!stiffness) return facts
  facts.stiffnessMpa = stiffness.stiffnessMpa
  facts.sectionMm = stiffness.sectionMm
  facts.stiffnessFrom = values.stiffness ? 'file' : (wire.material ?? 'steel')
  facts.stretchMm = stretchMm(stiffness, tensionN, lengthMm)
  facts.inharmonicity = inharmonicityOf(stiffness, tensionN, lengthMm)
  return facts
}
