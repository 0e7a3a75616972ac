import {nearest} from '../build-file/nearest.ts'
import {buildLinked, namedFiles, plainPath} from './own-files.ts'
import type {Check} from './rule.ts'

/** Find a build that was copied from one that the journal does not have. */
export const basedOnMissing: Check = {
  rule: 'based-on-missing',
  find: ({values, surroundings}) => {
    const named = values['based-on']?.value
    if (named === undefined || !surroundings || surroundings.builds.some(({slug}) => slug === named))
      return []
    const close = nearest(
      named,
      surroundings.builds.map(({slug}) => slug),
    )
    return [
      {
        at: 'based-on',
        message: `there is no build ${named} in this journal${close ? `; was ${close} meant?` : ''}`,
        ...(close ? {expected: [close]} : {}),
      },
    ]
  },
}

/** Find a build that was copied, over others or at once, from itself. */
export const basedOnCircle: Check = {
  rule: 'based-on-circle',
  find: ({slug, surroundings}) => {
    const from = new Map(surroundings?.builds.map((build) => [build.slug, build.basedOn]))
    const line = [slug]
    for (let next = from.get(slug); next !== undefined && line.length <= from.size; next = from.get(next)) {
      line.push(next)
      if (next === slug)
        return [
          {
            at: 'based-on',
            message: `this build is copied from itself: ${line.join(' from ')}; leave based-on out in the one that came first`,
          },
        ]
    }
    return []
  },
}

/** Find a build that was done before it was begun. */
export const finishedBeforeStarted: Check = {
  rule: 'finished-before-started',
  find: ({values: {started, finished}}) =>
    started && finished && finished.iso < started.iso
      ? [
          {
            at: 'finished',
            cause: 'started',
            message: `finished ${finished.iso} is before started ${started.iso}; one of the two is a slip`,
          },
        ]
      : [],
}

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

/** Find a photograph of the prose without words for those who do not see it. */
export const altMissing: Check = {
  rule: 'alt-missing',
  find: ({links}) =>
    links
      .filter(({isPicture, alt}) => isPicture && !alt?.trim())
      .map(({target, place}) => ({
        at: place,
        message: `${target} has no words for those who do not see it; its caption is used. Write them in the square brackets: ![the box from the front](${target})`,
      })),
}
