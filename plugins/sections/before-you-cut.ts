import type {RootContent} from 'mdast'
import type {Build} from '../build-file/build.ts'
import type {Problem, Severity} from '../build-file/problem.ts'
import {fractions, type Inline, list, paragraph, problemLink, subHeading} from './kit.ts'
import type {Section} from './section.ts'
import {writtenAt} from './written-at.ts'

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
function worded(problem: Problem, build: Build): Inline[] {
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
