import {
  coreSpread,
  type StringMaterial,
  type StringPullRow,
  stringMaterials,
  stringPulls,
} from '../tables/strings.ts'
import type {StringPlan} from './strings.ts'
import {
  type StringStiffness,
  type StringValues,
  stringMass,
  stringStiffness,
  stringWire,
  type Wire,
  wireStrengthMpa,
} from './wire.ts'

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

/**
 * Give how far a string stretches over a length (mm) under its pull (N), in mm: T·L/(E·A).
 * Source: Hooke's law; OpenStax University Physics vol. 1, 12.3.
 */
export function stretchMm(
  {stiffnessMpa, sectionMm}: StringStiffness,
  tensionN: number,
  lengthMm: number,
): number {
  return (tensionN * lengthMm) / (stiffnessMpa * (Math.PI / 4) * sectionMm ** 2)
}

/**
 * Give B in f_n = n·f_0·√(1 + B·n²) of a string of this length (mm) and pull (N): π³·E·d⁴/(64·T·L²).
 * Source: H. Fletcher, J. Acoust. Soc. Am. 36, 203 (1964).
 */
export function inharmonicityOf(
  {stiffnessMpa, sectionMm}: StringStiffness,
  tensionN: number,
  lengthMm: number,
): number {
  return (Math.PI ** 3 * stiffnessMpa * sectionMm ** 4) / (64 * tensionN * lengthMm ** 2)
}

/**
 * Give the pull (N) that brings a string (mass in kg/m) of this length (mm) to its pitch (Hz): T = μ(2Lf)².
 * Source: Mersenne's law; OpenStax University Physics vol. 1, 16.3 and 16.6.
 */
export function stringTensionN(massKgM: number, lengthMm: number, frequencyHz: number): number {
  return massKgM * ((2 * lengthMm * frequencyHz) / 1000) ** 2
}

/** Give the mass per length (kg/m) of a string that pulls so many newtons at this length (mm) and pitch (Hz). */
export function massOfPullKgM(tensionN: number, lengthMm: number, frequencyHz: number): number {
  return tensionN / ((2 * lengthMm * frequencyHz) / 1000) ** 2
}

export type PullWord = 'slack' | 'easy' | 'firm' | 'stiff'

/** Say what a player would call a pull (N). Source: the table of pulls. */
export function pullWord(tensionN: number, limits: PullLimits): PullWord {
  if (tensionN < limits.slackN) return 'slack'
  if (tensionN <= limits.easyN) return 'easy'
  return tensionN <= limits.firmN ? 'firm' : 'stiff'
}

export type PullLimits = Pick<StringPullRow, 'slackN' | 'easyN' | 'firmN'>

/** Give the limits of pull (N) for a string of this material, steel where it is not known, and this way of playing. */
export function pullLimits(material: StringMaterial | undefined, play: string | undefined): PullLimits {
  const {slackN, slackUnderSlideN, easyN, firmN} = stringPulls[stringMaterials[material ?? 'steel'].feel]
  return {slackN: play === 'slide' ? slackUnderSlideN : slackN, easyN, firmN}
}
