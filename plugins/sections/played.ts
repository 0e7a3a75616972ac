import {ownAt} from '../build-file/schema/path.ts'
import {fold, type Inline, paragraph, strong} from './kit.ts'
import {table} from './kit-table.ts'
import type {Section} from './section.ts'

/** What it was like to play, note by note, as the maker wrote it. */
export const played: Section = {
  name: 'played',
  title: 'Played',
  quiet: true,
  needs: ({build: {values}}) => (values.played?.length ? [] : ['played']),
  content: ({build: {values}}) => {
    const notes = values.played ?? []
    const words = [...new Set(notes.flatMap((one) => Object.keys(one.scores ?? {})))]
    // Where every day has words of its own, a column for each would be mostly empty.
    const isWide = words.length > mostColumns
    const scores = isWide ? [] : words
    const last = notes.at(-1)
    const said: Inline[] = [
      ...(last?.again ? ['Build it again: ', strong(last.again.text), '.'] : []),
      ...(last?.remark ? [` “${last.remark.text}”`] : []),
    ]
    return [
      ...(said.length > 0 ? [paragraph(...said)] : []),
      ...fold(words.length > 0 ? 'Notes and scores' : 'Notes', [
        table({
          caption: 'Notes from playing it; scores from 1 to 5',
          columns: [
            {head: 'On'},
            {head: 'Build it again'},
            ...scores.map((score) => ({head: score, align: 'right' as const})),
            ...(isWide ? [{head: 'Scores'}] : []),
            {head: 'Remark'},
          ],
          rows: notes.map(({on, again, scores: given, remark}) => [
            on?.text ?? '',
            again?.text ?? '',
            ...scores.map((score) => ownAt(given, score)?.text ?? ''),
            ...(isWide ? [all(given)] : []),
            remark?.text ?? '',
          ]),
        }),
      ]),
    ]
  },
}

/** More kinds of scores than this are told in words, day by day. */
const mostColumns = 12

const all = (scores: Readonly<Record<string, {text: string}>> = {}): string =>
  Object.entries(scores)
    .map(([score, {text}]) => `${score} ${text}`)
    .join(', ')
