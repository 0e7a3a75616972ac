import {screwLengths} from '../../tables/screws.ts'

/** List the lengths that wood screws are sold in, shortest first, as a build file has them. */
export const soldLengths = (units: 'in' | 'mm'): readonly string[] => screwLengths[units]

/** The gauges that are proposed, the usual ones for small work first (common practice, no source). */
export const usualGauges = [6, 8, 10, 12, 14] as const
