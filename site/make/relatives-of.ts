import type {Build} from '../../plugins/build-file/build.ts'
import {changesFrom} from '../../plugins/plan/changes.ts'
import type {Relatives} from '../../plugins/sections/section.ts'

/** Find what a build was copied from and what was changed, and what was copied from it, among `shown` builds. */
export function relativesOf(build: Build, shown: readonly Build[]): Relatives {
  const original = shown.find(({slug}) => slug === build.values['based-on']?.value && slug !== build.slug)
  return {
    ...(original && {original: {...named(original), changes: changesFrom(original, build)}}),
    copies: shown
      .filter(({slug, values}) => values['based-on']?.value === build.slug && slug !== build.slug)
      .map(named),
  }
}

const named = ({slug, values}: Build) => ({slug, title: values.title?.value ?? slug})
