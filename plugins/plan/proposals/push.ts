import {anchorsOnBox, isAnchoredOnNeck} from '../box/anchors.ts'
import {planBridgeSeat} from '../box/bridge-seat.ts'
import {planLid} from '../box/lid.ts'
import {type Texts, withTexts} from '../kit/proposal-texts.ts'
import type {Settled} from '../kit/settled.ts'
import {planBow} from '../neck/bow.ts'
import {planBudget} from '../neck-shape/budget.ts'
import {leastGapMm} from '../neck-shape/inside.ts'
import {neckModel} from '../neck-shape/model.ts'
import {planScale} from '../scale/scale.ts'
import {type Around, lookAround} from './around.ts'

/**
 * Find what does not bear the push that a bridge on the top gets from anchors, and would bear being without them: the
 * top under its foot, or a neck that runs through and is pressed down at both walls.
 */
export function tooMuchFor(
  settled: Settled,
  around: Around,
  texts: {readonly [key: string]: Texts},
): 'top' | 'neck' | undefined {
  if (around.bridge?.on !== 'top') return undefined
  const anchored = {...settled, values: withTexts(settled, texts, settled.units)}
  const then = bears(anchored, lookAround(anchored, around.tensionTotalN))
  const now = bears(settled, around)
  return (['top', 'neck'] as const).find((what) => now[what] && !then[what])
}

/** Say whether top and neck bear the strings, as the checks would have it. */
function bears(settled: Settled, around: Around): {top: boolean; neck: boolean} {
  const {values} = settled
  const {place, taper, sizes, blocks, bridge, push, action: heights, neck, tensionTotalN} = around
  const seat = planBridgeSeat(settled, bridge, place, sizes?.outside)?.bridgeSeat
  const lid = planLid(settled, {place, sizes, seat, blocks, bridge, push, heights, tensionTotalN})
  const settlesMm = lid ? lid.sinkAfterCreepMm - lid.sinkMm : 0
  const ends = {place, lengthMm: planBudget(values, place)?.lengthMm ?? values.neck?.length?.mm}
  const model = neckModel(values, ends)
  const scale = planScale(settled, {place, taper, longestMm: undefined})
  const onNeck = isAnchoredOnNeck(values, place, neck)
  const onBox = onNeck === false ? anchorsOnBox(values, place) : undefined
  const bent =
    model && planBow(settled, model, {ends, scale, tensionTotalN, heights, bridge, onBox, settlesMm})
  const isTouched = (lid?.needsGapMm ?? leastGapMm) > (neck?.gapMm ?? Number.POSITIVE_INFINITY) + 1e-6
  return {
    top: !lid?.tooWeak && !lid?.tooLimp && !isTouched,
    neck: !bent?.bow?.tooLow && !bent?.bow?.tooHollow && !bent?.inside?.tooThin,
  }
}
