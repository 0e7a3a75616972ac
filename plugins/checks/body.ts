import {nearest} from '../build-file/nearest.ts'
import {keysMissingFor} from '../plan/keys-missing-for.ts'
import {planValue} from '../plan/plan-value.ts'
import {drawingViews, sectionNames} from '../tables/section-names.ts'
import type {Check, Finding} from './rule.ts'

const known: readonly string[] = [...sectionNames, 'leave-out']
const views: readonly string[] = drawingViews

/** Find directives, views and sections to leave out that nobody knows; each stays as it is. */
export const unknownDirective: Check = {
  rule: 'unknown-directive',
  find: ({directives}) =>
    directives.flatMap(({name, attributes, place}) => {
      if (!known.includes(name)) return [unknown(name, known, 'section', place, (right) => `::${right}`)]
      const view = attributes.view
      if (name === 'drawing' && view !== undefined && !views.includes(view))
        return [unknown(view, views, 'view', place, (right) => `::drawing{view=${right}}`)]
      if (name !== 'leave-out') return []
      return Object.keys(attributes)
        .filter((section) => !known.includes(section))
        .map((section) =>
          unknown(section, sectionNames, 'section', place, (right) => `::leave-out{${right}}`),
        )
    }),
}

function unknown(
  word: string,
  names: readonly string[],
  kind: string,
  at: Finding['at'],
  write: (right: string) => string,
): Finding {
  const meant = nearest(word, names)
  const message = `there is no ${kind} “${word}”${meant ? `; ${write(meant)} would do` : ''}`
  return meant
    ? {at, message, expected: [write(meant)]}
    : {at, message, note: `There are ${names.slice(0, -1).join(', ')} and ${names.at(-1)}.`}
}

/** Find a section that a file places a second time; views of the drawing are sections of their own. */
export const directiveTwice: Check = {
  rule: 'directive-twice',
  find: ({directives}) =>
    directives.flatMap((directive, at) => {
      const first = directives.slice(0, at).find((earlier) => isSame(earlier, directive))
      if (!first || directive.name === 'leave-out') return []
      const message = `::${directive.name} stands in line ${first.place.line} already; this second one is left out`
      return [{at: directive.place, message}]
    }),
}

type Directive = Parameters<Check['find']>[0]['directives'][number]

function isSame(one: Directive, other: Directive): boolean {
  return one.name === other.name && one.attributes.view === other.attributes.view
}

/** Find a file that leaves out its cautions: they stay on the page. */
export const cautionsLeftOut: Check = {
  rule: 'cautions-left-out',
  find: ({directives}) =>
    directives
      .filter(({name, attributes}) => name === 'leave-out' && 'cautions' in attributes)
      .map(({place}) => ({at: place, message: 'cautions cannot be left out; they stay on the page'})),
}

/** Find a value in a sentence that the plan does not have under that name; it stays as written. */
export const unknownValue: Check = {
  rule: 'unknown-value',
  find: ({references}, plan) =>
    references.flatMap(({path, place}) => {
      const found = planValue(plan, path)
      if (found.is !== 'unknown') return []
      const [meant] = found.likely
      const would = meant ? `; ${found.likely.join(', ')} would do` : ''
      const expected = found.likely.map((likely) => `:value[${likely}]`)
      return [{at: place, message: `there is no value “${path}”${would}`, ...(meant ? {expected} : {})}]
    }),
}

/** Find a value in a sentence that is not computed yet; the page prints it as open. */
export const openValue: Check = {
  rule: 'open-value',
  find: (build, plan) =>
    build.references.flatMap(({path, place}) => {
      const found = planValue(plan, path)
      if (found.is !== 'open') return []
      const [key] = keysMissingFor(found.pattern, build)
      const why = key ? `; it needs ${key}` : ''
      return [{at: place, message: `“${path}” is not known yet, and reads “open” on the page${why}`}]
    }),
}

/** Find prose that is nested so deep that it is not read. */
export const nestedTooDeep: Check = {
  rule: 'nested-too-deep',
  find: ({tooNested}) =>
    tooNested
      ? [
          {
            at: tooNested,
            message: 'the prose is nested too deep here to be read; close what stays open before it',
          },
        ]
      : [],
}
