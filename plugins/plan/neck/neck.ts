import type {Action, Heights} from '../action/action.ts'
import {type Nut, type NutFace, planNutFace} from '../action/nut.ts'
import type {Settled} from '../kit/settled.ts'
import {type Budget, planBlank} from '../neck-shape/budget.ts'
import {cutNeck, type NeckCrossSection, planCrossSections} from '../neck-shape/cut.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import type {Scale} from '../scale/scale.ts'
import type {Placed} from '../strings/tuners.ts'
import {type BoardOverBox, type BoardRadius, boardOverBox, planBoardRadius} from './board.ts'
import type {Bow} from './bow.ts'
import {type Edges, planEdges} from './edges.ts'
import {type Fretting, planFretting} from './fretting.ts'
import {type Head, planHead} from './head.ts'
import type {HeadLayout} from './head-layout.ts'
import type {InsideNeck} from './inside-neck.ts'
import {type NeckLayup, planLayup} from './layup.ts'
import {type NeckMass, planMass} from './mass.ts'
import {type Movement, planMovement} from './movement.ts'
import {planRounding, type Rounding} from './rounding.ts'
import {type NutSeat, planNutSeat, planScarf, type Scarf} from './scarf.ts'
import {planStringAngles, type StringAngles} from './string-angles.ts'

/** What is known of the neck; each part is absent until what it follows from is there. */
export interface Neck extends Partial<NeckMass>, Partial<StringAngles> {
  sections?: NeckCrossSection[] | undefined
  bow?: Bow | undefined
  /** Where it runs through the box. */
  inside?: InsideNeck | undefined
  budget?: Budget | undefined
  scarf?: Scarf | undefined
  head?: Head | undefined
  layup?: NeckLayup | undefined
  roundOver?: Rounding | undefined
  edges?: Edges | undefined
  nutSeat?: NutSeat | undefined
  /** Where its fingerboard is round across the strings. */
  boardRadius?: BoardRadius | undefined
  /** Where its face does not reach under the nut. */
  nutFace?: NutFace | undefined
  movement?: Movement | undefined
  fretting?: Fretting | undefined
  boardOverBox?: BoardOverBox | undefined
}

interface Around {
  tuners: readonly Placed[] | undefined
  layout: HeadLayout | undefined
  scale: Scale | undefined
  action: Action | undefined
  nut: Nut | undefined
  heights: Heights | undefined
  tensionTotalN: number | undefined
}

/** Compute the neck from its body: sections, mass, scarf, blank, head, strings across it and fretting. */
export function planNeck(
  settled: Settled,
  model: NeckModel | undefined,
  budget: Budget | undefined,
  around: Around,
): Neck | undefined {
  if (!model) return budget && {budget}
  const {values, rulerMm} = settled
  const {tuners, layout, scale, action, nut, heights, tensionTotalN} = around
  const cut = cutNeck(model)
  const angles = planStringAngles(model.head, values.tuners?.['string-height']?.mm, {tuners, action, rulerMm})
  const blank = budget && planBlank(model, budget.lengthMm, values.saw?.kerf?.mm ?? 0)
  return {
    layup: planLayup(model.layup, rulerMm),
    roundOver: planRounding(model, cut),
    sections: planCrossSections(model, cut),
    ...planMass(values, model, cut),
    movement: planMovement(values, model),
    ...angles,
    scarf: planScarf(model, tensionTotalN, angles?.stringAngleDeg),
    budget: budget && {...budget, ...blank},
    head: planHead(values, model, layout),
    edges: planEdges(settled, model, scale),
    nutSeat: planNutSeat(model, cut, values.nut?.groove?.mm),
    boardRadius: planBoardRadius(values, {taper: model.taper, scale, heights}),
    nutFace: planNutFace(values, model, nut, rulerMm),
    fretting: planFretting(values, model, scale),
    boardOverBox: boardOverBox(values, model),
  }
}
