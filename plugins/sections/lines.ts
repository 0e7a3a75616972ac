import {paragraph} from './kit.ts'
import {justMarks} from './lines/just-marks.ts'
import {lineTable} from './lines/line-table.ts'
import {markingInWords} from './lines/marking-in-words.ts'
import {rulersTried} from './lines/rulers-tried.ts'
import type {Section} from './section.ts'

/** Where every fret or marker line goes, what the ruler makes of it, and how finely to mark. */
export const lines: Section = {
  name: 'lines',
  title: 'Lines',
  needs: ({plan: {scale}}) => {
    if (scale?.lengthMm === undefined) return ['scale.length']
    return scale.lines?.length ? [] : ['scale.lines']
  },
  content: ({plan}) => [
    ...markingInWords(plan).map((said) => paragraph(...said)),
    lineTable(plan),
    ...justMarks(plan),
    ...rulersTried(plan),
  ],
}
