import type {Element, ElementContent} from 'hast'
import {h} from 'hastscript'
import {familyTree} from '../../plugins/drawings/plots/family-tree.ts'
import type {Change} from '../../plugins/plan/changes.ts'
import {type Inline, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {feltOtherwise, insteadOf} from '../../plugins/words/effects.ts'
import {keyInWords} from '../../plugins/words/keys.ts'
import {inWords} from '../../plugins/words/quantities.ts'
import {keyOf} from '../kit/cache.ts'
import {keptFractions, markup, withFractions, withPrefix} from '../kit/markup.ts'
import type {Page} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'

/**
 * Write, for each build that was copied from another, what differs from that one, what each difference does, and its
 * family; for one that others were copied from, its family alone.
 */
export function changesPages({builds, around}: SiteData): Page[] {
  return builds
    .filter(({relatives: {original}, family}) => original?.changes.length || family.rows.length > 1)
    .map((one) => ({
      address: `/builds/${one.slug}/changes/`,
      layout: 'frame',
      key: keyOf('changes', one.key),
      data: {
        ...named(one),
        within: '/',
        unlisted: one.isDraft,
      },
      content: () => markup(withPrefix(content(one), around.prefix)),
    }))
}

const named = ({title, relatives}: SiteBuild) =>
  relatives.original
    ? {
        title: `${title}: what differs`,
        describes: `What ${title} changes on the build that it was copied from, and what that does.`,
      }
    : {title: `${title}: its family`, describes: `What was copied from ${title}, and from its copies.`}

function content(one: SiteBuild): Element {
  const {slug, title, relatives} = one
  if (!relatives.original)
    return h('article.prose.changes', [
      h('header.page-head', [h('h1', 'Its family'), h('p', [h('a', {href: `/builds/${slug}/`}, title)])]),
      ...family(one),
    ])
  const {changes = [], slug: from, title: there = ''} = relatives.original ?? {}
  const changed = changes.filter(({was, is}) => was !== undefined && is !== undefined)
  return h('article.prose.changes', [
    h('header.page-head', [
      h('h1', 'What differs'),
      h('p', [
        h('a', {href: `/builds/${slug}/`}, title),
        ' was copied from ',
        h('a', {href: `/builds/${from}/`}, there),
        changed.length > 0 ? `: ${values(changed.length)} changed.` : '; nothing that it gives is changed.',
      ]),
    ]),
    ...allTogether(one, there),
    ...groupsOf(changed).flatMap(([part, group]) => [
      h('h2', {id: part}, nameOf(part)),
      listed(`${nameOf(part)}, changed on ${there}`, group),
      ...eachAlone(one, group),
    ]),
    ...inOneAlone(
      one,
      changes.filter((change) => !changed.includes(change)),
      there,
    ),
    ...(one.family.rows.length > 1 ? [h('h2#family', 'Family'), ...family(one)] : []),
  ])
}

/** Draw what it was copied from, what was copied from it, and copies of copies. */
function family({slug, family: {rows, isCircle, more}}: SiteBuild): ElementContent[] {
  return [
    h('p', 'Each stands below the one that it was copied from.'),
    h('figure.drawing', [familyTree(rows, slug)]),
    ...(more > 0 ? [h('p', `${more} more are not shown.`)] : []),
    ...(isCircle
      ? [h('p', 'Some of them are copied from each other in a circle, so none of those came first.')]
      : []),
  ]
}

/** What is felt of all changes at once. */
function allTogether({effects, plan, title}: SiteBuild, there: string): ElementContent[] {
  const rows = effects ? feltOtherwise(effects.was, effects.is, plan) : []
  if (rows.length === 0) return []
  const all = table({
    caption: `${there} as it was made, and ${title}`,
    columns: [{head: 'All together'}, {head: 'There'}, {head: 'Here'}],
    rows: rows.map(({name, was, is}) => [name, keptFractions(was), keptFractions(is)]),
  })
  return [h('h2#together', 'What that does'), ...toElements([all])]
}

/** What each change does by itself, as a line; those that do nothing of what is reckoned are named at the end. */
function eachAlone({effects, plan}: SiteBuild, changes: readonly Change[]): ElementContent[] {
  const paths = new Set(changes.map(({path}) => path))
  const units = (effects?.alone ?? []).filter((one) => one.paths.some((path) => paths.has(path)))
  const told = units.map((one) => ({
    name:
      one.paths.length > 3
        ? `${nameOf(one.paths[0]!.split('.')[0]!)} as a whole: `
        : `${capital(inWords(one.paths.map(keyInWords)))} alone: `,
    felt: feltOtherwise(effects!.was, one.is, plan),
  }))
  const lines = told
    .filter(({felt}) => felt.length > 0)
    .map(({name, felt}) => h('li', [name, ...withFractions(`${felt.map(insteadOf).join('; ')}.`)]))
  return lines.length > 0 ? [h('ul.effects', lines)] : []
}

/** What one of the two leaves open is no change; a long list of those would bury what was really changed. */
function inOneAlone(one: SiteBuild, changes: readonly Change[], there: string): ElementContent[] {
  if (changes.length === 0) return []
  const here = changes.filter(({is}) => is !== undefined)
  const gone = changes.filter(({is}) => is === undefined)
  const fold = (name: string, text: 'is' | 'was', rows: readonly Change[]) =>
    rows.length === 0
      ? []
      : [
          h('details.fold', [
            h('summary', `${name}: ${values(rows.length)}`),
            ...toElements([
              table({
                caption: name,
                columns: [{head: 'What'}, {head: text === 'is' ? 'Here' : 'There'}, {head: 'Key'}],
                rows: rows.map((row) => [
                  capital(keyInWords(row.path)),
                  keptFractions(row[text] ?? ''),
                  code(row),
                ]),
              }),
            ]),
          ]),
        ]
  return [
    h('h2#one-alone', 'Given in one of the two alone'),
    ...fold('Given here, left open there', 'is', here),
    ...fold(`Given on ${there}, left open here`, 'was', gone),
    ...eachAlone(one, changes),
  ]
}

/** Gather changes by the part of the instrument that they belong to, in the order of the file. */
function groupsOf(changes: readonly Change[]): [string, Change[]][] {
  const parts = new Map<string, Change[]>()
  for (const change of changes) {
    const part = change.path.split('.')[0]!
    parts.set(part, [...(parts.get(part) ?? []), change])
  }
  return [...parts]
}

const values = (count: number) => (count === 1 ? 'one value' : `${count} values`)

const code = ({path}: Change): Inline => ({type: 'inlineCode', value: path})

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1)

const nameOf = (part: string) => capital(part.replaceAll('-', ' '))

function listed(caption: string, changes: readonly Change[]): Element {
  const [element] = toElements([
    table({
      caption,
      columns: [{head: 'What'}, {head: 'There'}, {head: 'Here'}, {head: 'Key'}],
      rows: changes.map((change) => [
        capital(keyInWords(change.path)),
        keptFractions(change.was ?? ''),
        keptFractions(change.is ?? ''),
        code(change),
      ]),
    }),
  ])
  return element as Element
}
