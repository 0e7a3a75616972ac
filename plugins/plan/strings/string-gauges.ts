import {breakLimits, packetSpread, stringMaterials} from '../../tables/strings.ts'
import {type CommonGauge, commonGauges, wireOf} from './common-gauges.ts'
import {pullLimits, type StringPlace, strainOf} from './string-facts.ts'
import {
  massPerLengthKgM,
  type StringValues,
  stringMass,
  stringTensionN,
  stringWire,
  type Wire,
} from './wire.ts'

/** A gauge to buy instead, and what it would pull. */
export interface Alternative {
  gauge: CommonGauge
  tensionN: number
}

const offered = 3
/** What would do comes this near to the pull to aim for, as a part of it; the second where nothing is nearer. */
const nearTarget = [0.2, 0.4]

/**
 * Find the common gauges whose pull (N) comes nearest to a target, nearest first, for this string's pitch, length and
 * material, and what each would pull. Only such as pull easy or firm and keep clear of breaking, never the string
 * itself, and each so that writing it at the string's gauge is all that has to be changed: what the file says of core,
 * wrap and material stays. A string that its packet weighs is held against its like alone, which are taken to be as
 * much heavier or lighter than the model; none where the packet and the model have little to do with each other.
 */
export function alternatives(
  values: StringValues,
  {lengthMm, frequencyHz, play}: StringPlace,
  targetN: number,
  units: 'in' | 'mm',
): Alternative[] {
  const by = modelled(values)
  if (lengthMm === undefined || !by) return []
  const {slackN, firmN} = pullLimits(values.material?.value, play)
  const isSound = (tensionN: number, wire: Wire) =>
    tensionN >= slackN &&
    tensionN <= firmN &&
    (strainOf(wire, tensionN).breakFraction ?? 0) < breakLimits.near
  const found: {gauge: CommonGauge; tensionN: number; far: number}[] = []
  for (const gauge of commonGauges(values, units)) {
    const wire = wireOf(values, gauge)
    const modelN = stringTensionN(massPerLengthKgM(wire)!, lengthMm, frequencyHz)
    const tensionN = by.packet * modelN
    const far = Math.abs(Math.log(tensionN / targetN))
    if (by.kind !== undefined && wire.wound !== by.kind) continue
    if (isSound(tensionN, wire) && isSound(modelN, wire)) found.push({gauge, tensionN, far})
  }
  // Soft strings are bought wound or plain by their place in the set, and stay so where they can.
  const isSoft = stringMaterials[values.material?.value ?? 'steel'].feel === 'nylon'
  const alike = isSoft && values.gauge ? [found.filter(({gauge}) => gauge.wound === values.gauge?.wound)] : []
  const near = [...alike, found].flatMap((some) =>
    nearTarget.map((part) => some.filter(({far}) => far <= Math.log(1 + part))),
  )
  return (near.find((some) => some.length > 0) ?? [])
    .sort((a, b) => a.far - b.far)
    .slice(0, offered)
    .map(({gauge, tensionN}) => ({gauge, tensionN}))
}

/**
 * Say how much heavier than the model its packet makes a string, and whether only wound or plain ones compare with
 * it; undefined where they do not compare.
 */
function modelled(values: StringValues): {packet: number; kind?: boolean} | undefined {
  const wire = stringWire(values)
  const mass = stringMass(values, wire)
  if (mass?.from !== 'mass' && mass?.from !== 'tension') return {packet: 1}
  const off = packetOff(values)
  return wire && off && !off.isMuch ? {packet: 1 + off.part, kind: wire.wound} : undefined
}

/** A packet beside what gauge and core come to, kg/m. */
export interface PacketOff {
  packetKgM: number
  modelKgM: number
  /** How much heavier the packet has it, as a part. */
  part: number
  /** More than gauges and windings differ from maker to maker. */
  isMuch: boolean
  /** The model's mass would pull about as is aimed for, so that the packet may well be the slip. */
  modelFits?: boolean | undefined
  /** A common gauge that weighs as the packet says, where such a string pulls easy or firm. */
  gauge?: CommonGauge | undefined
}

/** Hold what a packet says of a string against the model; undefined where either says nothing. */
export function packetOff(values: StringValues): PacketOff | undefined {
  const wire = stringWire(values)
  const mass = stringMass(values, wire)
  const modelKgM = wire && massPerLengthKgM(wire)
  if (!mass || modelKgM === undefined || (mass.from !== 'mass' && mass.from !== 'tension')) return undefined
  const part = mass.kgM / modelKgM - 1
  return {packetKgM: mass.kgM, modelKgM, part, isMuch: Math.abs(part) > packetSpread}
}

/**
 * Say which of packet and gauge may be the slip where they differ much: the packet where gauge and core would pull
 * about as is aimed for (N). Undefined where they agree.
 */
export function packetSlip(
  values: StringValues,
  {lengthMm, frequencyHz, play}: StringPlace,
  targetN: number,
  units: 'in' | 'mm',
): PacketOff | undefined {
  const off = packetOff(values)
  if (!off?.isMuch) return undefined
  const {slackN, firmN} = pullLimits(values.material?.value, play)
  const [modelN, packetN] = [off.modelKgM, off.packetKgM].map((kgM) =>
    lengthMm === undefined ? Number.NaN : stringTensionN(kgM, lengthMm, frequencyHz),
  ) as [number, number]
  const isSound = (tensionN: number) => tensionN >= slackN && tensionN <= firmN
  const weighing = commonGauges(values, units)
    .map((gauge) => ({gauge, far: Math.abs(massPerLengthKgM(wireOf(values, gauge))! / off.packetKgM - 1)}))
    .filter(({gauge, far}) => gauge.wound === values.gauge?.wound && far < packetSpread)
    .sort((a, b) => a.far - b.far)
  const isNear = Math.abs(Math.log(modelN / targetN)) <= Math.log(1 + nearTarget.at(-1)!)
  return {
    ...off,
    modelFits: isSound(modelN) && isNear,
    gauge: isSound(packetN) ? weighing[0]?.gauge : undefined,
  }
}
