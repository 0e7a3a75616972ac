import {nearest} from '../build-file/nearest.ts'
import type {Check} from './check.ts'
import {buildLinked, namedFiles, plainPath} from './own-files.ts'

/** Find a photograph, recording or linked file that is not in the build's folder, and a linked build that is not there. */
export const fileMissing: Check = {
  rule: 'file-missing',
  find: (build) => {
    const {surroundings} = build
    if (!surroundings) return []
    return namedFiles(build).flatMap(({target, at, what}) => {
      const path = plainPath(target)
      const linked = what === 'link' ? buildLinked(path) : undefined
      if (surroundings.files.includes(path) || surroundings.builds.some(({slug}) => slug === linked))
        return []
      if (path.startsWith('../') && !linked) return []
      const close = nearest(path, surroundings.files)
      return [
        {
          at,
          message: `the ${what} ${target} is not there${close ? `; was ${close} meant?` : ''}`,
          ...(close ? {expected: [close]} : {}),
        },
      ]
    })
  },
}
