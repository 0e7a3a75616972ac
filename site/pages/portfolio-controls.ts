import type {Element} from 'hast'
import {h} from 'hastscript'
import type {SiteBuild} from '../kit/site-data.ts'
import {type KindFacts, kindFacts} from './build-facts.ts'

/** What builds can be narrowed by: the name of the control, its label, and what a build has for it. */
const facets: readonly (readonly [string, string, (facts: KindFacts) => readonly string[]])[] = [
  ['strings', 'Strings', ({strings}) => some(strings?.toString())],
  ['frets', 'Frets', ({frets}) => some(frets)],
  ['play', 'Played with', ({play}) => some(play)],
  ['join', 'Neck joins', ({join}) => some(join)],
  ['status', 'Status', ({status}) => some(status)],
  ['tags', 'Tag', ({tags}) => tags],
  ['played', 'Played well', ({isPlayedWell}) => some(isPlayedWell ? 'played well' : undefined)],
]

const some = (value: string | undefined): string[] => (value === undefined ? [] : [value])

/** Prepare what narrows and sorts the cards. It lies in a template: without scripts it is not there. */
export function controls(builds: readonly SiteBuild[], units: 'in' | 'mm'): Element {
  const all = builds.map(kindFacts)
  const scales = scaleRanges[units].map(({says, fromMm, toMm}) => [`${fromMm} ${toMm}`, says] as const)
  return h('template', [
    h('div.controls', {role: 'search'}, [
      labelled('Search all text', h('input', {type: 'search', name: 'words', autoComplete: 'off'})),
      labelled('Sorted by', choice('sort', orders, 'date, newest first')),
      h('details.narrow', [
        h('summary', 'Narrow'),
        h('div', [
          ...facets.flatMap((facet) => narrower(facet, all)),
          labelled('Scale length', choice('scale', scales)),
        ]),
      ]),
      h('p.count', {role: 'status'}, ''),
      h('button', {type: 'button', hidden: true}, 'Show all'),
    ]),
  ])
}

const orders = [
  ['scale', 'scale length, short to long'],
  ['title', 'name'],
] as const

/** A choice between what builds have, where it would tell any of them apart. */
function narrower([name, label, of]: (typeof facets)[number], all: readonly KindFacts[]): Element[] {
  const values = [...new Set(all.flatMap(of))].sort()
  const isUseful = values.length > 1 || all.some((facts) => of(facts).length === 0)
  if (values.length === 0 || !isUseful) return []
  return [
    labelled(
      label,
      choice(
        name,
        values.map((value) => [value, value]),
      ),
    ),
  ]
}

function labelled(label: string, control: Element): Element {
  return h('label', [h('span', label), control])
}

function choice(name: string, options: readonly (readonly [string, string])[], first = 'any'): Element {
  return h('select', {name}, [
    h('option', {value: ''}, first),
    ...options.map(([value, says]) => h('option', {value}, says)),
  ])
}

/** Scale lengths that players tell apart, in mm: about ukulele, short guitar and long guitar; common practice, no source. */
const scaleRanges = {
  in: [
    {says: 'under 21 in', fromMm: 0, toMm: 533.4},
    {says: '21 to 25 in', fromMm: 533.4, toMm: 635},
    {says: '25 in and more', fromMm: 635, toMm: 10_000},
  ],
  mm: [
    {says: 'under 530 mm', fromMm: 0, toMm: 530},
    {says: '530 to 640 mm', fromMm: 530, toMm: 640},
    {says: '640 mm and more', fromMm: 640, toMm: 10_000},
  ],
} as const
