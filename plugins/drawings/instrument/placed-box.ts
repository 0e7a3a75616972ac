import type {Plan} from '../../plan/shape/plan.ts'

/** The box's outside, in mm, once it lies somewhere along the neck. */
export interface PlacedBox {
  atMm: number
  tailMm: number
  widthMm: number
  depthMm: number
  sidesMm: number
  topMm: number
  backMm: number
}

/** Find the box where its place and its outside are known. */
export function placedBox({box}: Plan): PlacedBox | undefined {
  if (box?.atMm === undefined || !box.outside) return undefined
  return {...box.outside, atMm: box.atMm, tailMm: box.atMm + box.outside.lengthMm}
}
