import type {Build, Surroundings} from '../../plugins/build-file/build.ts'
import {nearest} from '../../plugins/build-file/nearest.ts'
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
  const slugs = withNearest(
    [build.slug, ...linked, ...(original ? [original] : [])],
    builds.map(({slug}) => slug),
  )
  const bySlug = new Map(builds.map((one) => [one.slug, one]))
  for (let slug = original; slug !== undefined; ) {
    const earlier: string | undefined = bySlug.get(slug)?.basedOn
    slug = earlier !== undefined && !slugs.has(earlier) ? earlier : undefined
    if (slug) slugs.add(slug)
  }
  const paths = withNearest(named, files)
  return {files: files.filter((file) => paths.has(file)), builds: builds.filter(({slug}) => slugs.has(slug))}
}

/** Add to names, for each that is not among those there are, the nearest one that is. */
function withNearest(names: readonly string[], there: readonly string[]): Set<string> {
  const all = new Set(there)
  const near = names.flatMap((name) => (all.has(name) ? [] : (nearest(name, there) ?? [])))
  return new Set([...names, ...near])
}

/** The builds that a build's prose leads to. */
export const linkedBuilds = (build: Build): Set<string> =>
  new Set(namedFiles(build).flatMap(({target}) => buildLinked(plainPath(target)) ?? []))
