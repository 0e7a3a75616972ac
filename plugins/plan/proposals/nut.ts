import {inch} from '../../tables/units.ts'
import {nutAboveFaceMm} from '../action/action.ts'
import {leastSeated} from '../action/nut.ts'
import {markAt, sizeOf} from '../kit/proposal-texts.ts'
import {underGrooveMm} from '../neck/scarf.ts'
import type {Propose} from './around.ts'

/** Rods as they are sold, thin first: common practice, no source. */
const rods = [
  ['1/8', '3'],
  ['5/32', '4'],
  ['3/16', '5'],
  ['1/4', '6'],
  ['5/16', '8'],
  ['3/8', '10'],
] as const

/** Grooves are cut finer than a ruler shows (mm): common practice, no source. */
const fineMm = {in: inch(1 / 64), mm: 0.1} as const

/**
 * Propose the nut: without frets the thinnest rod that is sold and stands as high as the strings are drawn with a
 * quarter of it in its groove, and wood enough under that; over frets, on a face of its own, or where no rod does, a
 * flat one, which is filed to its height. Common practice, no source.
 */
export const proposeNut: Propose = (settled, {values, action, neckMm = 0}) => {
  if (values.nut || !action || !values.strings) return []
  const heightMm = nutAboveFaceMm(action)
  const flat = {key: 'nut', texts: {nut: {kind: 'flat'}}, why: 'nut filed to height'} as const
  const rod = rods
    .map(([inches, mm]) => sizeOf(inches, mm, settled))
    .find(({mm}) => heightMm <= mm * (1 - leastSeated) + 1e-6)
  // A groove at the end of a layer that starts at the nut would break out of it.
  const {laminations = [], cap} = values.neck ?? {}
  const isLayered = values.fingerboard || cap || laminations.some(({from}) => from)
  if (values.scale?.fretted?.value || !rod || isLayered) return [flat]
  const groove = markAt(rod.mm - heightMm, {...settled, rulerMm: fineMm[settled.units]}, 'down')
  const isSame = Math.abs(rod.mm - groove.mm - heightMm) <= settled.rulerMm
  if (!isSame || neckMm - groove.mm < underGrooveMm) return [flat]
  const texts = {nut: {kind: 'rod', diameter: rod.text, groove: groove.text}}
  return [{key: 'nut', texts, why: 'rod for the height'}]
}
