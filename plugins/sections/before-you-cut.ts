import type {RootContent} from 'mdast'
import {textAt} from '../build-file/path.ts'
import type {Place, Problem, Severity} from '../build-file/problem.ts'
import type {Settled} from '../plan/settle.ts'
import {type Inline, list, paragraph, problemLink, subHeading} from './kit.ts'
import {fractions} from './measures.ts'
import type {Section} from './section.ts'

/** What the checks found, gravest first, in a maker's words; a sound build is met with one short line. */
export const beforeYouCut: Section = {
  name: 'before-you-cut',
  title: 'Before you cut',
  needs: () => [],
  content: ({build, problems}) => {
    const isSound = problems.every(({severity}) => severity === 'remark')
    return [
      ...(isSound ? [paragraph('Nothing needs a look.')] : []),
      ...groups.flatMap(({heading, of}): RootContent[] => {
        const found = problems.filter(({severity}) => severity === of)
        if (found.length === 0) return []
        const items = list(found.map((problem) => worded(problem, build)))
        return [subHeading(heading), {...items, data: {hProperties: {className: [of]}}}]
      }),
    ]
  },
}

const groups: readonly {heading: string; of: Severity}[] = [
  {heading: 'Cannot be read', of: 'error'},
  {heading: 'Would not work as drawn', of: 'fault'},
  {heading: 'Look again', of: 'warning'},
  {heading: 'Good to know', of: 'remark'},
]

/** Say what it is about, in the file's own words, then what was found; the link says why and how to mend it. */
function worded(problem: Problem, build: Settled): Inline[] {
  const about = writtenAt(build, problem)
  const {message} = problem
  const sentence = (about ? message : message.charAt(0).toUpperCase() + message.slice(1)).replace(
    /(?<![.?!])$/,
    '.',
  )
  return [
    ...(about ? [{type: 'inlineCode' as const, value: about}, ': '] : []),
    ...fractions(sentence),
    ' ',
    problemLink(problem.rule, 'Why, and what to do'),
  ]
}

/**
 * Give what the front matter says at a place, as its key and value: `screws.1.length: 1`; the key alone where
 * nothing is said, undefined where the place is not in the front matter.
 */
function writtenAt(build: Settled, {line, column}: Pick<Place, 'line' | 'column'>): string | undefined {
  const isHere = ([, place]: [string, Place]) => place.line === line && place.column === column
  const longest = (all: Settled['places']) =>
    Object.entries(all)
      .filter(isHere)
      .map(([path]) => path)
      .sort((a, b) => b.length - a.length)[0]
  const path = longest(build.places) ?? longest(build.keys)
  if (!path) return undefined
  const text = textAt(build.values, path)
  return text === undefined ? path : `${path}: ${text}`
}
