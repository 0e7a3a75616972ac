import type {RootContent} from 'mdast'
import {type Inline, link, list, paragraph} from './kit.ts'
import type {Relatives, Section} from './section.ts'

/** What a build was copied from, and what was copied from it; what was changed has a page of its own. */
export const lineage: Section = {
  name: 'lineage',
  title: 'Where it comes from',
  quiet: true,
  needs: ({build, relatives}) =>
    build.values['based-on'] || relatives?.original || relatives?.copies.length ? [] : ['based-on'],
  content: ({build, plan, relatives}) => [
    ...origin(build.values['based-on']?.value, plan.slug, relatives),
    ...copies(plan.slug, relatives),
  ],
}

function origin(basedOn: string | undefined, here: string, relatives: Relatives | undefined): RootContent[] {
  const {original} = relatives ?? {}
  if (!original) return basedOn ? [paragraph('Copied from ', {type: 'inlineCode', value: basedOn}, '.')] : []
  const {slug, title, changes} = original
  const count = changes.length
  const differs: Inline[] =
    count === 0
      ? [', nothing changed.']
      : [
          '. ',
          link(`/builds/${here}/changes/`, `What differs: ${count === 1 ? 'one value' : `${count} values`}`),
        ]
  return [paragraph('Copied from ', link(`/builds/${slug}/`, title), ...differs)]
}

function copies(here: string, relatives: Relatives | undefined): RootContent[] {
  const made = relatives?.copies ?? []
  if (made.length === 0) return []
  return [
    paragraph('Copied from this one (', link(`/builds/${here}/changes/`, 'its family'), '):'),
    list(made.map(({slug, title}) => [link(`/builds/${slug}/`, title)])),
  ]
}
