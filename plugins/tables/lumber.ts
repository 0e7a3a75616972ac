/**
 * What boards are sold as. Sizes are dressed, dry, in mm, from inches.
 * Softwood: American Softwood Lumber Standard, Voluntary Product Standard PS 20, table of nominal and minimum-dressed
 * sizes (seen on an engineering reference page). Hardwood: surfaced two sides, National Hardwood Lumber Association,
 * Rules for the Measurement and Inspection of Hardwood and Cypress (4/4, 5/4 and 8/4 seen on a secondary page, the
 * rest from memory). Lengths of boards: common practice, no source.
 */
export const lumberSources = {
  softwood:
    'American Softwood Lumber Standard, NIST Voluntary Product Standard PS 20, minimum dressed dry sizes',
  hardwood: 'NHLA Rules for the Measurement and Inspection of Hardwood and Cypress, surfaced two sides',
  lengths: 'lengths that shops keep: common practice, no source',
} as const

const inch = 25.4

/** Nominal thickness and what it is dressed to. */
export const softwoodThicknesses = [
  {nominal: '1', mm: 0.75 * inch},
  {nominal: '5/4', mm: 1 * inch},
  {nominal: '6/4', mm: 1.25 * inch},
  {nominal: '2', mm: 1.5 * inch},
  {nominal: '3', mm: 2.5 * inch},
  {nominal: '4', mm: 3.5 * inch},
] as const

/** Nominal width and what it is dressed to: up to 7 in it loses 1/2 in, from 8 in on 3/4 in. */
export const softwoodWidths = [
  {nominal: '2', mm: 1.5 * inch},
  {nominal: '3', mm: 2.5 * inch},
  {nominal: '4', mm: 3.5 * inch},
  {nominal: '5', mm: 4.5 * inch},
  {nominal: '6', mm: 5.5 * inch},
  {nominal: '8', mm: 7.25 * inch},
  {nominal: '10', mm: 9.25 * inch},
  {nominal: '12', mm: 11.25 * inch},
] as const

/** Nominal thickness in quarters of an inch, what it is dressed to, and what it is counted as in board feet. */
export const hardwoodThicknesses = [
  {nominal: '1/2', mm: (5 / 16) * inch, countedIn: 1},
  {nominal: '3/4', mm: (9 / 16) * inch, countedIn: 1},
  {nominal: '4/4', mm: (13 / 16) * inch, countedIn: 1},
  {nominal: '5/4', mm: (17 / 16) * inch, countedIn: 1.25},
  {nominal: '6/4', mm: (21 / 16) * inch, countedIn: 1.5},
  {nominal: '8/4', mm: 1.75 * inch, countedIn: 2},
  {nominal: '10/4', mm: 2.25 * inch, countedIn: 2.5},
  {nominal: '12/4', mm: 2.75 * inch, countedIn: 3},
] as const

/** Widths that hardwood boards come in at the least; each board differs. */
export const hardwoodWidths = [4, 6, 8, 10].map((width) => width * inch)

export const boardLengths = [4, 6, 8, 10, 12, 16].map((feet) => ({feet, mm: feet * 12 * inch}))
