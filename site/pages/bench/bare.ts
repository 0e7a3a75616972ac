import type {ElementContent} from 'hast'
import {writeLength} from '../../../plugins/build-file/quantities/write-length.ts'
import type {Ruler} from '../../../plugins/sections/kit.ts'
import {withFractions} from '../../html/measures.ts'

/** Write a length (mm) to the ruler without its unit, which the sheet names once. */
export function bare(mm: number, ruler: Ruler, rounding: 'nearest' | 'down' = 'nearest'): ElementContent[] {
  const written = writeLength(mm, ruler, rounding).replace('-', '−')
  return withFractions(written.replace(/ (in|mm)$/, ''))
}
