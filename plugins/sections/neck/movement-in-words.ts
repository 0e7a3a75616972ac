import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, measure, number} from '../kit.ts'

/** Say how much the neck's width moves with the seasons, and how far neighbours at a glue line part. */
export function movementInWords({neck, units}: Plan): Inline[][] {
  const {movement} = neck ?? {}
  if (!movement) return []
  const {season, perPercent} = movement
  const {quarterMm, flatMm, glueLineMm} = season ?? perPercent
  const when = season
    ? `Between your driest and your dampest air (${number(season.fromPercent, 0)} to ${number(season.toPercent, 0)} % moisture in the wood)`
    : 'For each 1 % that the moisture in the wood changes (a heated winter to a damp summer is about 5 %)'
  const glueLine: Inline[] =
    glueLineMm === undefined
      ? []
      : [
          ', and at the glue line that works hardest two flat-sawn neighbours part by ',
          fine(glueLineMm, units),
        ]
  return [
    [
      `${when} its width moves by `,
      fine(quarterMm, units),
      ' if it is quarter-sawn, ',
      fine(flatMm, units),
      ' if flat-sawn',
      ...glueLine,
      '.',
    ],
  ]
}

/** What moves is less than any ruler shows. */
function fine(mm: number, units: Plan['units']): Inline {
  const [inches, metric] = [`${number(mm / 25.4, 4)} in`, `${number(mm, 2)} mm`]
  return units === 'in' ? measure(inches, metric) : measure(metric, inches)
}
