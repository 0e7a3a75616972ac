import type {BlockContent} from 'mdast'
import type {Fastener} from '../plan/shape/holes.ts'
import type {Plan} from '../plan/shape/plan.ts'
import {bitsTable} from './fasteners/bits-table.ts'
import {holding} from './fasteners/holding.ts'
import {screwName} from './fasteners/screw-name.ts'
import {force, type Inline, inWords, length, lengthAlone, paragraph} from './kit.ts'
import type {Section} from './section.ts'

/** Each screw: its bits, wood under its head, thread, what stays over its tip, what it holds and what is asked of it. */
export const fasteners: Section = {
  name: 'fasteners',
  title: 'Screws',
  needs: ({plan, build: {values}}) => {
    if (plan.fasteners) return []
    if (!values.screws?.length) return ['screws']
    const keys = ['size', 'length', 'through', 'into'] as const
    const missing = keys.filter((key) => !values.screws?.[0]?.[key]).map((key) => `screws.1.${key}`)
    return missing.length ? missing : ['scale.length']
  },
  content: ({plan}) => {
    const rows = groups(plan.fasteners ?? [])
    return [...rows.flatMap((row) => rowInWords(row, plan)), bitsTable(rows, plan), holding(rows, plan)]
  },
}

/** Screws of one row of the build file are alike but for their places. */
function groups(all: readonly Fastener[]): Fastener[][] {
  const rows = new Map<string, Fastener[]>()
  for (const screw of all) rows.set(screw.of, [...(rows.get(screw.of) ?? []), screw])
  return [...rows.values()]
}

function rowInWords(row: readonly Fastener[], plan: Plan): BlockContent[] {
  const [screw] = row
  if (!screw) return []
  const {joinsNeck, isGlued, through, into} = screw
  const mostN = Math.max(...row.map(({loadN = 0}) => loadN))
  const isAsked = joinsNeck && row.every(({loadN}) => loadN !== undefined)
  return [
    paragraph(
      `${row.length === 1 ? 'One screw' : `${row.length} screws`}, ${screwName(screw)}, `,
      length(screw.lengthMm, plan),
      ` long, through ${inWords(through)} into the ${into}.`,
      ...(isAsked ? loadInWords(mostN, isGlued, plan) : []),
      ...(screw.countersinkMm === undefined
        ? [' Round heads lie on the wood.']
        : [
            ' Countersink for flat heads, ',
            lengthAlone(screw.countersinkMm, plan),
            ' across, until they sit level.',
          ]),
      ' Wax the threads, and drive them by hand at the end.',
    ),
  ]
}

function loadInWords(mostN: number, isGlued: boolean, plan: Plan): Inline[] {
  const closes = plan.box?.neck?.joins === 'on top' && plan.bridge?.on === 'neck'
  const glue = isGlued ? ' The joint is glued as well.' : ''
  if (mostN < 1)
    return [
      ` The strings ask almost nothing of them${closes ? ': their pull closes inside the neck' : ''}.${glue}`,
    ]
  return [' The strings draw the most loaded one by ', force(mostN, plan), `.${glue}`]
}
