/**
 * Wood screws by gauge number. Diameters in inches, as they are sold.
 *
 * Row: `threadsPerInch`; `rootIn` the core of the thread, the mid-thread average of a tapered cut-thread screw, about
 * two thirds of the shank; `rootDesignIn` the larger one of the design tables; `pilotIn` the bit, to the nearest
 * 1/64 in, for 70 % of the first root in softwood and 90 % in hardwood; `easyPilotIn` what is often bored instead,
 * so that it drives easier; `shankHoleIn` the clearance hole. The shank itself is 0.060 + 0.013·gauge.
 *
 * Sources: shank and threads ANSI/ASME B18.6.1 (threads from memory); root, pilots and shank holes as secondary
 * tables give them (root of odd gauges, and the pilots of 3, 5, 7 and 9, from memory and by the rule);
 * `rootDesignIn` National Design Specification for Wood Construction, Table L3, from memory;
 * `shankMm` Wood Handbook, FPL-GTR-282, Table 8-9.
 */
interface ScrewRow {
  gauge: number
  shankMm?: number
  rootIn: number
  rootDesignIn?: number
  threadsPerInch: number
  pilotIn: {soft: number; hard: number}
  easyPilotIn?: {soft: number; hard: number}
  shankHoleIn: number
}

// biome-ignore format: a gauge a line
export const screws: readonly ScrewRow[] = [
  {gauge: 2, rootIn: 0.054, threadsPerInch: 26, pilotIn: {soft: 1 / 32, hard: 3 / 64}, easyPilotIn: {soft: 1 / 16, hard: 1 / 16}, shankHoleIn: 3 / 32},
  {gauge: 3, rootIn: 0.065, threadsPerInch: 24, pilotIn: {soft: 3 / 64, hard: 1 / 16}, shankHoleIn: 7 / 64},
  {gauge: 4, shankMm: 2.84, rootIn: 0.075, threadsPerInch: 22, pilotIn: {soft: 3 / 64, hard: 1 / 16}, easyPilotIn: {soft: 1 / 16, hard: 5 / 64}, shankHoleIn: 7 / 64},
  {gauge: 5, shankMm: 3.18, rootIn: 0.085, threadsPerInch: 20, pilotIn: {soft: 1 / 16, hard: 5 / 64}, shankHoleIn: 1 / 8},
  {gauge: 6, shankMm: 3.51, rootIn: 0.094, rootDesignIn: 0.113, threadsPerInch: 18, pilotIn: {soft: 1 / 16, hard: 5 / 64}, easyPilotIn: {soft: 5 / 64, hard: 7 / 64}, shankHoleIn: 9 / 64},
  {gauge: 7, shankMm: 3.84, rootIn: 0.102, rootDesignIn: 0.122, threadsPerInch: 16, pilotIn: {soft: 5 / 64, hard: 3 / 32}, shankHoleIn: 5 / 32},
  {gauge: 8, shankMm: 4.17, rootIn: 0.112, rootDesignIn: 0.131, threadsPerInch: 15, pilotIn: {soft: 5 / 64, hard: 3 / 32}, easyPilotIn: {soft: 3 / 32, hard: 1 / 8}, shankHoleIn: 11 / 64},
  {gauge: 9, shankMm: 4.5, rootIn: 0.122, rootDesignIn: 0.142, threadsPerInch: 14, pilotIn: {soft: 5 / 64, hard: 7 / 64}, shankHoleIn: 3 / 16},
  {gauge: 10, shankMm: 4.83, rootIn: 0.13, rootDesignIn: 0.152, threadsPerInch: 13, pilotIn: {soft: 3 / 32, hard: 7 / 64}, easyPilotIn: {soft: 7 / 64, hard: 9 / 64}, shankHoleIn: 3 / 16},
  {gauge: 12, shankMm: 5.49, rootIn: 0.148, rootDesignIn: 0.171, threadsPerInch: 11, pilotIn: {soft: 7 / 64, hard: 1 / 8}, easyPilotIn: {soft: 1 / 8, hard: 5 / 32}, shankHoleIn: 7 / 32},
  {gauge: 14, shankMm: 6.15, rootIn: 0.165, rootDesignIn: 0.196, threadsPerInch: 10, pilotIn: {soft: 7 / 64, hard: 9 / 64}, easyPilotIn: {soft: 9 / 64, hard: 11 / 64}, shankHoleIn: 1 / 4},
]

/** Lengths that wood screws are sold in, as a build file has them: common practice, no source. */
// biome-ignore format: a row a unit
export const screwLengths = {
  in: ['1/2', '5/8', '3/4', '7/8', '1', '1 1/4', '1 1/2', '1 3/4', '2', '2 1/4', '2 1/2', '3', '3 1/2'],
  mm: ['12', '16', '20', '25', '30', '35', '40', '45', '50', '60', '70', '80', '90'],
} as const

/** Where the two columns of each pilot come from, and what to say beside them. */
export const screwSources = {
  pilot:
    'Wood Handbook, FPL-GTR-282, p. 8-10: lead holes about 70 % of the root in softwoods, 90 % in hardwoods',
  withdrawal: 'Wood Handbook, FPL-GTR-282, Eq. 8-10: p = 108.25 G² D L',
  thread: 'two thirds thread: common practice',
  endGrain:
    'end grain: about three quarters of side grain, and uneven (Wood Handbook, ch. 8, from memory); the National Design Specification lets no screw be pulled out of end grain at all',
  edges: 'edges and ends: 2.5 and 5 shanks, commentary to the NDS, from memory',
  shank: 'ANSI/ASME B18.6.1: 0.060 + 0.013 in times the gauge',
  root: 'mid-thread average of cut-thread screws (Wood Handbook, ch. 8); the NDS, Table L3, from memory, is larger',
} as const

/** The gauges that are proposed, the usual ones for small work first (common practice, no source). */
export const usualGauges = [6, 8, 10, 12, 14] as const
