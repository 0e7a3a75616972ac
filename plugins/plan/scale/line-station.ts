/**
 * Place a line: mm from the nut, L·(1 − 1/r) with r = 2^(cents/1200). The octave of 640 mm is at 320 exactly.
 * Source: the law of stretched strings, as in G. Byers, American Lutherie 47 (1996).
 */
export const lineStation = (lengthMm: number, cents: number): number => lengthMm * (1 - 2 ** (-cents / 1200))
