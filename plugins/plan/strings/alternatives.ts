import {usualCoreMm} from '../../build-file/assumptions.ts'
import {breakLimits, plainGaugesIn, thinnestWrapIn, woundGaugesIn} from '../../tables/strings.ts'
import {gaugeText} from './gauge-text.ts'
import {massPerLengthKgM} from './mass-per-length.ts'
import {pullLimits} from './pull-word.ts'
import {strainOf} from './strain.ts'
import type {StringPlace} from './string-facts.ts'
import {massOfPullKgM, stringTensionN} from './string-tension.ts'
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
  const {slackN, firmN} = pullLimits(values.material?.value, play)
  const leastKgM = massOfPullKgM(slackN, lengthMm, frequencyHz)
  const mostKgM = massOfPullKgM(firmN, lengthMm, frequencyHz)
  const found: {wire: Wire; tensionN: number; far: number}[] = []
  for (const {wire, kgM} of commonWires(values, leastKgM, mostKgM)) {
    const tensionN = stringTensionN(kgM, lengthMm, frequencyHz)
    const {breakFraction = 0} = strainOf(wire, tensionN)
    if (breakFraction < breakLimits.near)
      found.push({wire, tensionN, far: Math.abs(Math.log(tensionN / targetN))})
  }
  return found
    .sort((a, b) => a.far - b.far)
    .slice(0, offered)
    .map(({wire, tensionN}) => ({gauge: gaugeText(wire.diameterMm / 25.4, wire.wound, units), tensionN}))
}

/** What this string could be bought as at a mass per length (kg/m) within limits, its own gauge left out. */
function commonWires(
  {gauge, core, wrap, material}: StringValues,
  leastKgM: number,
  mostKgM: number,
): {wire: Wire; kgM: number}[] {
  const name = material?.value ?? 'steel'
  const isSteel = name === 'steel'
  const ownCore = core && !core.assumed ? core : undefined
  const mustBeWound = ownCore || (wrap && !wrap.assumed) || (!isSteel && gauge?.wound)
  const wires: {wire: Wire; kgM: number}[] = []
  const offer = (wire: Wire) => {
    const isOwn = gauge?.wound === wire.wound && Math.abs(wire.diameterMm - gauge.mm) <= 1e-6
    const kgM = massPerLengthKgM(wire)!
    if (!isOwn && kgM >= leastKgM && kgM <= mostKgM) wires.push({wire, kgM})
  }
  if (!mustBeWound)
    for (const gaugeIn of plainGaugesIn[name])
      if (gaugeIn <= steelWithoutWordIn || (material && !material.assumed))
        offer({diameterMm: gaugeIn * 25.4, wound: false, coreKnown: false, material: name})
  if (isSteel)
    for (const {diameterMm, coreMm} of commonWound)
      if (!ownCore || ownCore.mm + 2 * thinnestWrapIn * 25.4 <= diameterMm)
        offer({
          diameterMm,
          wound: true,
          coreMm: ownCore?.mm ?? coreMm,
          coreKnown: ownCore !== undefined,
          wrap: wrap?.value ?? 'nickel-plated steel',
          material: name,
        })
  return wires
}
