import type {PlanPart} from '../part.ts'
import type {NeckConcern} from './concern.ts'
import {cutNeck} from './cut-neck.ts'
import {neckBlank} from './neck-blank.ts'
import {neckBow} from './neck-bow.ts'
import {neckEdges} from './neck-edges.ts'
import {neckFretting} from './neck-fretting.ts'
import {neckHead} from './neck-head.ts'
import {neckLayup} from './neck-layup.ts'
import {neckMass} from './neck-mass.ts'
import {neckModel} from './neck-model.ts'
import {neckMovement} from './neck-movement.ts'
import {neckRounding} from './neck-rounding.ts'
import {neckScarf} from './neck-scarf.ts'
import {neckSections} from './neck-sections.ts'
import {nutSeat} from './nut-seat.ts'
import {stringAngles} from './string-angles.ts'

/** What is computed of the neck, each after those that it reads. */
const concerns: readonly NeckConcern[] = [
  neckLayup,
  neckRounding,
  neckSections,
  neckMass,
  neckMovement,
  stringAngles,
  neckScarf,
  neckBlank,
  neckHead,
  neckEdges,
  nutSeat,
  neckFretting,
  neckBow,
]

/** Compute the neck from its body: sections, bow, mass, scarf, blank, head, strings across it and fretting. */
export const neck: PlanPart = (settled, soFar) => {
  const model = neckModel(settled.values, soFar)
  if (!model) return {}
  const cut = cutNeck(model)
  const whole = {...soFar.neck}
  for (const concern of concerns) Object.assign(whole, concern({model, cut, settled, soFar, neck: whole}))
  return {neck: whole}
}
