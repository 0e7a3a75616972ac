import {inchMm} from '../../tables/units.ts'
import {woodOf} from '../kit/woods.ts'

/** What a part is; its name is in the words room. */
export interface PartCalled {
  is: 'neck' | 'neck-lamination' | 'neck-cap' | 'head-plate' | 'fingerboard' | 'end-block' | 'block' | 'part'
  /** As the file calls a part that it lists. */
  own?: string | undefined
  /** Which lamination, block or listed part without a name it is, where there are several. */
  number?: number | undefined
  /** Which strip of its lamination. */
  strip?: number | undefined
  /** Which of several that one row lists. */
  copy?: number | undefined
}

/** A part to cut. */
export interface Part {
  id: string
  called: PartCalled
  /** As written; `any` where the file does not say. */
  wood: string
  /** As sawn. */
  lengthMm: number
  widthMm: number
  thicknessMm: number
  /** Why it has its size. */
  why: 'listed' | Finish
  /** The path of the build file it comes from. */
  of: string
  /** So short that it is cut off its strip last. */
  isSmall: boolean
  /** What asks for it is proposed. */
  proposed?: true | undefined
}

/** A part as the build file implies or lists it. */
export interface WantedPart extends Omit<Part, 'id' | 'isSmall'> {
  /** Its row of the wood table: parts are cut from pieces of the same row. */
  woodRow: string
}

export interface Size {
  lengthMm: number
  widthMm: number
  thicknessMm: number
}

/** What a part that the design implies comes to once its faces are planed. */
export interface Finish extends Size {
  /** Planed off each face. */
  planeMm: number
  /** What the length of a whole neck blank counts, both ends among it; of any other part it is its own. */
  blank?: 'scarf' | 'leaning head' | 'plain' | undefined
}

/** Added at each end of a part that the design implies (mm): common practice, no source. */
export const endAllowanceMm = inchMm / 2

/** Shorter than this a part is cut off its strip last of all (mm): common practice, no source. */
export const smallPartMm = 12 * inchMm

interface Named {
  wood?: {value: string}
  density?: {kgM3: number}
  stiffness?: {mpa: number}
}

/** Name what something is made of, as written and by the row of the wood table that decides what matches it. */
export function woodRow({wood, ...own}: Named): {wood: string; woodRow: string} {
  const name = wood?.value.trim()
  if (!name || name.toLowerCase() === 'any') return {wood: 'any', woodRow: 'any'}
  return {wood: name, woodRow: woodOf(name, own)?.row ?? name.toLowerCase().replace(/[\s-]+/g, ' ')}
}
