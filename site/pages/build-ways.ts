import type {Element} from 'hast'
import {h} from 'hastscript'
import type {MadeBuild, SiteBuild} from '../kit/site-data.ts'

/** Open what is wanted most, before anything else: the bench sheet, the templates, and what there is to take away. */
export function doors(one: SiteBuild): Element {
  const paper = one.plan.units === 'mm' ? 'template-a4.pdf' : 'template-letter.pdf'
  const ways = [
    ...(isThere(one, 'bench/') ? [['bench/', 'Bench sheet']] : []),
    ...(isThere(one, paper) ? [[paper, 'Templates']] : []),
    [`/try/?from=${one.slug}`, 'Try'],
    ['#TakeAway', 'Take away'],
  ]
  return h('nav.doors', {ariaLabel: 'To the bench'}, [
    h(
      'ul',
      ways.map(([to = '', name]) =>
        h('li', [h('a', {href: /^[#/]/.test(to) ? to : `/builds/${one.slug}/${to}`}, name)]),
      ),
    ),
  ])
}

/** What a bar that stays calls the sections, where their headings are long. */
const shortNames: Readonly<Record<string, string>> = {
  scarf: 'Head',
  drilling: 'Drill',
  fasteners: 'Screws',
  'cut-list': 'Cut',
  bill: 'Buy',
  'work-order': 'Work',
  'setting-up': 'Set up',
  lineage: 'From',
}

/** List what is on the page, to jump there from wherever one reads; a short page needs none. */
export function jumpBar(headings: MadeBuild['headings']): Element | undefined {
  const shown = headings.filter(({depth, id}) => depth <= 2 && !besideIt.has(id))
  if (shown.length < 3) return undefined
  return h('nav.jump', {ariaLabel: 'On this page'}, [
    h(
      'ul',
      shown.map(({id, title}) => h('li', [h('a', {href: `#${id}`}, shortNames[id] ?? title)])),
    ),
  ])
}

/** What stands above the bar. */
const besideIt: ReadonlySet<string> = new Set(['before-you-cut', 'drawing'])

/** What can be taken away from a build's page: a line each, with its files below the page's address. */
const downloads = [
  [['bench/', 'Bench sheet'], 'to print and tick'],
  [['care/', 'Strings and care'], 'for its player'],
  [['start.md', 'A build file to start from'], 'as made, with a blank journal'],
  [
    ['template-letter.pdf', 'Paper templates, Letter'],
    ['template-a4.pdf', 'A4'],
    'full size, to print and join',
  ],
  [
    ['template.svg', 'Templates on one sheet, SVG'],
    ['template.dxf', 'DXF'],
    'full size, for a laser or a plotter',
  ],
  [['build.md', 'The dimensions'], 'as written in its file'],
  [['plan.json', 'The plan'], 'every number, for other programs'],
] as const

/** Lead to the files beside a build's page. */
export function takeAway(one: SiteBuild): Element {
  const rows = downloads.flatMap((row) => {
    const what = row.at(-1) as string
    const named = row.slice(0, -1) as (readonly [string, string])[]
    const files = named.filter(([file]) => isThere(one, file))
    return files.length > 0 ? [{files, what}] : []
  })
  return h('section.take-away', [
    h('h2#TakeAway', 'To take away'),
    h(
      'ul',
      rows.map(({files, what}) =>
        h('li', [
          ...files.flatMap(([file, name], at) => [
            at > 0 ? ' or ' : '',
            h('a', {href: `/builds/${one.slug}/${file}`}, name),
          ]),
          `: ${what}`,
        ]),
      ),
    ),
    one.ungiven.length > 0
      ? h('p', `This program fails to write ${one.ungiven.join(', ')}, which is its own fault.`)
      : undefined,
  ])
}

function isThere({slug, plan, files}: SiteBuild, name: string): boolean {
  if (['care/', 'build.md', 'plan.json'].includes(name)) return true
  if (name === 'bench/') return plan.work !== undefined
  return files.some(({address}) => address === `/builds/${slug}/${name}`)
}
