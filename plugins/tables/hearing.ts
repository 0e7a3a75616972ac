import {inch} from './units.ts'

/**
 * The least difference of pitch that listeners notice, in cents.
 *
 * Source: HyperPhysics, Cents (“a reasonable estimate of the just noticeable difference is about five cents”); Hobbie
 * and Roth, Intermediate Physics for Medicine and Biology, give the same; OpenStax College Physics 17.6 gives 0.3 %,
 * which is 5.2 cents.
 */
export const noticeableCents = 5
export const noticeableSource =
  'HyperPhysics, Cents; Hobbie and Roth, Intermediate Physics for Medicine and Biology; OpenStax College Physics 17.6'

/** Marks that rules and scales have, coarsest first, with the build’s units that they belong to. */
export const rulerMarks = {
  in: [
    {mm: inch(1 / 8), text: '1/8 in'},
    {mm: inch(1 / 16), text: '1/16 in'},
    {mm: inch(1 / 32), text: '1/32 in'},
    {mm: inch(1 / 64), text: '1/64 in'},
    {mm: inch(1 / 100), text: '1/100 in'},
  ],
  mm: [
    {mm: 2, text: '2 mm'},
    {mm: 1, text: '1 mm'},
    {mm: 0.5, text: '0.5 mm'},
    {mm: 0.25, text: '0.25 mm'},
    {mm: 0.1, text: '0.1 mm'},
  ],
} as const
