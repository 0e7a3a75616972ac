import type {RootContent} from 'mdast'
import type {Change} from '../plan/changes.ts'
import {figures, link, list, paragraph} from './kit.ts'
import {table} from './kit-table.ts'
import {fractions} from './measures.ts'
import type {Relatives, Section} from './section.ts'

/** What a build was copied from and what was changed, and what was copied from it. */
export const lineage: Section = {
  name: 'lineage',
  title: 'Where it comes from',
  quiet: true,
  needs: ({build, relatives}) =>
    build.values['based-on'] || relatives?.original || relatives?.copies.length ? [] : ['based-on'],
  content: ({build, relatives}) => [
    ...origin(build.values['based-on']?.value, relatives),
    ...copies(relatives),
  ],
}

function origin(basedOn: string | undefined, relatives: Relatives | undefined): RootContent[] {
  const {original} = relatives ?? {}
  if (!original) return basedOn ? [paragraph('Copied from ', {type: 'inlineCode', value: basedOn}, '.')] : []
  const {slug, title, changes} = original
  const from = link(`/builds/${slug}/`, title)
  if (changes.length === 0) return [paragraph('Copied from ', from, ', nothing changed.')]
  // What the first one left open is an addition; a long list of those would bury what was really changed.
  const changed = changes.filter(({was, is}) => was !== undefined && is !== undefined)
  const others = changes.filter((change) => !changed.includes(change))
  return [
    paragraph('Copied from ', from, changed.length > 0 ? ', with these changes.' : '.'),
    ...(changed.length > 0 ? [changesTable(`What was changed on ${title}`, changed)] : []),
    ...(others.length > 0
      ? [
          figures(`Given in one of the two alone: ${others.length}`, [
            changesTable(`What ${title} or this build leaves open`, others),
          ]),
        ]
      : []),
  ]
}

function changesTable(caption: string, changes: readonly Change[]) {
  return table({
    caption,
    columns: [{head: 'Key'}, {head: 'There'}, {head: 'Here'}],
    rows: changes.map(({path, was, is}) => [
      {type: 'inlineCode', value: path},
      fractions(was ?? 'not given'),
      fractions(is ?? 'not given'),
    ]),
  })
}

function copies(relatives: Relatives | undefined): RootContent[] {
  const made = relatives?.copies ?? []
  if (made.length === 0) return []
  return [
    paragraph('Copied from this one:'),
    list(made.map(({slug, title}) => [link(`/builds/${slug}/`, title)])),
  ]
}
