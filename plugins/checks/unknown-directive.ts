import {nearest} from '../build-file/nearest.ts'
import {drawingViews, sectionNames} from '../tables/section-names.ts'
import type {Check, Finding} from './check.ts'

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
