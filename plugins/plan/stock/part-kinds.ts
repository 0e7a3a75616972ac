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
  const kinds: SizedKind[] = []
  const byLength = new Map<number, SizedKind[]>()
  for (const {id, wood, lengthMm, widthMm, thicknessMm} of parts) {
    const length = wholeUnits(lengthMm) + kerf
    const width = wholeUnits(widthMm) + kerf
    const thickness = wholeUnits(thicknessMm)
    const asLong = byLength.get(length)
    const known = asLong?.find(
      (kind) => kind.width === width && kind.thickness === thickness && kind.wood === wood,
    )
    if (known) {
      known.ids.push(id)
      continue
    }
    const volume = lengthMm * widthMm * thicknessMm
    const kind = {length, width, thickness, volume, ids: [id], wood}
    kinds.push(kind)
    if (asLong) asLong.push(kind)
    else byLength.set(length, [kind])
  }
  return kinds.sort((a, b) => b.width - a.width || b.length - a.length || b.thickness - a.thickness)
}

/** The volume (mm³) that all parts' volumes are whole multiples of, so that two different sums differ by as much. */
export function volumeStep(parts: readonly StockPart[]): number {
  let [length, width, thickness] = [0, 0, 0]
  for (const part of parts) {
    length = commonMeasure(length, wholeUnits(part.lengthMm))
    width = commonMeasure(width, wholeUnits(part.widthMm))
    thickness = commonMeasure(thickness, wholeUnits(part.thicknessMm))
  }
  return (length / unitsPerMm) * (width / unitsPerMm) * (thickness / unitsPerMm)
}

const commonMeasure = (a: number, b: number): number => (b === 0 ? a : commonMeasure(b, a % b))
