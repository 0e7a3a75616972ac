import {nearest} from '../../build-file/schema/nearest.ts'
import {isWritten} from '../../build-file/schema/path.ts'
import type {BuildValues} from '../../build-file/schema/schema.ts'
import {type LooseWood, looseWoods, type WoodRow, woods} from '../../tables/woods.ts'
import {woodOf} from './woods.ts'

/** A wood that the build names and the table does not know. */
export interface UnknownWood {
  path: string
  wood: string
  /** The nearest name that the table knows. */
  nearest?: string | undefined
}

const tables: readonly Readonly<Record<string, WoodRow | LooseWood>>[] = [looseWoods, woods]
const names = tables.flatMap((table) =>
  Object.entries(table).flatMap(([row, {others = []}]) => [row, ...others]),
)

const isTree = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null && !isWritten(value)

/** What holds keys of the maker's own, among which `wood` is no wood. */
const ownWords: readonly string[] = ['accept', 'measured', 'played', 'tolerances']

/** List the woods that the build names and the table does not know, with the nearest name that it does. */
export function planUnknownWoods(values: BuildValues): UnknownWood[] | undefined {
  const found: UnknownWood[] = []
  const keys: (string | number)[] = []
  const look = (tree: Record<string, unknown>) => {
    const own = tree as {wood?: {value: string}; density?: {kgM3: number}; stiffness?: {mpa: number}}
    const wood = own.wood?.value
    // A head's plate only weighs.
    const onlyWeighs = keys.at(-1) === 'plate' && own.density
    const mayBeAny = wood === 'any' && keys[0] === 'parts'
    if (wood !== undefined && !mayBeAny && !onlyWeighs && !woodOf(wood, own))
      found.push({path: [...keys, 'wood'].join('.'), wood, nearest: nearest(wood, names)})
    for (const key of Object.keys(tree)) {
      const value = tree[key]
      if (!isTree(value) || (keys.length === 0 && ownWords.includes(key))) continue
      keys.push(key)
      if (!Array.isArray(value)) look(value)
      else
        for (const [i, item] of value.entries())
          if (isTree(item)) {
            keys.push(i + 1)
            look(item)
            keys.pop()
          }
      keys.pop()
    }
  }
  look(values as Record<string, unknown>)
  return found.length > 0 ? found : undefined
}
