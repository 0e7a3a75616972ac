import type {Plan} from '../../plan/shape/plan.ts'
import type {Shape} from '../kit/shape.ts'
import {boxFront} from './box-front.ts'
import {handOf} from './hand.ts'
import {anchorsFront, nutAndBridge, tunersFront} from './hardware-front.ts'
import {linesFront} from './lines-front.ts'
import {neckFront} from './neck-front.ts'
import {stringsFront} from './strings-front.ts'

/** Draw the instrument from the front, hanging from its nut line at 0: mm across and down; nothing without a neck. */
export function front(plan: Plan): Shape[] {
  if (!plan.outline?.neck) return []
  const hand = handOf(plan)
  return [
    ...boxFront(plan, hand),
    ...neckFront(plan),
    ...linesFront(plan, hand),
    ...nutAndBridge(plan),
    ...tunersFront(plan, hand),
    ...anchorsFront(plan, hand),
    ...stringsFront(plan, hand),
  ]
}
