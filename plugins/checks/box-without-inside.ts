import type {Check} from './check.ts'

/** A box whose walls leave no room inside. */
export const boxWithoutInside: Check = {
  rule: 'box-without-inside',
  find: ({values: {box}}, {box: {outside, inside} = {}}) => {
    if (!outside || inside) return []
    const isDeep = outside.depthMm > outside.topMm + outside.backMm
    const {depth, length, width, sides} = box ?? {}
    return [
      {
        at: isDeep ? (sides ? 'box.sides' : 'box.width') : 'box.depth',
        message: isDeep
          ? `sides of ${sides?.text ?? '3/16 in'} leave no room inside a box ${length?.text} by ${width?.text}; all box measures are outside`
          : `top and back leave no room inside a box ${depth?.text} deep; all box measures are outside`,
      },
    ]
  },
}
