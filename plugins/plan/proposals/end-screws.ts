import type {EndJoint, EndScrews} from '../fasteners/end-joint.ts'
import type {Fastener} from '../fasteners/fastener.ts'
import {type Held, screwsIntoEnd} from './screws-that-hold.ts'

/** Say what is weak about a neck that ends at the box, with the screws that would carry it; undefined where it holds. */
export function planEndWeakness(
  held: Held,
  joint: EndJoint | undefined,
  fasteners: readonly Fastener[] = [],
): EndJoint['weak'] {
  if (!joint) return undefined
  const {glue} = joint
  const isGlueEnough = glue.mostMpa === undefined || glue.stressMpa <= glue.mostMpa + 1e-9
  if (glue.isGlued && isGlueEnough) return undefined
  const along = fasteners.filter(({way, joinsNeck}) => joinsNeck && way === 'along')
  const idle = along.find(({loadN}) => loadN === undefined)
  if (along.length ? !idle : !glue.isGlued) return undefined
  return {idle: idle?.of, wouldDo: endScrews(held, joint)}
}

function endScrews(held: Held, joint: EndJoint): EndScrews | undefined {
  const {screws = []} = screwsIntoEnd(held, joint) ?? {}
  const [first] = screws
  if (first?.downMm === undefined) return undefined
  const {size, lengthMm, stationMm: atMm, downMm, through} = first
  return {size, lengthMm, atMm, offsMm: screws.map(({offMm}) => offMm), downMm, through}
}
