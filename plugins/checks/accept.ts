import {nearest} from '../build-file/schema/nearest.ts'
import {unknownRule as says} from '../words/findings/accept.ts'
import {rule} from './rule.ts'

const under = 'accept.'

/** Find what is accepted under a name that no rule has. */
export const unknownRule = (names: readonly string[]) =>
  rule({
    severity: 'warning',
    about: 'file',
    what: 'A rule that nobody knows under accept.',
    why: 'Nothing is accepted by it.',
    mend: 'Use the name that the problem shows.',
    passes: 'accept: {string-stiff: it is played with a slide}',
    fails: 'accept: {string-stif: it is played with a slide}',
    find: ({keys}) =>
      Object.entries(keys)
        .filter(([path]) => path.startsWith(under))
        .map(([path, at]) => ({at, name: path.slice(under.length)}))
        .filter(({name}) => !names.includes(name))
        .map((one) => ({...one, likely: nearest(one.name, names)})),
    says,
  })
