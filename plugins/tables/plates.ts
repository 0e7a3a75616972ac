/**
 * How wood bends as a plate, by its stiffness along the grain (or along the face grain of a plied sheet).
 *
 * `across` is the stiffness across the grain and `shear` the modulus of shear in the plate's plane, both as parts of
 * the stiffness along it; `poisson` belongs to bending along.
 */
interface PlateRatios {
  across: number
  shear: number
  poisson: number
}

/** Solid boards, sawn flat and on the quarter: means of the twenty species of Wood Handbook Table 5-1, from memory. */
export const sawn = {
  flat: {across: 0.06, shear: 0.07, poisson: 0.4},
  quarter: {across: 0.11, shear: 0.09, poisson: 0.4},
} satisfies Record<string, PlateRatios>

/** Sheets that are alike in every direction: shear E/(2 + 2ν); Poisson's ratio as usual, from memory. */
export const even: PlateRatios = {across: 1, shear: 1 / 2.6, poisson: 0.3}

/**
 * Plied sheets by their thickness (mm): stiffness along and across the face grain, and what breaks them, in MPa. Birch
 * throughout; other plywood is taken to share out what its own row has in the same way, a row being for 9 mm.
 * Source: Handbook of Finnish Plywood, Finnish Forest Industries Federation (2002), from memory; shear 620 MPa.
 */
export const plied = {
  rows: [
    {mm: 4, alongMpa: 16471, acrossMpa: 1029, breaksMpa: 65.9, breaksAcrossMpa: 10.6},
    {mm: 6.5, alongMpa: 12737, acrossMpa: 4763, breaksMpa: 50.9, breaksAcrossMpa: 29},
    {mm: 9, alongMpa: 11395, acrossMpa: 6105, breaksMpa: 45.6, breaksAcrossMpa: 32.1},
    {mm: 12, alongMpa: 10719, acrossMpa: 6781, breaksMpa: 42.9, breaksAcrossMpa: 33.2},
    {mm: 15, alongMpa: 10316, acrossMpa: 7184, breaksMpa: 41.3, breaksAcrossMpa: 33.8},
    {mm: 18, alongMpa: 10048, acrossMpa: 7452, breaksMpa: 40.2, breaksAcrossMpa: 34.1},
  ],
  rowFor: 9,
  shearMpa: 620,
  poisson: 0.1,
} as const
