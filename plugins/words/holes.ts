import type {Fastener} from '../plan/fasteners/fastener.ts'
import type {Bit, HoleBit} from '../plan/kit/bits.ts'
import type {Backing, Hole, HoleUse} from '../plan/kit/hole.ts'
import {inchMm} from '../tables/units.ts'

const kinds = {
  tuner: 'tuner',
  string: 'string hole',
  pin: 'pin',
  ferrule: 'ferrule',
  sound: 'sound hole',
  jack: 'jack',
  'strap button': 'strap button',
  clearance: 'screw',
  pilot: 'screw',
} as const satisfies Record<HoleUse['hole'], string>

/** Name what a hole is for, without saying which: `ferrule`, `screw`. */
export const holeKind = ({hole}: HoleUse): string => kinds[hole]

/** Name a hole: `ferrule, D3`, `screw, clearance through block and top`. */
export function holeName(use: HoleUse): string {
  if (use.hole === 'clearance') return `screw, clearance through ${use.through.join(' and ')}`
  if (use.hole === 'pilot') return `screw, pilot into ${use.into}`
  return 'string' in use && use.string ? `${kinds[use.hole]}, ${use.string}` : kinds[use.hole]
}

/** Name a hole as it stands under its face and bit: which of a screw's two holes, or what it is for. */
export const holeGroup = ({hole}: HoleUse): string =>
  hole === 'clearance' || hole === 'pilot' ? hole : kinds[hole]

/** Name the string that a hole is for, where it is for one. */
export const stringOf = (use: HoleUse): string => ('string' in use && use.string) || ''

/** Name a bit as it is asked for: `1/4 in brad-point bit`, `35 mm Forstner bit`, `5/64 in (or 2 mm)`. */
export function bitName(of: HoleBit): string {
  if (of.with === 'brad-point') return `${bareBit(of.bit)} brad-point bit`
  if (of.with === 'twist' && of.bit && !of.or) return `${bareBit(of.bit)} twist bit`
  return of.with === 'rim' ? `${shortBitName(of)} bit` : shortBitName(of)
}

/** Name a bit so that two holes which it bores alike name it alike, whatever else would do for one of them. */
export function oneBit(of: HoleBit): string {
  const bit = of.with === 'twist' ? (of.units === 'mm' && of.or ? of.or : of.bit) : undefined
  return bit ? bareBit(bit) : bitName(of)
}

/** Name a bit where it is plain that it is one: `1/4 in`, `35 mm Forstner`. */
export function shortBitName(of: HoleBit): string {
  if (of.with === 'brad-point') return bareBit(of.bit)
  if (of.with === 'rim') return `${bareBit(of.bit)} Forstner`
  if (of.with === 'cutter') return `circle cutter set to ${cutterSize(of)}`
  const inInches = of.bit ? bareBit(of.bit) : 'a bit of the shank’s size'
  if (!of.or) return inInches
  const inMm = bareBit(of.or)
  return of.units === 'in' ? `${inInches} (or ${inMm})` : `${inMm} (or ${inInches})`
}

/** Name a bit by its size alone: `5/64 in`, `No. 34`, `E`, `2 mm`. */
export function bareBit({series, size}: Bit): string {
  if (series === 'number') return `No. ${size}`
  if (typeof size === 'string') return size
  return series === 'fraction' || series === 'forstner' ? `${sixtyFourths(size)} in` : `${size} mm`
}

const cutterSize = ({mm, units}: {mm: number; units: 'in' | 'mm'}) =>
  units === 'in' ? `${Number((mm / inchMm).toFixed(3))} in` : `${Number(mm.toFixed(1))} mm`

/** Write sixty-fourths of an inch as a fraction in its lowest terms: `1 3/8`. */
function sixtyFourths(size: number): string {
  const whole = Math.floor(size)
  let [over, under] = [Math.round((size - whole) * 64), 64]
  while (over > 0 && over % 2 === 0) [over, under] = [over / 2, under / 2]
  return [whole || '', over ? `${over}/${under}` : ''].filter(Boolean).join(' ')
}

/** What each backing is. */
export const backingWords: Readonly<Record<Backing, string>> = {
  'under top': 'scrap clamped tight under the top; finish from the other side when the point shows',
  inside: 'scrap held against the inside',
  'under head': 'scrap under the head',
  'far side': 'scrap under the far side',
  block: 'a block glued inside: the wall alone does not hold it',
}

/** Name the face that a screw's tip comes nearest to. */
export function farFace({into, way}: Pick<Fastener, 'into' | 'way'>): string {
  if (into === 'neck') return way === 'down' ? 'the back of the neck' : 'the playing face'
  if (into === 'top') return 'the top’s face'
  return way === 'along' ? `the ${into}’s far side` : `the ${into}’s ${way === 'down' ? 'underside' : 'face'}`
}

/** A hole as it is given to others. */
export interface PrintedHole extends Omit<Hole, 'what' | 'bit' | 'backing'> {
  what: string
  bit?: string | undefined
  backing?: string | undefined
}

export function printedHole(hole: Hole): PrintedHole {
  const {what, bit, backing} = hole
  return {
    ...hole,
    what: holeName(what),
    bit: bit && bitName(bit),
    backing: backing && backingWords[backing],
  }
}

/** A screw as it is given to others. */
export interface PrintedFastener extends Omit<Fastener, 'clearanceBit' | 'pilotBit'> {
  clearanceBit: string
  pilotBit: string
  /** What it would come out through. */
  farFace?: string | undefined
}

export function printedFastener(screw: Fastener): PrintedFastener {
  const {clearanceBit, pilotBit, tipToFaceMm} = screw
  return {
    ...screw,
    clearanceBit: bitName(clearanceBit),
    pilotBit: bitName(pilotBit),
    farFace: tipToFaceMm === undefined ? undefined : farFace(screw),
  }
}
