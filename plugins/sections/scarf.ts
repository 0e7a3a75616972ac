import {paragraph} from './kit.ts'
import {headInWords} from './scarf/head-in-words.ts'
import {postTable} from './scarf/post-table.ts'
import {scarfFigures} from './scarf/scarf-figures.ts'
import {scarfInWords} from './scarf/scarf-in-words.ts'
import type {Section} from './section.ts'

/** How the head is sawn and glued, how thick it is for its tuners, and how each string runs to its post. */
export const scarf: Section = {
  name: 'scarf',
  title: 'Head and scarf',
  needs: ({plan}) => (plan.neck?.head ? [] : ['scale.length', 'head']),
  content: ({plan, build}) => [
    ...scarfInWords(plan).map((said) => paragraph(...said)),
    ...headInWords(plan, build).map((said) => paragraph(...said)),
    ...postTable(plan),
    ...scarfFigures(plan),
  ],
}
