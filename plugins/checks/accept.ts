import {nearest} from '../build-file/nearest.ts'
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
    find: ({keys}) =>
      Object.entries(keys)
        .filter(([path]) => path.startsWith(under))
        .map(([path, place]) => ({name: path.slice(under.length), place}))
        .filter(({name}) => !names.includes(name))
        .map(({name, place}) => {
          const close = nearest(name, names)
          return {
            at: place,
            message: `${name} is not a rule that is known${close ? `; was ${close} meant?` : ''}`,
            ...(close && {expected: [close]}),
          }
        }),
  })
