import type {Check} from './check.ts'

/** Find a file that leaves out its cautions: they stay on the page. */
export const cautionsLeftOut: Check = {
  rule: 'cautions-left-out',
  find: ({directives}) =>
    directives
      .filter(({name, attributes}) => name === 'leave-out' && 'cautions' in attributes)
      .map(({place}) => ({at: place, message: 'cautions cannot be left out; they stay on the page'})),
}
