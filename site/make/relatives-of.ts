import type {Build} from '../../plugins/build-file/build.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import type {Relatives} from '../../plugins/sections/section.ts'

/** Builds by their slugs, and the copies of each: gathered once for all who ask. */
export interface Kin {
  bySlug: ReadonlyMap<string, Build>
  copies: ReadonlyMap<string, readonly Build[]>
}

/** Gather which builds were copied from which. */
export function kinOf(builds: readonly Build[]): Kin {
  const copies = new Map<string, Build[]>()
  for (const build of builds) {
    const from = build.values['based-on']?.value
    if (from === undefined || from === build.slug) continue
    copies.set(from, [...(copies.get(from) ?? []), build])
  }
  return {bySlug: new Map(builds.map((build) => [build.slug, build])), copies}
}

/** Find what a build was copied from and what was changed, and what was copied from it. */
export function relativesOf(build: Build, {bySlug, copies}: Kin): Relatives {
  const from = build.values['based-on']?.value
  const original = from === undefined || from === build.slug ? undefined : bySlug.get(from)
  return {
    ...(original && {original: {...named(original), changes: changesFrom(original, build)}}),
    copies: (copies.get(build.slug) ?? []).map(named),
  }
}

const named = ({slug, values}: Build) => ({slug, title: values.title?.value ?? slug})
