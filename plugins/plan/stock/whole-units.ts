/** Whole units in a millimetre. A length of 20 m and all its sums stay whole numbers that a double holds exactly. */
export const unitsPerMm = 1e9

/**
 * What a piece may be short by and still hold its parts (units; a millionth of a millimetre): the third part of an
 * inch, three times over, fills an inch.
 */
export const slackUnits = 1000

/** Count a length in whole units, so that parts which fill a piece exactly are seen to fit. */
export const wholeUnits = (mm: number): number => Math.round(mm * unitsPerMm)
