import type {Code, RootContent} from 'mdast'
import {writeLines} from '../build-file/writing/set-values.ts'
import type {Assumption} from '../plan/kit/settled.ts'
import {assumedInWords, openWhy, whyInWords} from '../words/proposals.ts'
import {fold, holds, list, paragraph, subHeading} from './kit.ts'
import {table} from './kit-table.ts'
import {fractions} from './measures.ts'
import type {Section, SectionInput} from './section.ts'

/** What the plan took for granted and what it proposes, each with its reason: values for keys that the file does not have. */
export const assumptions: Section = {
  name: 'assumptions',
  title: 'Assumed',
  quiet: true,
  needs: () => [],
  content: ({plan, build}) => {
    const assumed = plan.assumptions.filter(({proposed}) => !proposed)
    const usual =
      assumed.length === 0
        ? []
        : [
            paragraph('The file does not say these, so usual values stand in.'),
            ...values('Values assumed', assumed),
          ]
    return [...usual, ...proposals({plan, build})]
  },
}

/** List what is proposed, and the lines that make it the maker's; say where nothing could be. */
function proposals({plan, build}: Pick<SectionInput, 'plan' | 'build'>): RootContent[] {
  const proposed = plan.assumptions.filter((one) => one.proposed)
  const open = build.proposals.flatMap((one) => ('open' in one ? openWhy[one.open] : []))
  if (proposed.length === 0 && open.length === 0) return []
  const keys = new Set(proposed.map(({path}) => path.split('.')[0]!))
  const lines: Code = {type: 'code', lang: 'yaml', value: writeLines(build, [...keys]).join('\n')}
  const pasted: RootContent[] = proposed.length
    ? [
        paragraph(
          'These the trade has no usual value for, so they were chosen to fit this instrument: they are marked as proposed, and stand in brackets on the drawings. Each keeps every rule that is checked here.',
        ),
        valueTable('Values proposed', proposed),
        paragraph(
          'Paste these lines into the file and they are yours; nothing else changes. A line takes the place of the one with its key.',
        ),
        lines,
      ]
    : []
  return [
    subHeading('Proposed'),
    paragraph('Chosen to fit this instrument; yours once pasted.'),
    ...fold(holds([counted(proposed), pasted], ['what is left open', open]), [
      ...pasted,
      ...(open.length ? [list(open)] : []),
    ]),
  ]
}

const counted = (listed: readonly Assumption[]) =>
  listed.length === 1 ? 'One value' : `${listed.length} values`

const values = (caption: string, listed: readonly Assumption[]) =>
  fold(counted(listed), [valueTable(caption, listed)])

function valueTable(caption: string, listed: readonly Assumption[]) {
  return table({
    caption,
    columns: [{head: 'Key'}, {head: 'Value'}, {head: 'Why'}],
    rows: listed.map((one) => [
      {type: 'inlineCode', value: one.path},
      fractions(assumedInWords(one)),
      whyInWords(one.why),
    ]),
  })
}
