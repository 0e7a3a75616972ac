/**
 * What plain strings, and the cores of wound ones, are made of. `feel` says which scale of pull a player judges
 * the string by. Steel's stiffness is in the music wire table, since it goes by the diameter.
 */
export interface StringMaterialRow {
  densityKgM3: number
  densitySource: string
  /** Young's modulus where one figure serves; a string's own `stiffness` wins. */
  stiffnessMpa?: number
  stiffnessSource?: string
  feel: 'steel' | 'nylon'
}

// biome-ignore format: a line each
export const stringMaterials = {
  steel: {densityKgM3: 7850, densitySource: 'EN 10270-1', feel: 'steel'},
  nylon: {densityKgM3: 1070, densitySource: 'from memory, nylon 6/12; finished strings run about 1000', stiffnessMpa: 5000, stiffnessSource: 'OpenStax College Physics, Table 5.3; strings run from 3.4 to 8.3 GPa', feel: 'nylon'},
  fluorocarbon: {densityKgM3: 1780, densitySource: 'from memory, PVDF', stiffnessMpa: 5000, stiffnessSource: 'taken as nylon: common practice, no source', feel: 'nylon'},
  gut: {densityKgM3: 1300, densitySource: 'from memory', stiffnessMpa: 5000, stiffnessSource: 'taken as nylon: common practice, no source', feel: 'nylon'},
  'phosphor bronze': {densityKgM3: 8860, densitySource: 'alloy data sheets after ASTM B139, C51000: 0.320 lb/in³', stiffnessMpa: 103_400, stiffnessSource: 'Shigley’s Mechanical Engineering Design, Table 10-5, wire B159', feel: 'steel'},
  brass: {densityKgM3: 8440, densitySource: 'OpenStax University Physics vol. 1, Table 14.1', stiffnessMpa: 90_000, stiffnessSource: 'OpenStax University Physics vol. 1, Table 12.1', feel: 'steel'},
} as const satisfies Record<string, StringMaterialRow>

export type StringMaterial = keyof typeof stringMaterials

/** What wound strings are wound with. */
interface StringWrapRow {
  densityKgM3: number
  source: string
}

// biome-ignore format: a line each
export const stringWraps = {
  'nickel-plated steel': {densityKgM3: 7900, source: 'steel 7850 (EN 10270-1) under a few per cent of nickel: common practice, no source'},
  'pure nickel': {densityKgM3: 8900, source: 'Polivanov, tables of masses (2006)'},
  'stainless steel': {densityKgM3: 7930, source: 'steel makers’ sheets, grade 302: 0.286 lb/in³'},
  'phosphor bronze': {densityKgM3: 8860, source: 'alloy data sheets after ASTM B139, C51000: 0.320 lb/in³'},
  '80/20 bronze': {densityKgM3: 8670, source: 'from memory, C24000: 0.313 lb/in³'},
  'silver-plated copper': {densityKgM3: 8920, source: 'OpenStax University Physics vol. 1, Table 14.1, copper; the plating is thin'},
} as const satisfies Record<string, StringWrapRow>

export type StringWrap = keyof typeof stringWraps

/**
 * How thick the core of a wound string usually is, as a part of the whole gauge; between rows in a straight line,
 * outside them the nearest row. Common practice, no source.
 */
export const usualCores: readonly {gaugeIn: number; coreFraction: number}[] = [
  {gaugeIn: 0.02, coreFraction: 0.6},
  {gaugeIn: 0.03, coreFraction: 0.5},
  {gaugeIn: 0.042, coreFraction: 0.42},
]

/**
 * The same of wound strings with a soft core, which stays about 0.48 mm thick whatever the gauge. Source: diameters and
 * masses of three wound nylon strings in Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024), the core by the
 * formula of one round wrap of silver-plated copper.
 */
export const usualSoftCores: typeof usualCores = [
  {gaugeIn: 0.029, coreFraction: 0.65},
  {gaugeIn: 0.035, coreFraction: 0.54},
  {gaugeIn: 0.043, coreFraction: 0.44},
]

/**
 * How far a packet's mass or pull may be off what gauge and core come to, as a part: shops measure gauges to a
 * thousandth of an inch, and no two makers wind alike. Common practice, no source.
 */
export const packetSpread = 0.15

/** How far a core may lie from the usual one, as a part of the gauge. Common practice, no source. */
export const coreSpread = 0.05

/** The thinnest wrap that is wound, in inches. Common practice, no source. */
export const thinnestWrapIn = 0.002

/**
 * The gauges that single strings are commonly sold in, in inches, rising; plain strings by material.
 * Common practice, no source.
 */

// biome-ignore format: rows of like steps
const plainMetalIn = [
  0.008, 0.009, 0.01, 0.011, 0.012, 0.013, 0.014, 0.015, 0.016, 0.017, 0.018, 0.019, 0.02, 0.022, 0.024,
]
// biome-ignore format: rows of like steps
const plainSoftIn = [
  0.018, 0.02, 0.022, 0.024, 0.026, 0.028, 0.03, 0.032, 0.034, 0.036, 0.038, 0.04, 0.042, 0.044,
]

export const plainGaugesIn = {
  steel: plainMetalIn,
  'phosphor bronze': plainMetalIn,
  brass: plainMetalIn,
  nylon: plainSoftIn,
  fluorocarbon: plainSoftIn,
  gut: plainSoftIn,
} as const

// biome-ignore format: rows of like steps
export const woundGaugesIn = [
  0.018, 0.02, 0.022, 0.024, 0.026, 0.028, 0.03, 0.032, 0.034, 0.036, 0.038,
  0.04, 0.042, 0.044, 0.046, 0.048, 0.05, 0.052, 0.054, 0.056, 0.059, 0.062,
  0.065, 0.07, 0.075, 0.08,
] as const

/** Wound strings with a soft core. */
export const woundSoftGaugesIn = [
  0.028, 0.029, 0.03, 0.031, 0.032, 0.033, 0.034, 0.035, 0.036, 0.038, 0.04, 0.042, 0.043, 0.044, 0.046,
] as const

/** A wound string thinner than this is seldom made. */
export const thinnestWoundIn = 0.015

/**
 * How long the string of a packet is, ball or loop to cut end: heavy ones are made for longer scales.
 * Common practice, no source.
 */
export const packetLengths = {mm: 1000, heavyFromIn: 0.06, heavyMm: 1150}

/** What a string needs past its post: the winds and an end to hold while winding. Common practice, no source. */
export const pastThePostMm = 75

/**
 * How hard a string pulls, as players feel it: below `slackN` it is slack, up to `easyN` easy, up to `firmN` firm,
 * above that stiff. A slide wants steel a little tighter. Common practice, no source.
 */
export interface StringPullRow {
  slackN: number
  slackUnderSlideN: number
  easyN: number
  firmN: number
}

export const stringPulls = {
  steel: {slackN: 45, slackUnderSlideN: 55, easyN: 75, firmN: 120},
  nylon: {slackN: 30, slackUnderSlideN: 30, easyN: 50, firmN: 75},
} as const satisfies Record<string, StringPullRow>

/** How far one string may pull off the median of its material before the set feels uneven. Common practice, no source. */
export const unevenPull = 0.45

/**
 * How near its strength a string may be tuned: at the first it wears and breaks sooner, at the second it seldom
 * lasts, at the third it does not reach the pitch. The wire’s elastic limit lies at 0.65 to 0.75 of its strength
 * (Shigley’s Mechanical Engineering Design, Table 10-5); the figures themselves are common practice, no source.
 */
export const breakLimits = {near: 0.7, nearer: 0.8, broken: 1}
