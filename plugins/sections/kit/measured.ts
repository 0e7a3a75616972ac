import {writeMeasured} from '../../build-file/quantities/write-measured.ts'
import {measure} from './measure.ts'
import type {Measure} from './nodes.ts'

/** Write what was measured, or a difference of it, for the page: as `writeMeasured`, with the true minus sign. */
export function measured(...[value, unit, by]: Parameters<typeof writeMeasured>): Measure {
  return measure(writeMeasured(value, unit, by).replace('-', '−'))
}
