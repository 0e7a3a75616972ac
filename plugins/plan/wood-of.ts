import {type LooseWood, looseWoods, type WoodRow, woods} from '../tables/woods.ts'
import {type Wood, woodFacts} from './wood-facts.ts'

/** Fold case, hyphens and spaces, so that `Yellow Poplar` finds `yellow-poplar`. */
const folded = (name: string) =>
  name
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim()

const byName = new Map<string, Wood>()
const tables: readonly Readonly<Record<string, WoodRow | LooseWood>>[] = [looseWoods, woods]
for (const table of tables)
  for (const [row, {others = []}] of Object.entries(table))
    for (const name of [row, ...others]) byName.set(folded(name), woodFacts.get(row)!)

/**
 * Look a wood up by its name, another name or a loose one; the build's own density and stiffness win over the table,
 * and make up for a name that it does not have. Undefined where neither gives both.
 */
export function woodOf(
  name: string | undefined,
  own: {density?: {kgM3: number}; stiffness?: {mpa: number}} = {},
): Wood | undefined {
  const found = name === undefined ? undefined : (byName.get(name) ?? byName.get(folded(name)))
  if (!own.density && !own.stiffness) return found
  const densityKgM3 = own.density?.kgM3 ?? found?.densityKgM3
  const eMpa = own.stiffness?.mpa ?? found?.eMpa
  if (densityKgM3 === undefined || eMpa === undefined) return undefined
  const {range, ...rest} = found ?? {row: folded(name ?? 'own'), loose: false, range: undefined}
  const own12 = {...rest, densityKgM3, eMpa, g12: densityKgM3 / 1120}
  if (!range || (own.density && own.stiffness)) return own12
  const stays = (value: number) => [value, value] as const
  return {
    ...own12,
    range: {
      densityKgM3: own.density ? stays(densityKgM3) : range.densityKgM3,
      eMpa: own.stiffness ? stays(eMpa) : range.eMpa,
    },
  }
}
