import type {BuildValues} from '../../build-file/schema.ts'
import type {StringMaterial, StringWrap} from '../../tables/strings.ts'

export type StringValues = NonNullable<BuildValues['strings']>[number]

/** What a string is made of; diameters in mm. Of a wound string `material` is that of its core. */
export interface Wire {
  diameterMm: number
  wound: boolean
  material?: StringMaterial
  wrap?: StringWrap
  coreMm?: number
  /** The file gives the core; else it is the usual one of the gauge. */
  coreKnown: boolean
}

/** Take from a settled string what it is made of; undefined without a gauge. */
export function stringWire({gauge, core, wrap, material}: StringValues): Wire | undefined {
  if (!gauge) return undefined
  if (!gauge.wound)
    return {diameterMm: gauge.mm, wound: false, coreKnown: false, ...(material && {material: material.value})}
  return {
    diameterMm: gauge.mm,
    wound: true,
    material: material?.value ?? 'steel',
    coreKnown: core !== undefined && !core.assumed,
    ...(wrap && {wrap: wrap.value}),
    ...(core && core.mm < gauge.mm && {coreMm: core.mm}),
  }
}
