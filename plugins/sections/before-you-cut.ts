import type {RootContent} from 'mdast'
import {textAt} from '../build-file/schema/path.ts'
import type {Place, Problem, Severity} from '../build-file/schema/problem.ts'
import type {Settled} from '../plan/kit/settled.ts'
import type {SectionName} from '../tables/section-names.ts'
import {foundInWords, nextInWords} from '../words/state.ts'
import {fold, type Inline, link, list, paragraph, problemLink, strong, subHeading} from './kit.ts'
import {fractions} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/**
 * How it stands, in one line: what the checks found, what comes next or what to set up, and how much is assumed.
 * What was found is folded below it, gravest first, in a maker's words.
 */
export const beforeYouCut: Section = {
  name: 'before-you-cut',
  title: 'Before you cut',
  needs: () => [],
  content: (input) => {
    const {build, problems} = input
    const paths = pathsByPlace(build)
    const found = groups.flatMap(({heading, of}): RootContent[] => {
      const here = problems.filter(({severity}) => severity === of)
      if (here.length === 0) return []
      const items = list(here.map((problem) => worded(problem, paths.get(placeKey(problem)), build)))
      return [subHeading(heading), {...items, data: {hProperties: {className: [of]}}}]
    })
    const isSound = problems.every(({severity}) => severity === 'remark')
    return [
      paragraph(...stateInWords(input)),
      ...fold(isSound ? 'Good to know' : 'What was found, and what would do', found),
    ]
  },
}

function stateInWords({plan, problems, isOnPage = () => true}: SectionInput): Inline[] {
  const found = foundInWords(problems)
  // What would not work is mended before anything else.
  const isStopped = problems.some(({severity}) => severity === 'error' || severity === 'fault')
  const next = isStopped ? undefined : nextInWords(plan)
  const assumed = plan.assumptions.length
  const leads = (name: SectionName, address: string, words: string): Inline =>
    isOnPage(name) ? link(address, words) : words
  return [
    ...(found ? [strong(found), '.'] : ['Nothing needs a look.']),
    ...(next?.is === 'step' ? [' Next: ', link(`/builds/${plan.slug}/bench/`, next.says), '.'] : []),
    ...(next?.is === 'move' ? [' Now: ', leads('setting-up', '#setting-up', next.says), '.'] : []),
    ...(assumed > 0
      ? [
          ' ',
          leads('assumptions', '#assumptions', assumed === 1 ? 'One value' : `${assumed} values`),
          assumed === 1 ? ' is assumed.' : ' are assumed.',
        ]
      : []),
  ]
}

const groups: readonly {heading: string; of: Severity}[] = [
  {heading: 'Cannot be read', of: 'error'},
  {heading: 'Would not work as drawn', of: 'fault'},
  {heading: 'Look again', of: 'warning'},
  {heading: 'Good to know', of: 'remark'},
]

/** Say what it is about, in the file's own words, then what was found; the link says why and how to mend it. */
function worded(problem: Problem, path: string | undefined, build: Settled): Inline[] {
  const about = path === undefined ? undefined : written(build, path)
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

/** Give what the front matter says at a path, as its key and value: `screws.1.length: 1`; the key alone where nothing is. */
function written(build: Settled, path: string): string {
  const text = textAt(build.values, path)
  return text === undefined ? path : `${path}: ${text}`
}

const placeKey = ({line, column}: Pick<Place, 'line' | 'column'>): string => `${line}:${column}`

/** Find the longest path of the front matter at each place where a value, or else a key, begins. */
function pathsByPlace({places, keys}: Settled): Map<string, string> {
  const paths = new Map<string, string>()
  for (const [path, place] of Object.entries(keys)) addLonger(paths, placeKey(place), path)
  const ofValues = new Map<string, string>()
  for (const [path, place] of Object.entries(places)) addLonger(ofValues, placeKey(place), path)
  return new Map([...paths, ...ofValues])
}

function addLonger(paths: Map<string, string>, place: string, path: string): void {
  if (path.length > (paths.get(place)?.length ?? -1)) paths.set(place, path)
}
