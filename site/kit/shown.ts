import type {Element, ElementContent} from 'hast'
import {keyOf} from './cache.ts'
import {markup, withPrefix, written} from './markup.ts'
import type {SiteBuild} from './site-data.ts'

/** By the build: most are the same at the next look. */
const keys = new WeakMap<SiteBuild, string>()

/** Stands for what the pages of the whole journal show of a build. */
export function keyOfShown(one: SiteBuild): string {
  const known = keys.get(one)
  if (known) return known
  const key = keyOf(shownOf(one))
  keys.set(one, key)
  return key
}

function shownOf(one: SiteBuild): string {
  const {slug, file, title, key, build, problems, isDraft, made, cover, pictures} = one
  const told = problems.map(({rule, severity, message}) => [rule, severity, message])
  const {hanging, headings, drawings} = made
  const shown = [slug, file, title, key, told, isDraft, hanging, headings, drawings, cover]
  return JSON.stringify([...shown, [...pictures], inOrder(build)])
}

/** What the days of a build tell, in their order, and not at which lines they stand. */
function inOrder({days, links}: SiteBuild['build']): unknown[] {
  return [...days, ...links].sort((a, b) => a.place.line - b.place.line).map(({place: _, ...one}) => one)
}

/**
 * Write a part of a page that shows one build among many. It is written once for as long as the build is the same and the
 * part is made `among` the same; `make` makes it, and `prefix` is the site's.
 */
export function partOf(): (
  one: SiteBuild,
  how: {among: string; prefix: string; make: () => Element[]},
) => ElementContent {
  const parts = new WeakMap<SiteBuild, {by: string; html: string}>()
  return (one, {among, prefix, make}) => {
    const by = JSON.stringify([among, prefix])
    const known = parts.get(one)
    if (known?.by === by) return written(known.html)
    const html = markup(withPrefix({type: 'root', children: make()}, prefix))
    parts.set(one, {by, html})
    return written(html)
  }
}
