import {even, plied, sawn} from '../../tables/plates.ts'
import {tornAcrossMpa, type Wood} from '../kit/woods.ts'
import type {Plate} from './plate.ts'

/** How a lid of some wood bends, thickness and all: along its grain and across it, MPa. */
export interface LidWood {
  /** Along the grain, or along the face grain of plies. */
  eMpa: number
  /** Parts of that. */
  across: number
  shear: number
  poisson: number
  /** What breaks it, along the grain and across it. */
  breaksMpa?: number | undefined
  breaksAcrossMpa?: number | undefined
}

/** As stiff or as limp as its wood may be, or as it is most likely. */
export type Make = 'stiff' | 'likely' | 'limp'

/**
 * What a solid lid holds bent across its grain, over the listed pull that tears it there: that test's piece is notched,
 * and breaks early. From memory.
 */
const bentOverTorn = 2

/**
 * Say how a lid of this wood and thickness (mm) bends: a solid one is taken to be sawn flat, but at its stiffest on the
 * quarter; a plied one as its plies share out.
 */
export function lidWood(wood: Wood, thicknessMm: number, make: Make): LidWood {
  const eMpa = make === 'likely' ? wood.eMpa : (wood.range?.eMpa[make === 'stiff' ? 1 : 0] ?? wood.eMpa)
  const {morMpa} = wood
  if (wood.plies) return pliedLid(eMpa, morMpa, thicknessMm)
  if (wood.kind === 'sheet') return {eMpa, ...even, breaksMpa: morMpa, breaksAcrossMpa: morMpa}
  const ratios = sawn[make === 'stiff' ? 'quarter' : 'flat']
  return {eMpa, ...ratios, breaksMpa: morMpa, breaksAcrossMpa: morMpa && bentOverTorn * tornAcrossMpa(wood)}
}

/** Tell whether a wood makes the same lid at its stiffest, or limpest, as it most likely does. */
export const isSure = ({range, kind, plies}: Wood, make: Make): boolean =>
  !range && (make !== 'stiff' || kind === 'sheet' || plies === true)

/** Share out what a plied sheet has among its two ways, by the table's thicknesses, in a straight line between them. */
function pliedLid(eMpa: number, morMpa: number | undefined, thicknessMm: number): LidWood {
  const {rows, rowFor, shearMpa, poisson} = plied
  const next = rows.findIndex(({mm}) => mm >= thicknessMm)
  const upper = rows.at(next)!
  const lower = next > 0 ? rows[next - 1]! : upper
  const part = upper === lower ? 0 : (thicknessMm - lower.mm) / (upper.mm - lower.mm)
  const at = (of: (row: (typeof rows)[number]) => number) => of(lower) + part * (of(upper) - of(lower))
  const listed = rows.find(({mm}) => mm === rowFor)!
  const along = at(({alongMpa}) => alongMpa)
  const strength = (of: (row: (typeof rows)[number]) => number) =>
    morMpa === undefined ? undefined : (at(of) * morMpa) / listed.breaksMpa
  return {
    eMpa: (along * eMpa) / listed.alongMpa,
    across: at(({acrossMpa}) => acrossMpa) / along,
    shear: shearMpa / along,
    poisson,
    breaksMpa: strength(({breaksMpa}) => breaksMpa),
    breaksAcrossMpa: strength(({breaksAcrossMpa}) => breaksAcrossMpa),
  }
}

/**
 * Give the plate that such a lid makes (N·mm): E·h³/12 along and across, each over 1 − ν·ν′, and G·h³/6 + D1 against
 * twisting. Source: Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, art. 85.
 */
export function lidPlate(
  {eMpa, across, shear, poisson}: LidWood,
  thicknessMm: number,
  grain: 'along' | 'across',
): Omit<Plate, 'lengthMm' | 'widthMm'> {
  const cubed = thicknessMm ** 3 / 12
  const withGrain = (eMpa * cubed) / (1 - poisson * poisson * across)
  const sharedNmm = poisson * across * withGrain
  const [alongNmm, acrossNmm] =
    grain === 'along' ? [withGrain, across * withGrain] : [across * withGrain, withGrain]
  return {alongNmm, acrossNmm, sharedNmm, twistNmm: sharedNmm + 2 * shear * eMpa * cubed}
}
