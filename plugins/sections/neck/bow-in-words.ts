import type {Bow} from '../../plan/shape/neck.ts'
import type {Plan} from '../../plan/shape/plan.ts'
import {type Inline, lengthAlone} from '../kit.ts'
import {needed} from '../needed.ts'

/** Say how far the strings bow the neck, whether that is too much, and what they do to it; or what would tell. */
export function bowInWords(plan: Plan): Inline[][] {
  const {bow, layup} = plan.neck ?? {}
  if (bow) return [verdict(plan, bow), [sentence(bow.why)]]
  const unknown = layup?.layers.find(({isWoodKnown}) => !isWoodKnown)
  if (!unknown) return []
  return [
    [
      'How far the strings bow it, and what it weighs, depends on its wood. ',
      ...needed([`${unknown.of}.wood`]),
    ],
  ]
}

function verdict(plan: Plan, bow: Bow): Inline[] {
  const {reliefMm, reliefAfterCreepMm, rangeMm, tooLow} = bow
  const [low = reliefMm, high = reliefMm] = rangeMm
  const range: Inline[] =
    high - low > plan.rulerMm / 2
      ? [', or anything from ', ...bowed(plan, low), ' to ', ...bowed(plan, high), ' as box and wood have it']
      : []
  return [
    tooLow ? 'Not stiff enough: the strings bow it by ' : 'Stiff enough: the strings bow it by ',
    ...bowed(plan, reliefMm),
    ...range,
    ...(tooLow ? [`, more than they stand above it at line ${tooLow.label}`] : []),
    ', and in time by up to ',
    ...bowed(plan, reliefAfterCreepMm),
    '.',
  ]
}

function bowed(plan: Plan, mm: number): Inline[] {
  if (mm >= plan.rulerMm / 2) return [lengthAlone(mm, plan)]
  return ['less than ', lengthAlone(plan.rulerMm, plan)]
}

const sentence = (words: string) => `${words[0]!.toUpperCase()}${words.slice(1)}.`
