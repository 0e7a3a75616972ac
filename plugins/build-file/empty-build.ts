import type {Build} from './build.ts'

/** Make the build of a file that nothing could be read from. */
export const emptyBuild = (slug: string): Build => ({
  slug,
  values: {},
  places: {},
  keys: {},
  days: [],
  links: [],
  directives: [],
  references: [],
})
