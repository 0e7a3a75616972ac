import type {Element} from 'hast'
import {h} from 'hastscript'
import type {SiteBuild} from '../../site-data.ts'

/** What can be taken away from a build's page: address below it, name, and what it is for. */
const files = [
  ['bench/', 'Bench sheet', 'the work step by step, to print and tick'],
  ['care/', 'Strings and care', 'the sheet that goes with the instrument'],
  [
    'start.md',
    'A build file to start from',
    'these dimensions, as measured where measured, and a blank journal',
  ],
  ['template-letter.pdf', 'Paper templates, Letter', 'full size, to print and join'],
  ['template-a4.pdf', 'Paper templates, A4', 'the same on the other paper'],
  ['template.svg', 'The templates on one sheet, SVG', 'full size in millimetres, for a laser or a plotter'],
  ['template.dxf', 'The templates on one sheet, DXF', 'the same for machines that read DXF'],
  ['build.md', 'The dimensions', 'as written in its file'],
  ['plan.json', 'The plan', 'every number computed, for other programs'],
] as const

/** Lead to the files beside a build's page. */
export function takeAway({slug, plan, files: given}: SiteBuild): Element {
  const isThere = (name: string) =>
    ['care/', 'build.md', 'plan.json'].includes(name) ||
    (name === 'bench/' && plan.work !== undefined) ||
    given.some(({address}) => address === `/builds/${slug}/${name}`)
  return h('section.take-away', [
    h('h2#TakeAway', 'To take away'),
    h(
      'ul',
      files
        .filter(([file]) => isThere(file))
        .map(([file, name, what]) => h('li', [h('a', {href: `/builds/${slug}/${file}`}, name), `: ${what}`])),
    ),
  ])
}
