import {inch} from './units.ts'

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

/** Nominal thickness and what it is dressed to. */
export const softwoodThicknesses = [
  {nominal: '1', mm: inch(0.75)},
  {nominal: '5/4', mm: inch(1)},
  {nominal: '6/4', mm: inch(1.25)},
  {nominal: '2', mm: inch(1.5)},
  {nominal: '3', mm: inch(2.5)},
  {nominal: '4', mm: inch(3.5)},
] as const

/** Nominal width and what it is dressed to: up to 7 in it loses 1/2 in, from 8 in on 3/4 in. */
export const softwoodWidths = [
  {nominal: '2', mm: inch(1.5)},
  {nominal: '3', mm: inch(2.5)},
  {nominal: '4', mm: inch(3.5)},
  {nominal: '5', mm: inch(4.5)},
  {nominal: '6', mm: inch(5.5)},
  {nominal: '8', mm: inch(7.25)},
  {nominal: '10', mm: inch(9.25)},
  {nominal: '12', mm: inch(11.25)},
] as const

/** Nominal thickness in quarters of an inch, what it is dressed to, and what it is counted as in board feet. */
export const hardwoodThicknesses = [
  {nominal: '1/2', mm: inch(5 / 16), countedIn: 1},
  {nominal: '3/4', mm: inch(9 / 16), countedIn: 1},
  {nominal: '4/4', mm: inch(13 / 16), countedIn: 1},
  {nominal: '5/4', mm: inch(17 / 16), countedIn: 1.25},
  {nominal: '6/4', mm: inch(21 / 16), countedIn: 1.5},
  {nominal: '8/4', mm: inch(1.75), countedIn: 2},
  {nominal: '10/4', mm: inch(2.25), countedIn: 2.5},
  {nominal: '12/4', mm: inch(2.75), countedIn: 3},
] as const

/** Widths that hardwood boards come in at the least; each board differs. */
export const hardwoodWidths = [4, 6, 8, 10].map((width) => inch(width))

export const boardLengths = [4, 6, 8, 10, 12, 16].map((feet) => ({feet, mm: feet * inch(12)}))
