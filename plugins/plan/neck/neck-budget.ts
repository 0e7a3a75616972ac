import type {BuildValues} from '../../build-file/schema.ts'
import type {PlanPart} from '../part.ts'
import type {Budget} from '../shape/neck.ts'
import type {Plan} from '../shape/plan.ts'
import {tailNeed} from './tail-need.ts'

/**
 * Share out the stick's length (mm): the head, the scale, what anchors and box need past the bridge line, and what
 * `neck.length` leaves over. A neck that ends at the box spans the scale only so far, and needs nothing past it.
 * Absent until head, scale and what lies past the bridge are known.
 */
export const neckBudget: PlanPart = ({values}, soFar) => {
  const headMm = values.head?.length?.mm
  const shares = values.neck?.joins?.value === 'end' ? toBox(soFar) : pastBridge(values, soFar)
  if (!values.neck || headMm === undefined || !shares) return {}
  const neededMm = headMm + shares.scaleMm + shares.tailMm
  const lengthMm = values.neck.length?.mm ?? neededMm
  const {anchorsMm, boxMm = 0} = shares
  const budget: Budget = {
    headMm,
    ...shares,
    lengthMm,
    neededMm,
    spareMm: lengthMm - neededMm,
    needs: anchorsMm !== undefined && anchorsMm >= boxMm ? 'the anchors need' : 'the box needs',
    ...(anchorsMm !== undefined && {
      holdsAnchors: lengthMm >= headMm + shares.scaleMm + anchorsMm - 1e-6,
    }),
  }
  return {neck: {...soFar.neck, budget}}
}

type Shares = Pick<Budget, 'scaleMm' | 'tailMm' | 'anchorsMm' | 'boxMm'>

function toBox({box, scale}: Plan): Shares | undefined {
  if (box?.atMm === undefined || scale?.lengthMm === undefined) return undefined
  return {scaleMm: Math.max(Math.min(box.atMm, scale.lengthMm), 0), tailMm: 0}
}

function pastBridge(values: BuildValues, soFar: Plan): Shares | undefined {
  const scaleMm = soFar.scale?.lengthMm
  const need = tailNeed(values, soFar)
  const both = [need.anchorsMm, need.boxMm].filter((mm) => mm !== undefined)
  if (scaleMm === undefined || both.length === 0) return undefined
  return {scaleMm, tailMm: Math.max(...both, 0), ...need}
}
