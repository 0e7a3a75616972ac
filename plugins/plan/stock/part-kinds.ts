import type {PartKind, StockPart} from './task.ts'
import {unitsPerMm, wholeUnits} from './whole-units.ts'

/** A kind of part with what decides which pieces it fits; sizes in whole units. */
export interface SizedKind extends PartKind {
  thickness: number
  wood: string
}

export const volumeOf = (it: {lengthMm: number; widthMm: number; thicknessMm: number}): number =>
  it.lengthMm * it.widthMm * it.thicknessMm

/** Put parts alike together, by falling width, then length, then thickness; a kerf is added to length and width. */
export function partKinds(parts: readonly StockPart[], kerf: number): SizedKind[] {
  const kinds = new Map<string, SizedKind>()
  for (const part of parts) {
    const [length, width, thickness] = sizesOf(part)
    const key = `${width} ${length} ${thickness} ${part.wood}`
    const kind = kinds.get(key)
    if (kind) kind.ids.push(part.id)
    else {
      const sizes = {length: length + kerf, width: width + kerf, thickness}
      kinds.set(key, {...sizes, volume: volumeOf(part), ids: [part.id], wood: part.wood})
    }
  }
  return [...kinds.values()].sort(
    (a, b) => b.width - a.width || b.length - a.length || b.thickness - a.thickness,
  )
}

/** The volume (mm³) that all parts' volumes are whole multiples of, so that two different sums differ by as much. */
export function volumeStep(parts: readonly StockPart[]): number {
  const steps = [0, 1, 2].map((side) => parts.map((part) => sizesOf(part)[side]!).reduce(commonMeasure, 0))
  return steps.reduce((product, step) => product * (step / unitsPerMm), 1)
}

const sizesOf = ({lengthMm, widthMm, thicknessMm}: StockPart): [number, number, number] => [
  wholeUnits(lengthMm),
  wholeUnits(widthMm),
  wholeUnits(thicknessMm),
]

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b))
