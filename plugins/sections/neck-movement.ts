import type {Plan} from '../plan/plan.ts'
import {fineBoth} from '../words/lengths.ts'
import {number} from '../words/quantities.ts'
import type {Inline} from './kit.ts'
import {measure} from './measures.ts'

/** Say how much the neck's width moves with the seasons, and how far neighbours at a glue line part. */
export function movementInWords({neck, units}: Plan): Inline[][] {
  const {movement} = neck ?? {}
  if (!movement) return []
  const {season, perPercent} = movement
  const fine = (mm: number) => measure(...fineBoth(mm, {units}, 4))
  const {quarterMm, flatMm, glueLineMm} = season ?? perPercent
  const when = season
    ? `Between your driest and your dampest air (${number(season.fromPercent, 0)} to ${number(season.toPercent, 0)} % moisture in the wood)`
    : 'For each 1 % that the moisture in the wood changes (a heated winter to a damp summer is about 5 %)'
  const glueLine: Inline[] =
    glueLineMm === undefined
      ? []
      : [', and at the glue line that works hardest two flat-sawn neighbours part by ', fine(glueLineMm)]
  return [
    [
      `${when} its width moves by `,
      fine(quarterMm),
      ' if it is quarter-sawn, ',
      fine(flatMm),
      ' if flat-sawn',
      ...glueLine,
      '.',
    ],
  ]
}
