import {usualCoreMm} from '../../build-file/usual/strings.ts'
import {
  plainGaugesIn,
  stringMaterials,
  thinnestWrapIn,
  usualCores,
  usualSoftCores,
  woundGaugesIn,
  woundSoftGaugesIn,
} from '../../tables/strings.ts'
import {inchMm} from '../../tables/units.ts'
import type {StringValues, Wire} from './wire.ts'

/** Plain strings up to here are steel without a word; a thicker one needs its material in the file. */
const steelWithoutWordIn = 0.022
/** Gauges no further apart than this (mm) are the same string: no shop tells them apart. */
const sameMm = 0.006

/** A gauge that shops have, in mm to as many places as a build of its unit writes. */
export interface CommonGauge {
  mm: number
  wound: boolean
}

/** List what this string could be bought as, its own gauge left out. */
export function commonGauges({gauge, core, wrap, material}: StringValues, units: 'in' | 'mm'): CommonGauge[] {
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

/** What shops have, as a build of either unit would write it. */
const sold = {in: soldIn('in'), mm: soldIn('mm')}

function soldIn(units: 'in' | 'mm') {
  const mmOf = (gaugeIn: number) =>
    units === 'in' ? gaugeIn * inchMm : Number((gaugeIn * inchMm).toFixed(2))
  const gauges = (sizesIn: readonly number[], wound: boolean) =>
    sizesIn.map((gaugeIn): CommonGauge => ({mm: mmOf(gaugeIn), wound}))
  const materials = Object.keys(plainGaugesIn) as (keyof typeof plainGaugesIn)[]
  const plain = Object.fromEntries(materials.map((name) => [name, gauges(plainGaugesIn[name], false)]))
  return {
    plain: plain as Record<(typeof materials)[number], CommonGauge[]>,
    softWound: gauges(woundSoftGaugesIn, true),
    steelWound: gauges(woundGaugesIn, true),
  }
}

/** What this string would be made of at another gauge, all else as the file says or as is usual. */
export function wireOf({core, wrap, material}: StringValues, {mm, wound}: CommonGauge): Wire {
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
