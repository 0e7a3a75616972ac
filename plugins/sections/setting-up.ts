import type {RootContent} from 'mdast'
import type {Plan} from '../plan/plan.ts'
import {settingUpInWords} from '../words/setting-up.ts'
import {fold, list, paragraph, source, strong} from './kit.ts'
import {type Cell, table} from './kit-table.ts'
import {fractions} from './measures.ts'
import type {Section} from './section.ts'

/** What setting up goes by, of all that can be measured. */
const movers = /^(?:action\.(?:nut|octave)|cents\..*|scale(?:\.length)?)$/

/** Say why nothing has to move, of a build of which something was measured that it goes by. */
function nothingToMove({asBuilt = []}: Plan): string | undefined {
  const goesBy = asBuilt.filter(({path}) => movers.test(path))
  if (goesBy.length === 0) return undefined
  return goesBy.some(({isOut}) => isOut)
    ? 'The octave reads as planned: there is nothing to move.'
    : 'What was measured lies within what is allowed: there is nothing to move.'
}

/** What to move once it is strung, and what to look for where it buzzes, hops, dies or hums. */
export const settingUp: Section = {
  name: 'setting-up',
  title: 'Setting up',
  needs: ({plan}) => (plan.settingUp ? [] : plan.strings ? ['scale.length'] : ['strings', 'scale.length']),
  content: ({plan}): RootContent[] => {
    const rows = (plan.settingUp ?? []).map((one) => settingUpInWords(one, plan))
    const moves = rows.filter(({cause}) => cause === undefined)
    const faults = rows.filter(({cause}) => cause !== undefined)
    const stays = nothingToMove(plan)
    return [
      ...(moves.length > 0
        ? [
            paragraph('From what was measured:'),
            list(moves.map(({find, does}) => [strong(...fractions(does)), ' ', ...fractions(find)])),
          ]
        : stays
          ? [paragraph(stays)]
          : [
              paragraph(
                'Tune it up, and measure the strings’ height over nut and octave. Written under ',
                {type: 'inlineCode', value: 'measured'},
                ', they tell what to move.',
              ),
            ]),
      ...fold(`If something is wrong: ${faults.length} faults`, [
        table({
          caption: 'Faults, the likeliest on this one first',
          columns: [{head: 'What is heard or seen'}, {head: 'Likely cause'}, {head: 'What to do'}],
          rows: faults.map(({find, cause = '', because, does}): Cell[] => [
            find,
            fractions(because ? `${because} ${cause}` : cause),
            fractions(does),
          ]),
        }),
        source('common practice, no source.'),
      ]),
    ]
  },
}
