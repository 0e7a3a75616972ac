import type {Element} from 'hast'
import {h} from 'hastscript'
import {type KindFacts, kindFacts} from '../../html/kind-facts.ts'
import type {SiteBuild} from '../../site-data.ts'
import {scaleRanges} from './scale-ranges.ts'

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
export function controls(builds: readonly SiteBuild[]): Element {
  const all = builds.map(kindFacts)
  const units = builds[0]?.plan.units ?? 'in'
  return h('template', [
    h('div.controls', {role: 'search'}, [
      labelled('Search', h('input', {type: 'search', name: 'words', autoComplete: 'off'})),
      ...facets.flatMap(([name, label, of]) => {
        const values = [...new Set(all.flatMap(of))].sort()
        const isUseful = values.length > 1 || all.some((facts) => of(facts).length === 0)
        return values.length > 0 && isUseful
          ? [
              labelled(
                label,
                choice(
                  name,
                  values.map((value) => [value, value]),
                ),
              ),
            ]
          : []
      }),
      labelled(
        'Scale length',
        choice(
          'scale',
          scaleRanges[units].map(({says, fromMm, toMm}) => [`${fromMm} ${toMm}`, says]),
        ),
      ),
      labelled(
        'Sorted by',
        choice(
          'sort',
          [
            ['scale', 'scale length, short to long'],
            ['title', 'name'],
          ],
          'date, newest first',
        ),
      ),
      h('p.count', {role: 'status'}, ''),
      h('button', {type: 'button'}, 'Show all'),
    ]),
  ])
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
