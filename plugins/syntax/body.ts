import type {Heading, Nodes, Root} from 'mdast'
import type {LeafDirective} from 'mdast-util-directive'
import {toString as textOf} from 'mdast-util-to-string'
import {visit} from 'unist-util-visit'
import {dayInAnotherForm, likelyHours, readDate, readDuration} from '../build-file/quantities/read-date.ts'
import type {Body, DayEntry, Directive} from '../build-file/schema/build.ts'
import {type Place, wholeFile} from '../build-file/schema/problem.ts'
import {parseBuildFile} from './parse-build-file.ts'

/**
 * Read the body of a build file (the whole text, or its tree where it is parsed already): the days that its
 * headings name, the tasks that are ticked, the steps that are named, every relative picture and link (fragments and queries dropped), the directives and the value
 * references, each with its place. Prose that is nested too deep is not read: its place is all that is told.
 */
export function readBody(file: string | Root): Body {
  const tree = typeof file === 'string' ? parseBuildFile(file) : file
  const definitions = new Map<string, string>()
  const nodes: Nodes[] = []
  visit(tree, (node) => {
    nodes.push(node)
    if (node.type === 'definition') definitions.set(node.identifier, node.url)
  })
  return {
    tooNested: tree.data?.tooNested,
    tooMuch: tree.data?.tooMuch,
    days: tree.children.flatMap((node) =>
      node.type === 'heading' ? (readDay(textOf(node), placeOf(node)) ?? []) : [],
    ),
    unclear: unclearOf(tree),
    ticked: nodes.flatMap((node) => (node.type === 'listItem' && node.checked ? [textOf(node)] : [])),
    steps: nodes.flatMap((node) =>
      node.type === 'stepReference' ? [{name: node.value, place: placeOf(node)}] : [],
    ),
    links: nodes.flatMap((node) =>
      targets(node, definitions).flatMap(({url, ...found}) => {
        const target = ownTarget(url, found.isPicture)
        return target ? [{target, ...found, place: placeOf(node)}] : []
      }),
    ),
    rawMedia: nodes.flatMap((node) => (node.type === 'html' ? mediaOf(node.value, placeOf(node)) : [])),
    directives: tree.children.flatMap((node) => (node.type === 'leafDirective' ? [directiveOf(node)] : [])),
    references: nodes.flatMap((node) =>
      node.type === 'valueReference' ? [{path: node.value, place: placeOf(node)}] : [],
    ),
  }
}

function directiveOf(node: LeafDirective): Directive {
  const attributes = Object.entries(node.attributes ?? {}).map(([key, value]) => [key, value ?? ''])
  return {name: node.name, attributes: Object.fromEntries(attributes), place: placeOf(node)}
}

interface Found {
  url: string
  isPicture: boolean
  alt?: string | undefined
}

/** List what a node points to, by itself or by reference. */
function targets(node: Nodes, definitions: ReadonlyMap<string, string>): Found[] {
  if (node.type === 'image') return [{url: node.url, isPicture: true, alt: node.alt ?? ''}]
  if (node.type === 'link') return [{url: node.url, isPicture: false}]
  if (node.type === 'imageReference' || node.type === 'linkReference') {
    const url = definitions.get(node.identifier) ?? ''
    return [
      node.type === 'linkReference' ? {url, isPicture: false} : {url, isPicture: true, alt: node.alt ?? ''},
    ]
  }
  if (node.type !== 'html') return []
  return [...node.value.matchAll(/<(img|a)\b[^>]*?\s(?:src|href)\s*=\s*["']?([^"'\s>]+)/gi)].map((tag) => {
    const isPicture = tag[1]?.toLowerCase() === 'img'
    const alt = /\salt\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s>]+))/i.exec(node.value.slice(tag.index))
    return {url: tag[2] ?? '', isPicture, alt: isPicture ? (alt?.slice(1).join('') ?? '') : undefined}
  })
}

/** Find film, sound and frames in HTML, each with what it leads to, be that in a source of its own. */
function mediaOf(html: string, place: Place): {tag: string; target: string; place: Place}[] {
  return [...html.matchAll(/<(video|audio|iframe|embed|object)\b([^>]*)>(?:\s*<source\b([^>]*)>)?/gi)].map(
    ([, tag = '', own = '', source = '']) => {
      const said = /\s(?:src|data)\s*=\s*["']?([^"'\s>]+)/i
      return {tag: tag.toLowerCase(), target: (said.exec(own) ?? said.exec(source))?.[1] ?? '', place}
    },
  )
}

/**
 * Give the path that a relative address points to; undefined for another site, the page itself, or the root.
 * The name of a picture may hold ? and #: what follows them is left out only after a whole name.
 */
export function ownTarget(url: string, isPicture: boolean): string | undefined {
  const path = isPicture ? url.replace(/(\.[a-z\d]{2,5})[?#].*$/is, '$1') : url.replace(/[?#].*$/s, '')
  if (path === '' || path.startsWith('/') || /^[a-z][a-z\d+.-]*:/i.test(path)) return undefined
  try {
    return decodeURIComponent(path)
  } catch {
    return path
  }
}

function placeOf({position}: Nodes): Place {
  if (!position) return wholeFile
  const {start, end} = position
  return {line: start.line, column: start.column, endLine: end.line, endColumn: end.column}
}

/**
 * Read a heading as a day's entry: it starts with a date (ISO 8601), and round brackets at its end that hold a
 * duration and nothing else are the hours. `2026-03-07 Milling the strips (1 h 30 min)` → the seventh of March,
 * `Milling the strips`, 90 minutes. Undefined where it starts with no date that the calendar has.
 */
function readDay(heading: string, place: Place): DayEntry | undefined {
  const [, iso = '', rest = ''] = /^(\d{4}-\d\d-\d\d)(?![\w-])(.*)$/s.exec(heading.trim()) ?? []
  if (!readDate(iso).ok) return undefined
  const [, before = '', inBrackets = ''] = /^(.*)\(([^()]*)\)\s*$/s.exec(rest) ?? []
  const minutes = readDuration(inBrackets)
  const title = (minutes.ok ? before : rest).replace(/^[\s:,.;–—-]+/, '').trim()
  return {iso, title, ...(minutes.ok && {minutes: minutes.value}), place}
}

/** List what is unclear in the headings; undefined where nothing is. */
function unclearOf({children}: Root): Body['unclear'] {
  const found = children.flatMap((node) => (node.type === 'heading' ? unclearIn(node) : []))
  return found.length > 0 ? found : undefined
}

/** Find in a heading what looks like a day, or behind a day like hours, in a form that is not read. */
function unclearIn(node: Heading): NonNullable<Body['unclear']>[number][] {
  const heading = textOf(node)
  const first = node.children[0]
  const last = node.children.at(-1)
  const day = first?.type === 'text' ? dayInAnotherForm(first.value) : undefined
  const isDay = day !== undefined || readDay(heading, wholeFile) !== undefined
  const [, inBrackets = ''] = /\(([^()]*)\)\s*$/.exec(last?.type === 'text' ? last.value : '') ?? []
  const hours = isDay && inBrackets !== '' && !readDuration(inBrackets).ok ? likelyHours(inBrackets) : []
  const start = first?.position?.start
  const end = last?.position?.end
  return [
    ...(day && start
      ? [{is: 'day' as const, ...day, place: stretch(start.line, start.column, day.written.length)}]
      : []),
    ...(hours.length > 0 && end
      ? [
          {
            is: 'hours' as const,
            written: inBrackets,
            expected: hours,
            place: stretch(end.line, end.column - inBrackets.length - 1, inBrackets.length),
          },
        ]
      : []),
  ]
}

const stretch = (line: number, column: number, length: number): Place => ({
  line,
  column,
  endLine: line,
  endColumn: column + length,
})
