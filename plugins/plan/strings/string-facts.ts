import {
  coreSpread,
  type StringMaterial,
  type StringPullRow,
  type StringWrap,
  stringMaterials,
  stringPulls,
} from '../../tables/strings.ts'
import {
  type StringMass,
  type StringStiffness,
  type StringValues,
  stringMass,
  stringStiffness,
  stringTensionN,
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

/** What a string does at its pitch; what is not known is absent. */
export interface StringFacts extends Partial<Strain>, Partial<StringStiffness>, StringMake {
  /** file, or the material whose usual stiffness is taken. */
  stiffnessFrom?: 'file' | StringMaterial | undefined
  /** T = μ(2Lf)², of one string. */
  tensionN?: number | undefined
  stretchMm?: number | undefined
  /** B in f_n = n·f_0·√(1 + B·n²). */
  inharmonicity?: number | undefined
  pull?: PullWord | undefined
  /** Slack below the first, easy and firm up to the others, stiff above. */
  pullLimits?: PullLimits | undefined
}

/** What a string is, and what it is tuned to. */
interface StringMake {
  frequencyHz: number
  gaugeMm?: number | undefined
  /** As written. */
  gauge?: string | undefined
  wound?: boolean | undefined
  /** What it is made of; of a wound string, its core. */
  material?: StringMaterial | undefined
  wrap?: StringWrap | undefined
  ends?: string | undefined
  massPerLengthKgM?: number | undefined
  massFrom?: StringMass['from'] | undefined
  coreMm?: number | undefined
  coreAssumed?: boolean | undefined
}

/**
 * Compute what a settled string does at its pitch and length: nothing of pull without a length, no verdict on breaking
 * with an assumed core.
 */
export function stringFacts(values: StringValues, {frequencyHz, lengthMm, play}: StringPlace): StringFacts {
  const wire = stringWire(values)
  const mass = stringMass(values, wire)
  const known: StringMake = {
    frequencyHz,
    gauge: values.gauge?.text,
    ends: values.ends?.value,
    gaugeMm: wire?.diameterMm,
    wound: wire?.wound,
    material: wire?.material,
    wrap: wire?.wrap,
    coreMm: wire?.coreMm,
    coreAssumed: wire?.coreMm === undefined ? undefined : !wire.coreKnown,
    massPerLengthKgM: mass?.kgM,
    massFrom: mass?.from,
  }
  if (!mass || lengthMm === undefined) return known
  const tensionN = stringTensionN(mass.kgM, lengthMm, frequencyHz)
  const limits = pullLimits(wire?.material, play)
  const pulled = {...known, tensionN, pullLimits: limits, pull: pullWord(tensionN, limits)}
  const stiffness = wire && stringStiffness(values, wire)
  if (!wire || !stiffness) return wire ? {...pulled, ...strainOf(wire, tensionN)} : pulled
  return {
    ...pulled,
    ...strainOf(wire, tensionN),
    ...stiffness,
    stiffnessFrom: values.stiffness ? 'file' : (wire.material ?? 'steel'),
    stretchMm: stretchMm(stiffness, tensionN, lengthMm),
    inharmonicity: inharmonicityOf(stiffness, tensionN, lengthMm),
  }
}

/** Least and most, in N and in MPa. */
export interface CoreDoubt {
  tensionN: number[]
  stressMpa: number[]
}

/**
 * Say how much pull (N) and stress (MPa) hang on a core that is assumed: their least and most with a core that is
 * thinner and thicker by a twentieth of the gauge. Undefined where the core is known, or the packet tells the mass.
 */
export function coreDoubt(values: StringValues, place: StringPlace): CoreDoubt | undefined {
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

/** How near a string is to breaking. */
interface Strain {
  /** In the core, where wound. */
  stressMpa?: number | undefined
  /** Least strength of music wire of that diameter. */
  strengthMpa?: number | undefined
  breakFraction?: number | undefined
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
