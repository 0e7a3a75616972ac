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

/** A wound string thinner than this is seldom made. */
export const thinnestWoundIn = 0.015

/**
 * How long the string of a packet is, ball or loop to cut end: heavy ones are made for longer scales.
 * Common practice, no source.
 */
export const packetLengths = {mm: 1000, heavyFromIn: 0.06, heavyMm: 1150}

/** What a string needs past its post: the winds and an end to hold while winding. Common practice, no source. */
export const pastThePostMm = 75
