import {usualCoreMm} from '../../build-file/usual-core.ts'
import type {Written} from '../../build-file/values.ts'
import {plainGaugesIn, woundGaugesIn} from '../../tables/string-gauges.ts'
import {breakLimits} from '../../tables/string-pulls.ts'
import {thinnestWrapIn} from '../../tables/string-wraps.ts'
import {gaugeText} from './gauge-text.ts'
import {type StringPlace, stringFacts} from './string-facts.ts'
import type {StringValues} from './string-wire.ts'

export interface Alternative {
  gauge: string
  tensionN: number
}

/** Plain strings up to here are steel without a word; a thicker one needs its material in the file. */
const steelWithoutWordIn = 0.022
const offered = 3

/**
 * Find the common gauges whose pull (N) comes nearest to a target, nearest first, for this string's pitch, length and
 * material, and what each would pull. Only such as pull easy or firm and keep clear of breaking, and each so that
 * writing it at the string's gauge is all that has to be changed: what the file says of core, wrap and material stays.
 */
export function alternatives(
  values: StringValues,
  place: StringPlace,
  targetN: number,
  units: 'in' | 'mm',
): Alternative[] {
  return commonGauges(values)
    .flatMap(({gaugeIn, wound}) => {
      const {tensionN, pull, breakFraction = 0} = stringFacts(withGauge(values, gaugeIn, wound), place)
      const sound = (pull === 'easy' || pull === 'firm') && breakFraction < breakLimits.near
      return tensionN !== undefined && sound ? [{gauge: gaugeText(gaugeIn, wound, units), tensionN}] : []
    })
    .sort((a, b) => farFrom(targetN, a.tensionN) - farFrom(targetN, b.tensionN))
    .slice(0, offered)
}

const farFrom = (targetN: number, tensionN: number) => Math.abs(Math.log(tensionN / targetN))

/** The gauges that this string could be bought in, its own left out. */
function commonGauges(values: StringValues): {gaugeIn: number; wound: boolean}[] {
  const {gauge, core, wrap, material} = values
  const isSoft = material !== undefined && material.value !== 'steel'
  const mustBeWound = (core && !core.assumed) || (wrap && !wrap.assumed)
  const thinnestWoundIn = core && !core.assumed ? core.mm / 25.4 + 2 * thinnestWrapIn : 0
  const plain = mustBeWound || (isSoft && gauge?.wound) ? [] : plainGaugesIn[material?.value ?? 'steel']
  const wound = isSoft ? [] : woundGaugesIn
  return [
    ...plain
      .filter((gaugeIn) => gaugeIn <= steelWithoutWordIn || (material && !material.assumed))
      .map((gaugeIn) => ({gaugeIn, wound: false})),
    ...wound.filter((gaugeIn) => gaugeIn >= thinnestWoundIn).map((gaugeIn) => ({gaugeIn, wound: true})),
  ].filter((one) => one.wound !== gauge?.wound || Math.abs(one.gaugeIn * 25.4 - gauge.mm) > 1e-6)
}

/** The string as it would be with another gauge; a packet's figures belong to the one it has. */
function withGauge(values: StringValues, gaugeIn: number, wound: boolean): StringValues {
  const {mass: _, tension: __, ...rest} = values
  const mm = gaugeIn * 25.4
  const assumed: Written = {text: '', place: {line: 1, column: 1, endLine: 1, endColumn: 1}, assumed: true}
  const core = rest.core && !rest.core.assumed ? rest.core : {...assumed, mm: usualCoreMm(mm), wound: false}
  return {
    ...rest,
    gauge: {...assumed, mm, wound},
    material: rest.material ?? {...assumed, value: 'steel'},
    ...(wound && {core, wrap: rest.wrap ?? {...assumed, value: 'nickel-plated steel'}}),
  }
}
