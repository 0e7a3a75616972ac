import type {Build} from '../build-file/build.ts'
import type {Place} from '../build-file/problem.ts'

/**
 * Give what the front matter says at a place, as its key and value: `screws.1.length: 1`; the key alone where
 * nothing is said, undefined where the place is not in the front matter.
 */
export function writtenAt(build: Build, {line, column}: Pick<Place, 'line' | 'column'>): string | undefined {
  const isHere = ([, place]: [string, Place]) => place.line === line && place.column === column
  const longest = (all: Build['places']) =>
    Object.entries(all)
      .filter(isHere)
      .map(([path]) => path)
      .sort((a, b) => b.length - a.length)[0]
  const path = longest(build.places) ?? longest(build.keys)
  if (!path) return undefined
  const text = textAt(build, path)
  return text === undefined ? path : `${path}: ${text}`
}

function textAt({values}: Build, path: string): string | undefined {
  let at: unknown = values
  for (const key of path.split('.'))
    at = Array.isArray(at) ? at[Number(key) - 1] : (at as Record<string, unknown> | undefined)?.[key]
  return (at as {text?: string} | undefined)?.text
}
