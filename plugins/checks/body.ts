import type {Build, Directive} from '../build-file/schema/build.ts'
import {nearest} from '../build-file/schema/nearest.ts'
import type {Plan} from '../plan/plan.ts'
import {callsOf, stepCalled} from '../plan/work/step.ts'
import {drawingViews, sectionNames} from '../tables/section-names.ts'
import * as words from '../words/findings/body.ts'
import {keysMissingFor, planValue} from '../words/plan-value.ts'
import {printedPlan} from '../words/printed-plan.ts'
import {rule} from './rule.ts'

/** One reading alone of a day's own figures is certain. */
const found = ({written, expected, place}: NonNullable<Build['unclear']>[number]) => ({
  at: place,
  written,
  likely: expected,
  sure: expected.length === 1 && !/^\d{4}-\d\d-\d\d$/.test(written),
})

const known: readonly string[] = [...sectionNames, 'leave-out']
const views: readonly string[] = drawingViews

/** Write a whole file with nothing but prose. */
const prose = (text: string) => `---\ntitle: Needle box\nscale: 24\n---\n\n${text}\n`

/** The same of a build that there is work on. */
const work = (text: string) =>
  `---\ntitle: Needle box\nscale: 24\nneck: {width: 1 1/2, thickness: 3/4, wood: poplar}\n---\n\n${text}\n`

export const bodyRules = {
  'day-unclear': rule({
    severity: 'warning',
    about: 'file',
    what: 'A heading that looks like a day, in another form than year-month-day, or a day that no calendar has.',
    why: 'It begins no day of the journal, and its hours are not counted.',
    mend: 'Write the day as 2026-03-07 at the start of the heading.',
    passes: prose('## 2026-03-07 Milling'),
    fails: prose('## 3/7/26 Milling'),
    find: ({unclear = []}) => unclear.filter(({is}) => is === 'day').map(found),
    says: words.dayUnclear,
  }),
  'hours-unclear': rule({
    severity: 'warning',
    about: 'file',
    what: 'Hours at the end of a heading, in a form that is not read.',
    why: 'They are not counted.',
    mend: 'Write them as (1 h 30 min).',
    passes: prose('## 2026-03-07 Milling (1 h 30 min)'),
    fails: prose('## 2026-03-07 Milling (1:30)'),
    find: ({unclear = []}) => unclear.filter(({is}) => is === 'hours').map(found),
    says: words.hoursUnclear,
  }),
  'unknown-directive': rule({
    severity: 'warning',
    about: 'file',
    what: 'A line such as ::layout that names no section or view.',
    why: 'It cannot be filled, and stays on the page as it was written.',
    mend: 'Use the name proposed, or take the line out.',
    passes: prose('::layout'),
    fails: prose('::layuot'),
    find: ({directives}) =>
      directives.flatMap(({name, attributes, place: at}) => {
        if (!known.includes(name)) return [{at, ...meant('section', name, known, (right) => `::${right}`)}]
        const view = attributes.view
        if (name === 'drawing' && view !== undefined && !views.includes(view))
          return [{at, ...meant('view', view, views, (right) => `::drawing{view=${right}}`)}]
        if (name !== 'leave-out') return []
        return Object.keys(attributes)
          .filter((section) => !known.includes(section))
          .map((section) => ({
            at,
            ...meant('section', section, sectionNames, (right) => `::leave-out{${right}}`),
          }))
      }),
    says: words.unknownDirective,
  }),
  'directive-twice': rule({
    severity: 'warning',
    about: 'file',
    what: 'A section placed twice.',
    why: 'It stands where it was placed first, and the second one is left out.',
    mend: 'Take one of the two lines out.',
    passes: prose('::drawing{view=top}\n\n::drawing{view=side}'),
    fails: prose('::drawing{view=top}\n\n::drawing{view=top}'),
    find: ({directives}) =>
      directives.flatMap((directive, i) => {
        const first = directives.slice(0, i).find((earlier) => isSame(earlier, directive))
        if (!first || directive.name === 'leave-out') return []
        return [{at: directive.place, name: directive.name, firstLine: first.place.line}]
      }),
    says: words.directiveTwice,
  }),
  'cautions-left-out': rule({
    severity: 'warning',
    about: 'file',
    what: 'A file that leaves out its cautions.',
    why: 'Whoever works from the page must be able to see what could hurt.',
    mend: 'Take cautions out of leave-out; they stay on the page.',
    passes: prose('::leave-out{layout}'),
    fails: prose('::leave-out{layout cautions}'),
    find: ({directives}) =>
      directives
        .filter(({name, attributes}) => name === 'leave-out' && 'cautions' in attributes)
        .map(({place}) => ({at: place})),
    says: words.cautionsLeftOut,
  }),
  'unknown-value': rule({
    severity: 'warning',
    about: 'file',
    what: 'A value in a sentence that the plan does not have.',
    why: 'It cannot be filled in, and stays on the page as it was written.',
    mend: 'Use the name proposed; strings go by their notes and lines by their labels.',
    passes: prose('The strings sound over :value[scale.length].'),
    fails: prose('The strings sound over :value[scale.lenght].'),
    find: ({references}, plan) =>
      valuesAt(references, plan).flatMap(({path, at, value}) =>
        value.is === 'unknown' ? [{at, path, meant: value.likely}] : [],
      ),
    says: words.unknownValue,
  }),
  'unknown-step': rule({
    severity: 'warning',
    about: 'file',
    what: 'A step that :step[...] names and that the work on this build does not have.',
    why: 'It ticks nothing, and stays on the page as it was written.',
    mend: 'Use the name proposed, as it stands on the bench sheet.',
    passes: work(':step[Saw the scarf] in the morning.'),
    fails: work(':step[Saw the scraf] in the morning.'),
    find: ({steps = []}, {work: planned}) =>
      planned
        ? steps.flatMap(({name, place: at}) =>
            stepCalled(name, planned)
              ? []
              : [
                  {
                    at,
                    name,
                    likely: nearest(
                      name,
                      planned.flatMap((step) => callsOf(step)),
                    ),
                  },
                ],
          )
        : [],
    says: words.unknownStep,
  }),
  'open-value': rule({
    severity: 'warning',
    about: 'file',
    what: 'A value in a sentence that is not computed yet.',
    why: 'It reads “open” on the page until the file has what it needs.',
    mend: 'Fill in the key that is named, or take the value out of the sentence.',
    passes: prose('The strings sound over :value[scale.length].'),
    fails: prose('The box holds :value[box.volume].'),
    find: (build, plan) =>
      valuesAt(build.references, plan).flatMap(({path, at, value}) =>
        value.is === 'open' ? [{at, path, needs: keysMissingFor(value.pattern, build)[0]}] : [],
      ),
    says: words.openValue,
  }),
  'nested-too-deep': rule({
    severity: 'error',
    about: 'file',
    what: 'Prose with hundreds of quotations, lists, stresses or HTML elements inside each other.',
    why: 'Nothing of it could be read or shown.',
    mend: 'Close what stays open, or take the signs out.',
    passes: prose('> > > Three quotations inside each other.'),
    fails: prose(`${'> '.repeat(1000)}A thousand of them.`),
    find: ({tooNested}) => (tooNested ? [{at: tooNested}] : []),
    says: words.nestedTooDeep,
  }),
  'too-much-prose': rule({
    severity: 'error',
    about: 'file',
    what: 'Prose with more than ten thousand cells of tables, a thousand headings, five thousand items of lists, ten thousand lines of one paragraph, five hundred definitions, or half a million letters of repeated addresses.',
    why: 'A short file can stand for a page that no browser opens, so it is not read.',
    mend: 'Take most of them out, or part the build into several.',
    passes: prose('| a | b |\n| - | - |\n| 1 | 2 |'),
    fails: prose('## Again\n'.repeat(1001)),
    find: ({tooMuch}) => (tooMuch ? [{at: tooMuch.place, of: tooMuch.of}] : []),
    says: words.tooMuchProse,
  }),
}

function meant(
  kind: 'section' | 'view',
  word: string,
  names: readonly string[],
  write: (right: string) => string,
) {
  const close = nearest(word, names)
  return {kind, word, names, likely: close && write(close)}
}

/** Look up every value that a sentence names. */
function valuesAt(references: Build['references'], plan: Plan) {
  if (references.length === 0) return []
  const printed = printedPlan(plan)
  return references.map(({path, place}) => ({path, at: place, value: planValue(printed, path)}))
}

const isSame = (one: Directive, other: Directive): boolean =>
  one.name === other.name && one.attributes.view === other.attributes.view
