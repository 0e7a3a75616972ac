import type {Build} from './build.ts'
import type {Kind, Leaf} from './kinds.ts'
import {type Place, wholeFile} from './problem.ts'
import {buildSchema} from './schema.ts'

/**
 * Find what the schema says at a dotted path (`neck.laminations.1.thickness`; a string also by its note,
 * `strings.D4.gauge`). A record that one value may stand for counts as that value: `neck.width`.
 */
export function kindAt(path: string, kind: Kind = buildSchema): Kind | undefined {
  if (path === '') return kind
  const [head = '', ...rest] = path.split('.')
  const tail = rest.join('.')
  if (kind.is === 'record') return kind.fields[head] ? kindAt(tail, kind.fields[head]) : undefined
  if (kind.is === 'list') return kindAt(tail, kind.item)
  if (kind.is === 'either') return kindAt(path, kind.first) ?? kindAt(path, kind.second)
  return undefined
}

/** Find the leaf that a path, or a record's one short value, stands for. */
export function leafAt(path: string): Leaf | undefined {
  return leafOf(kindAt(path))
}

function leafOf(kind: Kind | undefined): Leaf | undefined {
  if (kind?.is === 'leaf') return kind
  if (kind?.is === 'record' && kind.short?.keys.length === 1) return leafOf(kind.fields[kind.short.keys[0]!])
  if (kind?.is === 'either') return leafOf(kind.first) ?? leafOf(kind.second)
  return undefined
}

/** List every path of the schema that holds one quantity, list items as `1`. */
export function quantityPaths(kind: Kind = buildSchema, path = ''): string[] {
  if (kind.is === 'leaf')
    return kind.leaf === 'text' || kind.leaf === 'wood' || kind.leaf === 'flag' ? [] : [path]
  if (kind.is === 'record') {
    const own = leafOf(kind) && path ? [path] : []
    return [
      ...own,
      ...Object.entries(kind.fields).flatMap(([key, field]) =>
        quantityPaths(field, path ? `${path}.${key}` : key),
      ),
    ]
  }
  if (kind.is === 'list') return quantityPaths(kind.item, `${path}.1`)
  if (kind.is === 'either') return [...quantityPaths(kind.first, path), ...quantityPaths(kind.second, path)]
  return []
}

/**
 * Find the place of the value at a dotted path (`strings.1.gauge`), or, where the file does not have it,
 * that of the nearest key around it; the start of the file if there is none.
 */
export function placeOf(build: Build, path: string): Place {
  const own = build.places[path]
  if (own) return own
  for (let around = path; around.includes('.'); ) {
    around = around.slice(0, around.lastIndexOf('.'))
    const place = build.keys[around] ?? build.places[around]
    if (place) return place
  }
  return build.keys.title ?? wholeFile
}

/** Find the path under a key whose value stands at a place, where the key's own spelling is not kept. */
export function pathAt({places}: Build, under: string, {line, column}: Place): string | undefined {
  return Object.keys(places).find((path) => {
    const place = places[path]!
    return path.startsWith(`${under}.`) && place.line === line && place.column === column
  })
}
