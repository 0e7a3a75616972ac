import type {Build} from '../build-file/build.ts'
import {valueNeeds} from '../tables/value-needs.ts'

/**
 * Name the keys of the build file that a value of the plan (by its name with `*`) still needs; where a string has
 * what the others lack, that string's own. Empty where nothing more can be named.
 */
export function keysMissingFor(pattern: string, build: Build): string[] {
  const [, keys = []] =
    valueNeeds
      .filter(([start]) => pattern.startsWith(start))
      .sort(([a], [b]) => b.length - a.length)
      .at(0) ?? []
  const missing = keys.filter((key) => !isGiven(build, key))
  // Either a single wood or laminations will do.
  const woods = ['neck.wood', 'neck.laminations']
  const still = woods.some((key) => isGiven(build, key))
    ? missing.filter((key) => !woods.includes(key))
    : missing
  if (still.length > 0 || !pattern.startsWith('strings.*.')) return still
  const at = (build.values.strings ?? []).findIndex((string) => !string.note || !string.gauge)
  if (at < 0) return []
  return [`strings.${at + 1}.${build.values.strings?.[at]?.note ? 'gauge' : 'note'}`]
}

function isGiven({values}: Build, path: string): boolean {
  let at: unknown = values
  for (const key of path.split('.')) at = (at as Record<string, unknown> | undefined)?.[key]
  return at !== undefined
}
