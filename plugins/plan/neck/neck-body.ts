import type {NeckTaper} from '../neck-width-at.ts'
import type {HeadShape} from './head-shape.ts'
import type {Layup} from './neck-layers.ts'
import type {RoundOver} from './round-over.ts'

/** The neck as a body; mm from the nut line and from the playing face. */
export interface NeckBody {
  layup: Layup
  taper: NeckTaper
  tailMm?: number
  boxAtMm?: number
  boxTailMm?: number
  scaleMm?: number
  head?: HeadShape
  roundOver?: RoundOver
  faceRadiusMm?: number
}
