import {writeBare, writeLength} from '../build-file/quantities/write-length.ts'
import type {Plan} from '../plan/plan.ts'

type Ruler = Pick<Plan, 'units' | 'rulerMm'>

/** Write a length with its unit, as the page does: `1 1/2 in`. */
export const lengthWords = (mm: number, ruler: Ruler): string => writeLength(mm, ruler)

/** Write a length as a figure of a drawing, whose unit is said once beside it (ISO 129-1): `1 1/2`. */
export const figureOf = (mm: number, ruler: Ruler): string => writeBare(mm, ruler).replace('-', '−')

/** Write a diameter: `Ø 1 1/8`. */
export const diameterOf = (mm: number, ruler: Ruler): string => `Ø ${figureOf(mm, ruler)}`

/** Write an angle to a tenth of a degree: `13.5°`. */
export const angleOf = (deg: number): string => `${Number(deg.toFixed(1))}°`

/** Cut a name short, with an ellipsis, where a drawing has no room for all of it. */
export const shortName = (name: string, most = 22): string =>
  name.length > most ? `${name.slice(0, most - 1).trimEnd()}…` : name

/** Say once what a drawing's figures are in. */
export const unitWords = ({units}: Ruler): string =>
  units === 'in' ? 'figures in inches' : 'figures in millimetres'
