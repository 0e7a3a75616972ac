import type {Settled} from '../part.ts'
import {smallPartMm} from './rough-size.ts'
import type {WantedPart} from './wanted-part.ts'
import {woodRow} from './wood-row.ts'

/** List the parts that the file itself lists, cut as written; one of several carries its number. */
export function listedParts({values}: Settled): WantedPart[] {
  return (values.parts ?? []).flatMap((part, i) => {
    if (!part.length || !part.width || !part.thickness) return []
    const count = part.count?.value ?? 1
    const name = part.name?.value ?? `part ${i + 1}`
    const isSmall = part.length.mm < smallPartMm
    const one = {
      ...woodRow(part),
      lengthMm: part.length.mm,
      widthMm: part.width.mm,
      thicknessMm: part.thickness.mm,
      why: `listed, cut as written${isSmall ? '; small, so cut it off its strip last' : ''}`,
      of: `parts.${i + 1}`,
    }
    return Array.from({length: count}, (_, k) => ({name: count > 1 ? `${name} ${k + 1}` : name, ...one}))
  })
}

/** How many parts the file lists in all. */
export const listedCount = ({values}: Settled): number =>
  (values.parts ?? []).reduce((sum, part) => sum + (part.count?.value ?? 1), 0)
