import {type Path, path} from './shape.ts'

/** Draw an upright centre line at 0 that passes the outline's top and bottom by a little, as ISO 128 has it. In mm. */
export const centreLine = (topMm: number, bottomMm: number, textMm: number): Path =>
  path('centre', [0, topMm - 0.35 * textMm], [0, bottomMm + 0.35 * textMm])
