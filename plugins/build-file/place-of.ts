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
