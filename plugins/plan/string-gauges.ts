import {usualCoreMm} from '../build-file/usual/strings.ts'
import {
  breakLimits,
  packetSpread,
  plainGaugesIn,
  stringMaterials,
  thinnestWrapIn,
  usualCores,
  usualSoftCores,
  woundGaugesIn,
  woundSoftGaugesIn,
} from '../tables/strings.ts'
import {inchMm} from '../tables/units.ts'
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
  gauge: string
  tensionN: number
}

/** Plain strings up to here are steel without a word; a thicker one needs its material in the file. */
const steelWithoutWordIn = 0.022
const offered = 3
/** What would do comes this near to the pull to aim for, as a part of it; the second where nothing is nearer. */
const nearTarget = [0.2, 0.4]
/** Gauges no further apart than this (mm) are the same string: no shop tells them apart. */
const sameMm = 0.006

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
  const found: {gauge: string; wound: boolean; tensionN: number; far: number}[] = []
  for (const gauge of commonGauges(values, units)) {
    const wire = wireOf(values, gauge)
    const modelN = stringTensionN(massPerLengthKgM(wire)!, lengthMm, frequencyHz)
    const tensionN = by.packet * modelN
    const far = Math.abs(Math.log(tensionN / targetN))
    if (by.kind !== undefined && wire.wound !== by.kind) continue
    if (isSound(tensionN, wire) && isSound(modelN, wire))
      found.push({gauge: gauge.text, wound: wire.wound, tensionN, far})
  }
  // Soft strings are bought wound or plain by their place in the set, and stay so where they can.
  const isSoft = stringMaterials[values.material?.value ?? 'steel'].feel === 'nylon'
  const alike = isSoft && values.gauge ? [found.filter(({wound}) => wound === values.gauge?.wound)] : []
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
  gauge?: string | undefined
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
    .map((gauge) => ({...gauge, far: Math.abs(massPerLengthKgM(wireOf(values, gauge))! / off.packetKgM - 1)}))
    .filter(({wound, far}) => wound === values.gauge?.wound && far < packetSpread)
    .sort((a, b) => a.far - b.far)
  const isNear = Math.abs(Math.log(modelN / targetN)) <= Math.log(1 + nearTarget.at(-1)!)
  return {
    ...off,
    modelFits: isSound(modelN) && isNear,
    gauge: isSound(packetN) ? weighing[0]?.text : undefined,
  }
}

/** A gauge that shops have, as this build would write it. */
interface CommonGauge {
  text: string
  mm: number
  wound: boolean
}

/** List what this string could be bought as, its own gauge left out. */
function commonGauges({gauge, core, wrap, material}: StringValues, units: 'in' | 'mm'): CommonGauge[] {
  const name = material?.value ?? 'steel'
  const isSoft = stringMaterials[name].feel === 'nylon'
  const ownCore = core && !core.assumed ? core : undefined
  const mustBeWound = Boolean(ownCore || (wrap && !wrap.assumed))
  const isSaid = material !== undefined && !material.assumed
  const {plain, softWound, steelWound} = sold[units]
  const mostMm = isSaid ? Number.POSITIVE_INFINITY : steelWithoutWordIn * inchMm + sameMm
  const leastMm = ownCore ? ownCore.mm + 2 * thinnestWrapIn * inchMm : 0
  const wound = isSoft ? softWound : name === 'steel' ? steelWound : []
  return [
    ...(mustBeWound ? [] : plain[name].filter(({mm}) => mm <= mostMm)),
    ...wound.filter(({mm}) => mm >= leastMm),
  ].filter((one) => one.wound !== gauge?.wound || Math.abs(one.mm - gauge.mm) > sameMm)
}

/** Write a gauge of so many inches as a maker would in this build: `.030w`, or `0.76 mm w`. */
function gaugeOf(gaugeIn: number, wound: boolean, units: 'in' | 'mm'): CommonGauge {
  if (units === 'mm') {
    const mm = (gaugeIn * inchMm).toFixed(2)
    return {text: `${mm} mm${wound ? ' w' : ''}`, mm: Number(mm), wound}
  }
  const figure = gaugeIn.toFixed(4).replace(/^0/, '').replace(/0$/, '')
  return {text: figure + (wound ? 'w' : ''), mm: gaugeIn * inchMm, wound}
}

/** What shops have, as a build of either unit would write it. */
const sold = {in: soldIn('in'), mm: soldIn('mm')}

function soldIn(units: 'in' | 'mm') {
  const gauges = (sizesIn: readonly number[], wound: boolean) =>
    sizesIn.map((gaugeIn) => gaugeOf(gaugeIn, wound, units))
  const materials = Object.keys(plainGaugesIn) as (keyof typeof plainGaugesIn)[]
  const plain = Object.fromEntries(materials.map((name) => [name, gauges(plainGaugesIn[name], false)]))
  return {
    plain: plain as Record<(typeof materials)[number], CommonGauge[]>,
    softWound: gauges(woundSoftGaugesIn, true),
    steelWound: gauges(woundGaugesIn, true),
  }
}

/** What this string would be made of at another gauge, all else as the file says or as is usual. */
function wireOf({core, wrap, material}: StringValues, {mm, wound}: CommonGauge): Wire {
  const name = material?.value ?? 'steel'
  if (!wound) return {diameterMm: mm, wound, coreKnown: false, material: name}
  const isSoft = stringMaterials[name].feel === 'nylon'
  const ownCore = core && !core.assumed ? core : undefined
  return {
    diameterMm: mm,
    wound,
    coreMm: ownCore?.mm ?? usualCoreMm(mm, isSoft ? usualSoftCores : usualCores),
    coreKnown: ownCore !== undefined,
    wrap: wrap?.value ?? (isSoft ? 'silver-plated copper' : 'nickel-plated steel'),
    material: name,
  }
}
