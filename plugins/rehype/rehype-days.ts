import type {Element, ElementContent, Root, RootContent} from 'hast'
import {toString as textOf} from 'hast-util-to-string'
import {h} from 'hastscript'
import {EXIT, visit} from 'unist-util-visit'
import type {VFile} from 'vfile'
import './rehype-headings.ts'

export interface DayOptions {
  /** How many days and hours are told of, in words, to stand beside the heading. */
  told?: string | undefined
  /** Whether the last day told of stands open: the work goes on. */
  isNewestOpen?: boolean | undefined
  /** How many values were measured on each day (ISO); they stand in the section of what was built. */
  measured?: ReadonlyMap<string, number> | undefined
}

/**
 * Make the prose the journal of a build: its opening, then a fold a day, named by what was done, when and for how
 * long, with its first picture small beside it; how much was measured on it is told at its end. Prose without days stays as
 * it is. Headings come down one level under the journal's own; anchors stay outside.
 */
export function rehypeDays({told, isNewestOpen, measured}: DayOptions) {
  return (tree: Root, file: VFile): void => {
    const [from, to] = proseOf(tree.children)
    const days = tree.children.slice(from, to).filter(isDay)
    if (days.length === 0) return
    const prose = tree.children.slice(from, to)
    const headings = new Set(prose.filter(isHeading).map(({properties}) => properties.id))
    for (const one of prose) if (isHeading(one)) one.tagName = `h${Math.min(6, levelOf(one) + 1)}`
    const newest = isNewestOpen ? days.at(-1) : undefined
    const parts = folded(prose, newest)
    for (const part of parts) if (isFold(part)) furnish(part, measured)
    const journal = h('section.days', {ariaLabelledBy: 'Journal'}, [
      h('h2', {id: 'Journal'}, ['Journal', ...(told ? [' ', h('small', told)] : [])]),
      ...(parts as ElementContent[]),
    ])
    tree.children.splice(from, to - from, journal)
    const known = file.data.headings ?? []
    const at = known.findIndex(({id}) => headings.has(id))
    file.data.headings = [
      ...known.slice(0, at),
      {id: 'Journal', depth: 2, title: 'Journal'},
      ...known
        .slice(at)
        .map((one) => (headings.has(one.id) ? {...one, depth: Math.min(6, one.depth + 1)} : one)),
    ]
  }
}

/** The stretch that the author wrote, with whatever is placed within it. */
function proseOf(nodes: readonly RootContent[]): [number, number] {
  const isOwn = (node: RootContent) => node.type === 'element'
  const from = nodes.findIndex(isOwn)
  return [from, from < 0 ? from : nodes.findLastIndex(isOwn) + 1]
}

function folded(prose: readonly RootContent[], newest: RootContent | undefined): RootContent[] {
  const parts: RootContent[] = []
  let day: {element: Element; level: number} | undefined
  for (const node of prose) {
    if (day && ((isHeading(node) && levelOf(node) <= day.level) || isFootnotes(node))) day = undefined
    if (isDay(node)) {
      day = {element: h('details.day', {open: node === newest}, [opener(node)]), level: levelOf(node)}
      parts.push(day.element)
    } else if (day) day.element.children.push(node as ElementContent)
    else parts.push(node)
  }
  return parts
}

const isFold = (node: RootContent): node is Element =>
  node.type === 'element' && node.tagName === 'details' && String(node.properties.className) === 'day'

/** Put a day's first picture, small, beside its name, and at its end that it was measured on it. */
function furnish(day: Element, measured: DayOptions['measured']): void {
  const [summary] = day.children as [Element]
  const first = found(day, 'img')
  if (first) summary.children.push(small(first))
  const count = measured?.get(String(found(summary, 'time')?.properties.dateTime))
  if (count)
    day.children.push(
      h('p', ['Measured: ', h('a', {href: '#as-built'}, count === 1 ? 'one value' : `${count} values`), '.']),
    )
}

function found(within: Element, tagName: string): Element | undefined {
  let first: Element | undefined
  visit(within, {tagName}, (element: Element) => {
    first = element
    return EXIT
  })
  return first
}

/** The same picture where it says nothing new: in its smallest version, without words. */
function small({properties: {src, srcSet, width, height}}: Element): Element {
  const smallest = /^(\S+)\s/.exec(String(srcSet ?? ''))?.[1] ?? src
  const isSized = typeof width === 'number' && typeof height === 'number'
  const size = isSized ? {width: thumbPx, height: Math.round((thumbPx * height) / width)} : {}
  return h('img.thumb', {src: String(smallest), alt: '', loading: 'lazy', ...size})
}

const thumbPx = 64

/** Name a day's fold: what was done, then the date and the hours that stood in brackets. */
function opener(heading: Element): Element {
  const [time, ...rest] = heading.children as [Element, ...ElementContent[]]
  const last = rest.at(-1)
  const hours = last?.type === 'text' ? /\s*\(([^()]*\d\s*(?:h|min)[^()]*)\)\s*$/.exec(last.value) : null
  if (last?.type === 'text' && hours) last.value = last.value.slice(0, hours.index)
  const [first] = rest
  if (first?.type === 'text') first.value = first.value.trimStart()
  const isNamed = textOf({...heading, children: rest}).trim() !== ''
  const when = isNamed ? [time, ...(hours ? [` · ${hours[1]}`] : [])] : hours ? [hours[1]!] : []
  return h('summary', [
    {...heading, children: isNamed ? rest : [time]},
    ...(when.length > 0 ? [' ', h('span.when', when)] : []),
  ])
}

const isFootnotes = (node: RootContent) =>
  node.type === 'element' && node.properties.dataFootnotes !== undefined

const isHeading = (node: RootContent): node is Element =>
  node.type === 'element' && /^h[1-6]$/.test(node.tagName)

const levelOf = ({tagName}: Element): number => Number(tagName.slice(1))

const isDay = (node: RootContent): node is Element =>
  isHeading(node) && node.children[0]?.type === 'element' && node.children[0].tagName === 'time'
