import {usualCoreMm} from '../build-file/assumptions.ts'
import {
  breakLimits,
  plainGaugesIn,
  type StringMaterial,
  stringMaterials,
  thinnestWrapIn,
  unevenPull,
  woundGaugesIn,
} from '../tables/strings.ts'
import {inchMm} from '../tables/units.ts'
import {noteFrequencyHz, noteName} from './notes.ts'
import {pullLimits, type StringFacts, type StringPlace, strainOf} from './string-facts.ts'
import {massOfPullKgM, massPerLengthKgM, type StringValues, stringTensionN, type Wire} from './wire.ts'

export interface Balance {
  /** Pull over the median pull of the strings of like material, less 1. */
  offMedian?: number | undefined
  /** Too far off that median. */
  uneven?: true | undefined
  /** The pull (N) to aim for: the median of the others that pull easy or firm, else the middle of easy and firm. */
  targetN: number
}

/**
 * Compare the pulls of a set, string by string. Of two strings that are far apart only the one further from the usual
 * pull is called uneven, since each would mend the other.
 */
export function balance(set: readonly StringFacts[], play: string | undefined): Balance[] {
  return set.map((string) => {
    const {tensionN} = string
    const alike = set.filter((other) => feelOf(other) === feelOf(string) && other.tensionN !== undefined)
    const middleN = median(alike.map((other) => other.tensionN!))
    const sound = alike.filter(
      (other) => other !== string && (other.pull === 'easy' || other.pull === 'firm'),
    )
    const targetN = median(sound.map((other) => other.tensionN!)) ?? usualN(string, play)
    if (tensionN === undefined || middleN === undefined || alike.length < 2) return {targetN}
    const offMedian = tensionN / middleN - 1
    const other = alike.length === 2 ? alike.find((one) => one !== string) : undefined
    const isWorse = !other || farFromUsual(string, play) >= farFromUsual(other, play)
    return {targetN, offMedian, uneven: Math.abs(offMedian) > unevenPull && isWorse ? true : undefined}
  })
}

const materialOf = ({material}: StringFacts): StringMaterial => material ?? 'steel'
const feelOf = (string: StringFacts) => stringMaterials[materialOf(string)].feel

/** The middle between slack and stiff, in N, as ratios are heard and felt. */
function usualN(string: StringFacts, play: string | undefined): number {
  const {slackN, firmN} = pullLimits(materialOf(string), play)
  return Math.sqrt(slackN * firmN)
}

function farFromUsual(string: StringFacts, play: string | undefined): number {
  return Math.abs(Math.log(string.tensionN! / usualN(string, play)))
}

/** What would mend a string. */
export interface StringMend {
  /** The pull to aim for. */
  tensionN: number
  /** What a string of that pull weighs, kg/m. */
  massKgM: number
  /** What a packet would print for it. */
  packetN?: number | undefined
  /** The highest note clear of breaking. */
  note?: string | undefined
}

/** The last bit of a pull at the very limit must not keep a note that is still too high. */
const slack = 1e-9

/**
 * Say what would mend a string that is slack, stiff or uneven: the pull to aim for (N), the mass per length (kg/m) that
 * has it, and the pull (N) that its packet would print then; and, where it is tuned too near its strength, the highest
 * note that is clear of it. Undefined of a sound string.
 */
export function mendString(
  {note, tension}: StringValues,
  {lengthMm, frequencyHz}: StringPlace,
  {breakFraction, pull}: StringFacts,
  {targetN, uneven}: Balance,
): StringMend | undefined {
  if (lengthMm === undefined) return undefined
  const massKgM = massOfPullKgM(targetN, lengthMm, frequencyHz)
  const packetHz = tension?.note && noteFrequencyHz(tension.note.midi, 440)
  const tooHigh = note && breakFraction !== undefined && breakFraction >= breakLimits.near
  if (pull !== 'slack' && pull !== 'stiff' && !uneven && !tooHigh) return undefined
  return {
    tensionN: targetN,
    massKgM,
    packetN: packetHz && tension?.scale ? stringTensionN(massKgM, tension.scale.mm, packetHz) : undefined,
    note: tooHigh
      ? noteName(Math.ceil(note.midi - 6 * Math.log2(breakFraction / breakLimits.near) - slack) - 1)
      : undefined,
  }
}

/** Give the middle value, or the mean of the two in the middle; undefined of nothing. */
function median(values: readonly number[]): number | undefined {
  const sorted = Float64Array.from(values).sort()
  const upper = sorted[Math.floor(sorted.length / 2)]
  const lower = sorted[Math.floor((sorted.length - 1) / 2)]
  return upper === undefined || lower === undefined ? undefined : (lower + upper) / 2
}

/** A gauge to buy instead, and what it would pull. */
export interface Alternative {
  gauge: string
  tensionN: number
}

/** Plain strings up to here are steel without a word; a thicker one needs its material in the file. */
const steelWithoutWordIn = 0.022
const offered = 3
const commonWound = woundGaugesIn.map((gaugeIn) => ({
  diameterMm: gaugeIn * inchMm,
  coreMm: usualCoreMm(gaugeIn * inchMm),
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
    .map(({wire, tensionN}) => ({gauge: gaugeText(wire.diameterMm / inchMm, wire.wound, units), tensionN}))
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
        offer({diameterMm: gaugeIn * inchMm, wound: false, coreKnown: false, material: name})
  if (isSteel)
    for (const {diameterMm, coreMm} of commonWound)
      if (!ownCore || ownCore.mm + 2 * thinnestWrapIn * inchMm <= diameterMm)
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

/** Write a gauge of so many inches as a maker would in this build: `.030w`, or `.030 in w` where millimetres are meant. */
function gaugeText(gaugeIn: number, wound: boolean, units: 'in' | 'mm'): string {
  const figure = gaugeIn.toFixed(4).replace(/^0/, '').replace(/0$/, '')
  return units === 'in' ? figure + (wound ? 'w' : '') : `${figure} in${wound ? ' w' : ''}`
}
