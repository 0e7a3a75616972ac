import {nearest} from '../build-file/nearest.ts'
import type {RuleText} from '../build-file/rules.ts'
import {buildLinked, namedFiles, plainPath} from './own-files.ts'
import {rule} from './rule.ts'

export const journalRules = {
  'based-on-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A build that was copied from one that is not in the journal.',
    why: 'Its page cannot show what was changed.',
    mend: 'Name the build by its slug, as in its address.',
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
  }),
  'based-on-circle': rule({
    severity: 'fault',
    about: 'journal',
    what: 'Builds that were copied from each other in a circle.',
    why: 'A line of builds has a first one.',
    mend: 'Leave based-on out in the build that came first.',
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
  }),
  'finished-before-started': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A build that was finished before it was started.',
    why: 'One of the two dates is a slip, and builds are sorted by them.',
    mend: 'Mend the date that is wrong.',
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
  }),
  'file-missing': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A photograph, recording or link whose file is not there.',
    why: 'The page would show a gap.',
    mend: 'Lay the file beside the build, or mend its name.',
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
  }),
  'file-outside': rule({
    severity: 'warning',
    about: 'journal',
    what: 'A file outside the folder of the build.',
    why: 'Only what lies in the folder of a build is published with it.',
    mend: 'Copy it into the folder of the build.',
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
  }),
  'alt-missing': rule({
    severity: 'remark',
    about: 'journal',
    what: 'A photograph without words for those who do not see it.',
    why: 'A reader with a screen reader, or without the picture, learns nothing from it.',
    mend: 'Write a few words in the square brackets before its address.',
    find: ({links}) =>
      links
        .filter(({isPicture, alt}) => isPicture && !alt?.trim())
        .map(({target, place}) => ({
          at: place,
          message: `${target} has no words for those who do not see it; its caption is used. Write them in the square brackets: ![the box from the front](${target})`,
        })),
  }),
}

/** Found where the files of a journal are opened, and not by looking at a build and its plan. */
export const openingRules = {
  'build-twice': {
    severity: 'error',
    about: 'journal',
    what: 'A build that is there twice, as SLUG.md and as SLUG/index.md.',
    why: 'Only one of the two can be published.',
    mend: 'Keep one.',
  },
  'picture-unreadable': {
    severity: 'warning',
    about: 'journal',
    what: 'A photograph that cannot be opened.',
    why: 'Its name stands in its place on the page.',
    mend: 'Save it as JPEG, PNG or WebP.',
  },
  'program-fails': {
    severity: 'error',
    about: 'file',
    what: 'A build file that this program fails on.',
    why: 'It is the program’s own fault; every other build goes on.',
    mend: 'Take out the last change, and report the file.',
  },
} satisfies Record<string, RuleText>
