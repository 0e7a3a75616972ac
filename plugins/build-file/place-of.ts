import type {Build} from './build.ts'
import {type Place, wholeFile} from './place.ts'

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
