import type {Build, Directive} from '../build-file/build.ts'
import {nearest} from '../build-file/nearest.ts'
import type {Plan} from '../plan/plan.ts'
import {drawingViews, sectionNames} from '../tables/section-names.ts'
import {keysMissingFor, planValue} from '../words/plan-value.ts'
import {printedPlan} from '../words/printed-plan.ts'
import {type Finding, rule} from './rule.ts'

const known: readonly string[] = [...sectionNames, 'leave-out']
const views: readonly string[] = drawingViews

export const bodyRules = {
  'unknown-directive': rule({
    severity: 'warning',
    about: 'file',
    what: 'A line such as ::layout that names no section or view.',
    why: 'It cannot be filled, and stays on the page as it was written.',
    mend: 'Use the name proposed, or take the line out.',
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
  }),
  'directive-twice': rule({
    severity: 'warning',
    about: 'file',
    what: 'A section placed twice.',
    why: 'It stands where it was placed first, and the second one is left out.',
    mend: 'Take one of the two lines out.',
    find: ({directives}) =>
      directives.flatMap((directive, at) => {
        const first = directives.slice(0, at).find((earlier) => isSame(earlier, directive))
        if (!first || directive.name === 'leave-out') return []
        const message = `::${directive.name} stands in line ${first.place.line} already; this second one is left out`
        return [{at: directive.place, message}]
      }),
  }),
  'cautions-left-out': rule({
    severity: 'warning',
    about: 'file',
    what: 'A file that leaves out its cautions.',
    why: 'Whoever works from the page must be able to see what could hurt.',
    mend: 'Take cautions out of leave-out; they stay on the page.',
    find: ({directives}) =>
      directives
        .filter(({name, attributes}) => name === 'leave-out' && 'cautions' in attributes)
        .map(({place}) => ({at: place, message: 'cautions cannot be left out; they stay on the page'})),
  }),
  'unknown-value': rule({
    severity: 'warning',
    about: 'file',
    what: 'A value in a sentence that the plan does not have.',
    why: 'It cannot be filled in, and stays on the page as it was written.',
    mend: 'Use the name proposed; strings go by their notes and lines by their labels.',
    find: ({references}, plan) =>
      valuesAt(references, plan).flatMap(({path, place, found}) => {
        if (found.is !== 'unknown') return []
        const [meant] = found.likely
        const would = meant ? `; ${found.likely.join(', ')} would do` : ''
        const expected = found.likely.map((likely) => `:value[${likely}]`)
        return [{at: place, message: `there is no value “${path}”${would}`, ...(meant ? {expected} : {})}]
      }),
  }),
  'open-value': rule({
    severity: 'warning',
    about: 'file',
    what: 'A value in a sentence that is not computed yet.',
    why: 'It reads “open” on the page until the file has what it needs.',
    mend: 'Fill in the key that is named, or take the value out of the sentence.',
    find: (build, plan) =>
      valuesAt(build.references, plan).flatMap(({path, place, found}) => {
        if (found.is !== 'open') return []
        const [key] = keysMissingFor(found.pattern, build)
        const why = key ? `; it needs ${key}` : ''
        return [{at: place, message: `“${path}” is not known yet, and reads “open” on the page${why}`}]
      }),
  }),
  'nested-too-deep': rule({
    severity: 'error',
    about: 'file',
    what: 'Prose with hundreds of quotations, lists, stresses or HTML elements inside each other.',
    why: 'Nothing of it could be read or shown.',
    mend: 'Close what stays open, or take the signs out.',
    find: ({tooNested}) =>
      tooNested
        ? [
            {
              at: tooNested,
              message: 'the prose is nested too deep here to be read; close what stays open before it',
            },
          ]
        : [],
  }),
}

/** Look every value up that a sentence names. */
function valuesAt(references: Build['references'], plan: Plan) {
  if (references.length === 0) return []
  const printed = printedPlan(plan)
  return references.map(({path, place}) => ({path, place, found: planValue(printed, path)}))
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

function isSame(one: Directive, other: Directive): boolean {
  return one.name === other.name && one.attributes.view === other.attributes.view
}
