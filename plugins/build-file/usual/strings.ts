import {type StringMaterial, stringMaterials, usualCores, usualSoftCores} from '../../tables/strings.ts'
import {inch, inchMm} from '../../tables/units.ts'
import type {BuildValues} from '../schema/schema.ts'
import {type AssumptionRow, hasNeck, hasStrings, inches, isFretted, known, practice, slides} from './row.ts'

const isNylon = (v: BuildValues) =>
  hasStrings(v) && v.strings!.every((string) => string.material?.value === 'nylon')
const isSoft = (v: BuildValues, at: number) => {
  const material = v.strings?.[at]?.material?.value as StringMaterial | undefined
  return material !== undefined && stringMaterials[material].feel === 'nylon'
}
/** The file leaves the height at the nut to be assumed. */
const isNutDrawn = (v: BuildValues) =>
  hasStrings(v) && Boolean(v.scale?.length) && !(v.action?.octave && v.bridge?.height)
const usualNutMm = (v: BuildValues) => (slides(v) ? inch(1 / 8) : isFretted(v) ? inch(0.02) : inch(1 / 32))
const isRod = (v: BuildValues) => v.nut?.kind?.value === 'rod' || v.nut?.kind?.value === 'bolt'

/** What a nut comes to by itself, above the frets’ crowns where there are any (mm). */
function nutOwnMm(v: BuildValues): number | undefined {
  const {nut, frets} = v
  if (nut?.kind?.value === 'zero-fret') return isFretted(v) ? 0 : frets?.crown?.mm
  if (!isRod(v) || !nut?.diameter || !nut.groove) return undefined
  const mm = nut.diameter.mm - nut.groove.mm - (isFretted(v) ? (frets?.crown?.mm ?? Number.NaN) : 0)
  return mm > 0 ? mm : undefined
}

/** Where only a rod's thickness is known: what it comes to with a quarter of it in its groove (mm). */
function thinRodMm(v: BuildValues): number {
  const {nut, frets} = v
  const mm =
    isRod(v) && nut?.diameter ? 0.75 * nut.diameter.mm - (isFretted(v) ? (frets?.crown?.mm ?? 0) : 0) : 0
  return mm > 0 ? mm : Number.POSITIVE_INFINITY
}

/** What strings are usually made of, and how they lie. */
export const stringRows: readonly AssumptionRow[] = [
  {
    path: 'strings.*.material',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge && !gauge.wound && gauge.mm <= inch(0.022) + 1e-9 ? 'steel' : undefined
    },
    why: 'plain strings up to .022 are steel; common practice, no source',
    says: 'steel where plain and up to .022',
  },
  {
    path: 'strings.*.wrap',
    value: (v, i) => {
      if (!v.strings?.[i]?.gauge?.wound) return undefined
      return isSoft(v, i) ? 'silver-plated copper' : 'nickel-plated steel'
    },
    why: practice,
    says: 'nickel-plated steel where wound, silver-plated copper on nylon, gut or fluorocarbon',
  },
  {
    path: 'strings.*.core',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge?.wound && !isSoft(v, i) ? {mm: usualCoreMm(gauge.mm)} : undefined
    },
    why: 'by the gauge; the pull hardly depends on it; common practice, no source',
    says: '0.60 of the gauge at .020, 0.50 at .030, 0.42 at .042; on nylon 0.65 at .029, 0.44 at .043',
  },
  {
    path: 'strings.*.core',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge?.wound && isSoft(v, i) ? {mm: usualCoreMm(gauge.mm, usualSoftCores)} : undefined
    },
    why: 'about 0.48 mm, after three published nylon strings; the pull depends on it',
    says: '0.65 of the gauge at .029, 0.44 at .043',
  },
  {
    path: 'spacing.slots',
    value: (v) => (hasStrings(v) && hasNeck(v) ? 'centres' : undefined),
    why: practice,
    says: 'centres',
  },
  {
    path: 'spacing.nut',
    value: (v) => {
      const width = v.neck?.width?.nut?.mm
      if (!hasStrings(v) || width === undefined) return undefined
      return v.strings!.length === 1 ? {mm: 0} : width > inch(3 / 8) ? {mm: width - inch(3 / 8)} : undefined
    },
    why: 'the width less 3/16 in at each side; common practice, no source',
    says: 'the width less 3/16 in at each side',
  },
  {
    path: 'spacing.bridge',
    value: (v) => known(v.spacing?.nut?.mm),
    why: 'as at the nut; common practice, no source',
    says: 'as at the nut',
  },
  {
    path: 'action.nut',
    value: (v) => (isNutDrawn(v) ? known(nutOwnMm(v)) : undefined),
    why: 'what the nut itself comes to: a rod less its groove, or a zero fret’s own crown',
    says: 'a rod or bolt less its groove; a zero fret its own crown',
  },
  {
    path: 'action.nut',
    value: (v) => (isNutDrawn(v) ? {mm: Math.min(usualNutMm(v), thinRodMm(v))} : undefined),
    why: practice,
    says: 'slide 1/8; fingers on frets 0.020; fingers without frets 1/32',
  },
  {
    path: 'action.octave',
    value: (v) => {
      if (!hasStrings(v) || !v.scale?.length || v.bridge?.height) return undefined
      if (slides(v)) return inches(7 / 32)
      return isFretted(v) ? (isNylon(v) ? inches(7 / 64) : inches(3 / 32)) : inches(1 / 8)
    },
    why: practice,
    says: 'slide 7/32; fingers on steel frets 3/32, nylon 7/64; fingers without frets 1/8',
  },
]

/** Say how thick the core of a wound string of this gauge usually is; both in mm. Between the table's rows in a straight line. */
export function usualCoreMm(gaugeMm: number, usual = usualCores): number {
  const gaugeIn = gaugeMm / inchMm
  const upper = usual.findIndex((row) => gaugeIn <= row.gaugeIn)
  const [a, b] = upper > 0 ? [usual[upper - 1]!, usual[upper]!] : []
  if (!a || !b) return gaugeMm * usual.at(upper)!.coreFraction
  const part = (gaugeIn - a.gaugeIn) / (b.gaugeIn - a.gaugeIn)
  return gaugeMm * (a.coreFraction + part * (b.coreFraction - a.coreFraction))
}
