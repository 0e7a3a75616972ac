import {asMade} from '../build-file/schema/as-made.ts'
import type {Build} from '../build-file/schema/build.ts'
import {leavesOf, stringNames} from '../build-file/schema/path.ts'
import type {BuildValues} from '../build-file/schema/schema.ts'
import type {Written} from '../build-file/schema/values.ts'

/** A dimension that a build has otherwise than the one it was copied from; either text is absent where it has none. */
export interface Change {
  /** Path of the front matter, a string by its note: `strings.D4.gauge`. */
  path: string
  /** As written there, or as measured on it. */
  was?: string | undefined
  is?: string | undefined
}

// What says how an instrument is made; the rest tells its story.
// biome-ignore format: words in lines
const dimensions = [
  'play', 'handed', 'reference-pitch', 'scale', 'frets', 'nut', 'bridge', 'action', 'strings', 'spacing', 'neck',
  'head', 'fingerboard', 'box', 'tuners', 'anchors', 'screws', 'pickup', 'finish', 'markings', 'extras',
] as const satisfies (keyof BuildValues)[]

/**
 * List what a build changes on the one it was copied from, in the order of its own file, then what it drops.
 * Values are compared, not spellings: `3/4` and `0.75` are the same. What was measured on the original wins, but for
 * what was then set right (`mended`: its paths).
 */
export function changesFrom(original: Build, build: Build, mended: readonly string[] = []): Change[] {
  const names = stringNames(build.values.strings)
  const oldNames = stringNames(original.values.strings)
  const before = written(original, oldNames.length === names.length ? names : oldNames)
  for (const {path, value} of asMade(original.values, mended)) before.set(path, value)
  const now = written(build, names)
  return [...new Set([...now.keys(), ...before.keys()])].flatMap((path) => {
    const was = before.get(path)
    const is = now.get(path)
    if (was && is && meaning(was) === meaning(is)) return []
    return [{path, was: was?.text, is: is?.text}]
  })
}

/** What is written of the dimensions; what is assumed or proposed is not. */
function written({values}: Build, names: readonly string[]): Map<string, Written> {
  const leaves = dimensions.flatMap((key) => leavesOf(values[key], key))
  const named = (path: string) => path.replace(/^strings\.(\d+)/, (_, at) => `strings.${names[at - 1]}`)
  return new Map(
    leaves.flatMap(([path, value]) => (value.assumed || value.proposed ? [] : [[named(path), value]])),
  )
}

/** Give what a value says, so that spellings of one value compare equal, in inches or in millimetres. */
function meaning({text: _, place: __, ...value}: Written): string {
  const rounded = (_key: string, part: unknown) =>
    typeof part === 'number' ? Number(part.toPrecision(9)) : part
  return JSON.stringify(Object.entries(value).sort(), rounded)
}
