import {writeBare, writeLength} from '../build-file/quantities/write-length.ts'
import type {HoleBit} from '../plan/kit/bits.ts'
import type {AsWritten, StepFacts} from '../plan/work/step-facts.ts'
import {bitName} from './holes.ts'
import {type Ruler, saddleRuler} from './lengths.ts'
import {behindNut} from './sides.ts'

/** A step as a maker reads it. */
export interface StepWords {
  /** What it is called. */
  step: string
  does: string
  tool: string
  /** What is set on the tool: bit, fence, depth, angle. */
  setting?: string | undefined
  /** What to look at before going on. */
  check?: string | undefined
}

type Of = StepFacts['of']
type FactsOf<Name extends Of, Facts = StepFacts> = Facts extends {of: infer Some}
  ? Name extends Some
    ? Facts
    : never
  : never

/** What each sort of step says beside its name and tool. */
export type WordsOf = {
  [Name in Of]: (facts: FactsOf<Name>, by: Writing) => Omit<StepWords, 'step' | 'tool'>
}

/** How lengths are written: to the build's ruler, with and without the unit, or as the file has them. */
export interface Writing {
  units: Ruler['units']
  size: (mm: number) => string
  /** As finely as a saddle is placed. */
  fine: (mm: number) => string
  bare: (mm: number) => string
  /** A place from the nut line. */
  place: (mm: number) => string
  asWritten: (length: AsWritten) => string
}

/** Write lengths for a step. */
export function writing(ruler: Ruler): Writing {
  const size = (mm: number) => writeLength(mm, ruler)
  return {
    units: ruler.units,
    size,
    fine: (mm) => writeLength(mm, saddleRuler(ruler)),
    bare: (mm) => writeBare(mm, ruler),
    place: (mm) => `${size(Math.abs(mm))}${mm < 0 ? ` ${behindNut}` : ''}`,
    asWritten: ({mm, text}) => text ?? size(mm),
  }
}

/** Put the parts of a setting in a row; undefined where there is none. */
export function inRow(parts: readonly (string | undefined | false)[], between = ', '): string | undefined {
  return parts.filter(Boolean).join(between) || undefined
}

/** Name the bits of a step, each once. */
export const bitsInWords = (bits: readonly HoleBit[]): string => [...new Set(bits.map(bitName))].join('; ')

/** Say how long clamps stay on: `on for 1 h`, `on for 15 min`. */
export function clampsOn({clampsH}: {clampsH: number}): string {
  return `on for ${clampsH < 1 ? `${clampsH * 60} min` : `${clampsH} h`}`
}
