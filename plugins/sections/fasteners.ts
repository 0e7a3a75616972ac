import type {BlockContent} from 'mdast'
import type {Fastener} from '../plan/fasteners/fastener.ts'
import type {Plan} from '../plan/plan.ts'
import {screwSources} from '../tables/screws.ts'
import {bitName} from '../words/holes.ts'
import {inWords, number} from '../words/quantities.ts'
import {figures, fold, type Inline, note, paragraph, source, strong} from './kit.ts'
import {type Cell, table, under} from './kit-table.ts'
import {bitWords, force, length, lengthAlone} from './measures.ts'
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
    const told = rows.map((row) => rowInWords(row, plan))
    const [first] = told
    const all = told.flat()
    return [
      ...(rows.length === 1 && first ? first.slice(0, 1) : [paragraph(...counted(rows))]),
      ...fold('Bits, countersinks, what each holds', [
        ...(rows.length === 1 ? all.slice(1) : all),
        bitsTable(rows, plan),
        holding(rows, plan),
      ]),
    ]
  },
}

/** Screws of one row of the build file are alike but for their places. */
function groups(all: readonly Fastener[]): Fastener[][] {
  const rows = new Map<string, Fastener[]>()
  for (const screw of all) rows.set(screw.of, [...(rows.get(screw.of) ?? []), screw])
  return [...rows.values()]
}

/** Count the screws of each row: `2 of number 6, 1 of number 8`. */
function counted(rows: readonly Fastener[][]): Inline[] {
  const all = rows.flat().length
  const each = rows.flatMap((row) => (row[0] ? [`${row.length} of ${screwName(row[0])}`] : []))
  return [strong(`${all} screws`), `: ${inWords(each)}.`]
}

/** Say what a row of screws goes through, then what is asked of them and how they are driven. */
function rowInWords(row: readonly Fastener[], plan: Plan): BlockContent[] {
  const [screw] = row
  if (!screw) return []
  const {joinsNeck, isGlued, through, into, holdsTop} = screw
  const mostN = Math.max(...row.map(({loadN = 0}) => loadN))
  const isAsked = joinsNeck && row.every(({loadN}) => loadN !== undefined)
  return [
    paragraph(
      `${row.length === 1 ? 'One screw' : `${row.length} screws`}, ${screwName(screw)}, `,
      length(screw.lengthMm, plan),
      ` long, through ${inWords(through)} into the ${into}.`,
    ),
    paragraph(
      ...(isAsked ? [...loadInWords(mostN, isGlued, plan), ' '] : []),
      ...(holdsTop ? [...topLoadInWords(mostN, plan), ' '] : []),
      ...(screw.isEndGrain ? [...endGrainInWords(row, plan), ' '] : []),
      ...(screw.countersinkMm === undefined
        ? ['Round heads lie on the wood.']
        : [
            'Countersink for flat heads, ',
            lengthAlone(screw.countersinkMm, plan),
            ' across, until they sit level.',
          ]),
      ' Wax the threads, and drive them by hand at the end.',
    ),
  ]
}

/** Say how far down screws in end grain sit, and how little to trust it. */
function endGrainInWords(row: readonly Fastener[], plan: Plan): Inline[] {
  const downs = [...new Set(row.flatMap(({downMm}) => downMm ?? []))]
  return [
    ...(downs.length
      ? ['They stand ', ...downs.flatMap((mm, i) => [i ? ' and ' : '', length(mm, plan)]), ' below the top. ']
      : []),
    'They hold in end grain, which grips a thread less, and unevenly: three quarters is counted.',
  ]
}

/** Say what screws of the top are there for, and what a neck on that top draws them by. */
function topLoadInWords(mostN: number, plan: Plan): Inline[] {
  const held = 'They hold the top, which comes off by them: bore with the top in place'
  return mostN < 1
    ? [`${held}.`]
    : [`${held}. The neck lifts at it, and draws the most loaded by `, force(mostN, plan), '.']
}

function loadInWords(mostN: number, isGlued: boolean, plan: Plan): Inline[] {
  const closes = plan.box?.neck?.joins === 'on top' && plan.bridge?.on === 'neck'
  const glue = isGlued ? ' The joint is glued as well.' : ''
  if (mostN < 1)
    return [
      `The strings ask almost nothing of them${closes ? ': their pull closes inside the neck' : ''}.${glue}`,
    ]
  return ['The strings draw the most loaded one by ', force(mostN, plan), `.${glue}`]
}

/** Set out the bits and depths of each row of screws, the worst of its tips. */
function bitsTable(rows: readonly Fastener[][], plan: Plan): BlockContent {
  const at = (mm: number) => lengthAlone(mm, plan)
  return table({
    caption: 'Bits and depths, a row of screws each',
    columns: [
      {head: ['Screws', under('Wood')]},
      {head: ['Clearance hole', under('Pilot hole')]},
      {head: ['Under the head', under('Thread that bites')], align: 'right'},
      {head: ['Tip to far face', under('Longest that fits')], align: 'right'},
    ],
    rows: rows.map((row): Cell[] => {
      const screw = row.reduce((worst, one) =>
        (one.tipToFaceMm ?? 0) < (worst.tipToFaceMm ?? 0) ? one : worst,
      )
      const {tipToFaceMm: tip, longestMm} = screw
      return [
        [
          `${row.length} × ${screwName(screw)}`,
          under(screw.wood ? `${screw.wood}, bored as ${screw.hardness}wood` : `${screw.hardness}wood`),
        ],
        [...bitWords(bitName(screw.clearanceBit)), under('pilot ', ...bitWords(bitName(screw.pilotBit)))],
        [at(screw.underHeadMm), under(at(screw.threadMm), ' bites')],
        [
          ...(tip === undefined ? ['no face ahead'] : tip < 0 ? ['comes out by ', at(-tip)] : [at(tip)]),
          ...(longestMm === undefined ? [] : [under('at most ', lengthAlone(longestMm, plan, 'down'))]),
        ],
      ]
    }),
    note: 'Screws differ between makers: measure the core of yours, and bore 90 % of it in hardwood, 70 % in softwood.',
  })
}

/** Fold away each row's diameters, both roots among them, and what a screw of it holds and is asked for. */
function holding(rows: readonly Fastener[][], plan: Plan): BlockContent {
  return figures('Figures: what each screw holds', [holdingTable(rows, plan), ...sources(rows.flat())])
}

function holdingTable(rows: readonly Fastener[][], plan: Plan): BlockContent {
  const mm = (value: number) => `${number(value, 2)} mm`
  return table({
    caption: 'Diameters and holding power of one screw',
    columns: [
      {head: 'Screws'},
      {head: 'Shank', align: 'right'},
      {head: 'Root, tapered screw', align: 'right'},
      {head: 'Root, design tables', align: 'right'},
      {head: 'Pilot', align: 'right'},
      {head: 'Draws out at', align: 'right'},
      {head: 'Asked of it', align: 'right'},
    ],
    rows: rows.flatMap(([screw]) =>
      screw
        ? [
            [
              screwName(screw),
              mm(screw.shankMm),
              mm(screw.rootMm),
              screw.rootDesignMm === undefined ? 'not listed' : mm(screw.rootDesignMm),
              mm(screw.pilotMm),
              force(screw.withdrawalN, plan),
              screw.loadN === undefined ? 'open' : force(screw.loadN, plan),
            ],
          ]
        : [],
    ),
  })
}

/** Say where the figures come from; of end grain only where a screw holds in it. */
function sources(screws: readonly Fastener[]): BlockContent[] {
  const endGrain = screws.some(({isEndGrain}) => isEndGrain) ? `${screwSources.endGrain}; ` : ''
  return [
    note(
      'A third of the holding power is the most to ask of a screw that stays under load: common practice, no source. Of a wood known by a loose name the lightest is taken.',
    ),
    source(
      `${screwSources.withdrawal}; ${screwSources.thread}; ${endGrain}${screwSources.edges}; pilots: ${screwSources.pilot}; shank: ${screwSources.shank}; root: ${screwSources.root}.`,
    ),
  ]
}

/** Name a screw by its gauge. */
const screwName = ({size}: Fastener): string => `number ${size}`
