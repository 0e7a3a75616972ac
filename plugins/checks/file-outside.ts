import type {Check} from './check.ts'
import {buildLinked, namedFiles, plainPath} from './own-files.ts'

/** Find a file that a build names outside its own folder: it would not be published. */
export const fileOutside: Check = {
  rule: 'file-outside',
  find: (build) =>
    namedFiles(build).flatMap(({target, at, what}) => {
      const path = plainPath(target)
      const isOutside = path.startsWith('../') || target.startsWith('/')
      if (!isOutside || (what === 'link' && buildLinked(path))) return []
      return [
        {
          at,
          message: `the ${what} ${target} lies outside this build’s folder and is not published; copy it beside the build`,
        },
      ]
    }),
}
