import {usualCoreMm} from '../../build-file/usual-core.ts'
import {plainGaugesIn, woundGaugesIn} from '../../tables/string-gauges.ts'
import {breakLimits} from '../../tables/string-pulls.ts'
import {thinnestWrapIn} from '../../tables/string-wraps.ts'
import {gaugeText} from './gauge-text.ts'
import {massPerLengthKgM} from './mass-per-length.ts'
import {pullLimits} from './pull-word.ts'
import {strainOf} from './strain.ts'
import type {StringPlace} from './string-facts.ts'
import {stringTensionN} from './string-tension.ts'
import type {StringValues, Wire} from './string-wire.ts'

export interface Alternative {
  gauge: string
  tensionN: number
}

/** Plain strings up to here are steel without a word; a thicker one needs its material in the file. */
const steelWithoutWordIn = 0.022
const offered = 3
const commonWound = woundGaugesIn.map((gaugeIn) => ({
  diameterMm: gaugeIn * 25.4,
  coreMm: usualCoreMm(gaugeIn * 25.4),
}))

/**
 * Find the common gauges whose pull (N) comes nearest to a target, nearest first, for this string's pitch, length and
 * material, and what each would pull. Only such as pull easy or firm and keep clear of breaking, and each so that
 * writing it at the string's gauge is all that has to be changed: what the file says of core, wrap and material stays.
 */
export function alternatives(
  values: StringValues,
  {lengthMm, frequencyHz, play}: StringPlace,
  targetN: number,
  units: 'in' | 'mm',
): Alternative[] {
  if (lengthMm === undefined) return []
  const limits = pullLimits(values.material?.value, play)
  return commonWires(values)
    .flatMap((wire) => {
      const kgM = massPerLengthKgM(wire)
      const tensionN = kgM === undefined ? Number.NaN : stringTensionN(kgM, lengthMm, frequencyHz)
      const {breakFraction = 0} =
        tensionN >= limits.slackN && tensionN <= limits.firmN ? strainOf(wire, tensionN) : {breakFraction: 1}
      return breakFraction < breakLimits.near ? [{wire, tensionN}] : []
    })
    .sort((a, b) => farFrom(targetN, a.tensionN) - farFrom(targetN, b.tensionN))
    .slice(0, offered)
    .map(({wire, tensionN}) => ({gauge: gaugeText(wire.diameterMm / 25.4, wire.wound, units), tensionN}))
}

const farFrom = (targetN: number, tensionN: number) => Math.abs(Math.log(tensionN / targetN))

/** What this string could be bought as, its own gauge left out. */
function commonWires({gauge, core, wrap, material}: StringValues): Wire[] {
  const isSteel = material === undefined || material.value === 'steel'
  const ownCore = core && !core.assumed ? core : undefined
  const mustBeWound = ownCore || (wrap && !wrap.assumed) || (!isSteel && gauge?.wound)
  const isOther = (mm: number, wound: boolean) => gauge?.wound !== wound || Math.abs(mm - gauge.mm) > 1e-6
  const plain = mustBeWound ? [] : plainGaugesIn[material?.value ?? 'steel']
  const wound = isSteel ? commonWound : []
  return [
    ...plain
      .filter((gaugeIn) => gaugeIn <= steelWithoutWordIn || (material && !material.assumed))
      .map((gaugeIn) => ({diameterMm: gaugeIn * 25.4, wound: false, coreKnown: false})),
    ...wound
      .filter(({diameterMm}) => !ownCore || ownCore.mm + 2 * thinnestWrapIn * 25.4 <= diameterMm)
      .map(({diameterMm, coreMm}) => ({
        diameterMm,
        wound: true,
        coreMm: ownCore?.mm ?? coreMm,
        coreKnown: ownCore !== undefined,
        wrap: wrap?.value ?? ('nickel-plated steel' as const),
      })),
  ]
    .filter((wire) => isOther(wire.diameterMm, wire.wound))
    .map((wire) => ({...wire, material: material?.value ?? 'steel'}))
}
