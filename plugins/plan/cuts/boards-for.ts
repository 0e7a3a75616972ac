import {
  boardLengths,
  hardwoodThicknesses,
  hardwoodWidths,
  softwoodThicknesses,
  softwoodWidths,
} from '../../tables/lumber.ts'
import type {WoodRow} from '../../tables/woods.ts'

/** A board that a shop sells: its dressed size in mm, and its name there. */
export interface Board {
  size: string
  lengthMm: number
  widthMm: number
  thicknessMm: number
  /** What its thickness counts as in board feet; hardwood only. */
  countedIn?: number
}

/**
 * List the boards a wood is sold as, of the least dressed thickness that serves (mm), by growing volume: softwood in
 * dressed sizes by the standard, hardwood by thickness, width and length. Empty where none is thick enough.
 */
export function boardsFor(kind: WoodRow['kind'] | undefined, thickMm: number): Board[] {
  const serves = ({mm}: {mm: number}) => mm >= thickMm - 1e-6
  const boards = kind === 'softwood' || kind === undefined ? softwood(serves) : hardwood(serves)
  return boards.sort((a, b) => a.widthMm * a.lengthMm - b.widthMm * b.lengthMm)
}

function softwood(serves: (of: {mm: number}) => boolean): Board[] {
  const thickness = softwoodThicknesses.find(serves)
  if (!thickness) return []
  return softwoodWidths
    .filter((width) => width.mm >= thickness.mm - 1e-6)
    .flatMap((width) =>
      boardLengths.map(({feet, mm}) => ({
        size: `${thickness.nominal} × ${width.nominal}, ${feet} ft`,
        lengthMm: mm,
        widthMm: width.mm,
        thicknessMm: thickness.mm,
      })),
    )
}

function hardwood(serves: (of: {mm: number}) => boolean): Board[] {
  const thickness = hardwoodThicknesses.find(serves)
  if (!thickness) return []
  return hardwoodWidths.flatMap((widthMm) =>
    boardLengths.map(({feet, mm}) => ({
      size: `${thickness.nominal}, ${widthMm / 25.4} in wide, ${feet} ft`,
      lengthMm: mm,
      widthMm,
      thicknessMm: thickness.mm,
      countedIn: thickness.countedIn,
    })),
  )
}
