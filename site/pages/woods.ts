import {h} from 'hastscript'
import {woodFacts} from '../../plugins/plan/kit/woods.ts'
import {toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {looseWoods, type WoodRow, woodSources, woods} from '../../plugins/tables/woods.ts'
import {number} from '../../plugins/words/quantities.ts'
import {type Page, pageOf} from '../kit/page.ts'
import type {SiteData} from '../kit/site-data.ts'

const kinds = [
  ['hardwood', 'Hardwoods'],
  ['softwood', 'Softwoods'],
  ['sheet', 'Sheet goods'],
] as const

/** The words of wood names that are names of people and places; a build file writes them as it likes. */
const capitals =
  /\b(adirondack|african|alaska|american|baltic|brazilian|caribbean|douglas|engelmann|finnish|honduras|indian|monterey|norway|oregon|orford|philippine|port|sitka|spanish)\b/g
const asWritten = (name: string) => name.replace(capitals, (word) => word[0]!.toUpperCase() + word.slice(1))

/** Write the page of the wood table, each row with its source. */
export function woodsPage({around}: SiteData): Page[] {
  const describes =
    'The woods that the computations know: averages of clear, straight-grained wood at 12 % moisture. A board of your own may be a fifth lighter, heavier, stiffer or softer.'
  const content = [
    h('header.page-head', [h('h1', 'Woods'), h('p', describes)]),
    h('div.prose', [
      h('p', [
        'Any other wood can stand in a build file with its own density and stiffness. These loose names are known too, and plan with the range of what they may mean: ',
        asWritten(`${Object.keys(looseWoods).join(', ')}.`),
      ]),
      ...kinds.flatMap(([kind, title]) => [h('h2', title), ...toElements([woodTable(kind, title)])]),
      h('h2', 'Sources'),
      h(
        'dl.sources',
        Object.entries(woodSources).map(([name, source]) => h('div', [h('dt', name), h('dd', source)])),
      ),
    ]),
  ]
  return [pageOf('/woods/', {title: 'Woods', describes, within: '/woods/'}, content, around.prefix)]
}

function woodTable(kind: WoodRow['kind'], title: string) {
  const rows = (Object.entries(woods) as [string, WoodRow][]).filter(([, row]) => row.kind === kind)
  const right = (head: string) => ({head, align: 'right' as const})
  return table({
    caption: `${title}, at 12 % moisture`,
    columns: [
      {head: 'Wood'},
      {head: 'Also'},
      right('Density, kg/m³'),
      right('Stiffness, MPa'),
      right('Bending strength, MPa'),
      right('Side hardness, N'),
      right('Shrinks green to dry, %, radial and tangential'),
      {head: 'Across borders'},
      {head: 'Source'},
      {head: 'Trust'},
    ],
    rows: rows.map(([name, row]) => [
      asWritten(name),
      asWritten([row.latin, ...(row.others ?? [])].filter(Boolean).join(', ')),
      number(woodFacts.get(name)?.densityKgM3 ?? Number.NaN, 0),
      number(row.moeMpa, 0),
      row.morMpa === undefined ? '' : number(row.morMpa, 0),
      row.hardnessN === undefined ? '' : number(row.hardnessN, 0),
      row.shrinkPercent?.slice(0, 2).join(', ') ?? '',
      row.trade ?? '',
      row.source,
      row.trust,
    ]),
  })
}
