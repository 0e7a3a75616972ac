import type {Build, Surroundings} from '../../plugins/build-file/build.ts'
import {buildLinked, namedFiles, plainPath} from '../../plugins/checks/own-files.ts'

/**
 * Keep of a build's surroundings what its checks can ask for, so that a new build elsewhere leaves this one's plan
 * as it was: the files and builds that it names, and what its original descends from. Where something it names is
 * missing, all is kept: the nearest name is proposed.
 */
export function relevant(build: Build, {files, builds}: Surroundings): Surroundings {
  const named = namedFiles(build)
  const paths = new Set(named.map(({target}) => plainPath(target)))
  const linked = named.flatMap(({target}) => buildLinked(plainPath(target)) ?? [])
  const own = files.filter((file) => paths.has(file))
  const wanted = new Set([build.slug, ...linked])
  const bySlug = new Map(builds.map((one) => [one.slug, one]))
  for (let slug = build.values['based-on']?.value; slug !== undefined && !wanted.has(slug); ) {
    wanted.add(slug)
    slug = bySlug.get(slug)?.basedOn
  }
  const kin = builds.filter(({slug}) => wanted.has(slug))
  const found = new Set([...own, ...kin.map(({slug}) => slug)])
  const isWhole = named.every(({target}) => {
    const path = plainPath(target)
    return found.has(path) || found.has(buildLinked(path) ?? '')
  })
  return {files: isWhole ? own : files, builds: isWhole && kin.length === wanted.size ? kin : builds}
}

/** The builds that a build's prose leads to. */
export const linkedBuilds = (build: Build): Set<string> =>
  new Set(namedFiles(build).flatMap(({target}) => buildLinked(plainPath(target)) ?? []))
