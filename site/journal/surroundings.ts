import type {Build, Surroundings} from '../../plugins/build-file/schema/build.ts'
import {nearest} from '../../plugins/build-file/schema/nearest.ts'
import {buildLinked, namedFiles, plainPath} from '../../plugins/checks/own-files.ts'

/**
 * Keep of a build's surroundings what its checks can ask for, so that a new build elsewhere leaves this one's plan
 * as it was: the files and builds that it names, what its original descends from, and for each name that is not
 * there the nearest one that is.
 */
export function relevant(build: Build, {files, builds}: Surroundings): Surroundings {
  const named = namedFiles(build).map(({target}) => plainPath(target))
  const linked = named.flatMap((path) => buildLinked(path) ?? [])
  const original = build.values['based-on']?.value
  const bySlug = placed(builds, ({slug}) => slug)
  const slugs = withNearest([build.slug, ...linked, ...(original ? [original] : [])], bySlug)
  for (let slug = original; slug !== undefined; ) {
    const earlier: string | undefined = builds[bySlug.get(slug) ?? -1]?.basedOn
    slug = earlier !== undefined && !slugs.has(earlier) ? earlier : undefined
    if (slug) slugs.add(slug)
  }
  const byPath = placed(files, (file) => file)
  const paths = withNearest(named, byPath)
  return {files: inOrder(files, byPath, paths), builds: inOrder(builds, bySlug, slugs)}
}

/** Where each of a list stands, by its name: gathered once for all builds that are looked at among one list. */
function placed<T>(all: readonly T[], nameOf: (one: T) => string): Places {
  const known = placesOf.get(all)
  if (known) return known
  const places = new Map(all.map((one, at) => [nameOf(one), at]))
  placesOf.set(all, places)
  return places
}

type Places = ReadonlyMap<string, number>
const placesOf = new WeakMap<object, Places>()

/** Keep of a list what is named, in its own order. */
function inOrder<T>(all: readonly T[], places: Places, named: ReadonlySet<string>): T[] {
  const at = [...named].flatMap((name) => places.get(name) ?? [])
  return at.sort((a, b) => a - b).map((place) => all[place]!)
}

/** Add to names, for each that is not among those there are, the nearest one that is. */
function withNearest(names: readonly string[], there: Places): Set<string> {
  const near = names.flatMap((name) => (there.has(name) ? [] : (nearest(name, [...there.keys()]) ?? [])))
  return new Set([...names, ...near])
}

/** The builds that a build's prose leads to. */
export const linkedBuilds = (build: Build): Set<string> =>
  new Set(namedFiles(build).flatMap(({target}) => buildLinked(plainPath(target)) ?? []))
