import type {Check} from './check.ts'

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
