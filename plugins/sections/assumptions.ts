import {fold, paragraph} from './kit.ts'
import {table} from './kit-table.ts'
import {fractions} from './measures.ts'
import type {Section} from './section.ts'

/** What the plan took for granted, with its reason: a usual value for each key that the file does not have. */
export const assumptions: Section = {
  name: 'assumptions',
  title: 'Assumed',
  quiet: true,
  needs: () => [],
  content: ({plan: {assumptions: assumed}}) =>
    assumed.length === 0
      ? []
      : [
          paragraph(
            'The file does not say these, so usual values stand in. Write any of them into the file to change it.',
          ),
          ...fold(assumed.length === 1 ? 'One value' : `${assumed.length} values`, [
            table({
              caption: 'Values assumed',
              columns: [{head: 'Key'}, {head: 'Value'}, {head: 'Why'}],
              rows: assumed.map(({path, value, why}) => [
                {type: 'inlineCode', value: path},
                fractions(value),
                why,
              ]),
            }),
          ]),
        ],
}
