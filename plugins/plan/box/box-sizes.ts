import type {PlanPart} from '../part.ts'

/** Give the box's sizes in mm, outside and inside; the inside is absent where its walls leave none. */
export const boxSizes: PlanPart = ({values: {box}}, soFar) => {
  if (!box?.length || !box.width || !box.depth || !box.sides || !box.top?.thickness || !box.back) return {}
  const outside = {
    lengthMm: box.length.mm,
    widthMm: box.width.mm,
    depthMm: box.depth.mm,
    sidesMm: box.sides.mm,
    topMm: box.top.thickness.mm,
    backMm: box.back.mm,
  }
  const inside = {
    lengthMm: outside.lengthMm - 2 * outside.sidesMm,
    widthMm: outside.widthMm - 2 * outside.sidesMm,
    heightMm: outside.depthMm - outside.topMm - outside.backMm,
  }
  const isHollow = Object.values(inside).every((mm) => mm > 0)
  return {box: {...soFar.box, outside, ...(isHollow && {inside})}}
}
