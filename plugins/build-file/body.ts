import type {Nodes, Root} from 'mdast'
import {toString as textOf} from 'mdast-util-to-string'
import {visit} from 'unist-util-visit'
import {parseBuildFile} from '../syntax/parse-build-file.ts'
import type {Build, DayEntry} from './build.ts'
import {readDay} from './days.ts'
import {type Place, wholeFile} from './place.ts'

/** What the body of a build file tells besides its prose. */
export interface Body {
  days: DayEntry[]
  links: Build['links'][number][]
}

/**
 * Read the body of a build file (the whole text, or its tree where it is parsed already): the days that its
 * headings name, and every relative picture and link, each with its place. Fragments and queries are dropped.
 */
export function readBody(file: string | Root): Body {
  const tree = typeof file === 'string' ? parseBuildFile(file) : file
  const body: Body = {days: [], links: []}
  for (const node of tree.children) {
    const day = node.type === 'heading' ? readDay(textOf(node), placeOf(node)) : undefined
    if (day) body.days.push(day)
  }
  const definitions = new Map<string, string>()
  visit(tree, 'definition', ({identifier, url}) => void definitions.set(identifier, url))
  visit(tree, (node) => {
    for (const {url, ...found} of targets(node, definitions)) {
      const target = ownTarget(url)
      if (target) body.links.push({target, ...found, place: placeOf(node)})
    }
  })
  return body
}

interface Found {
  url: string
  isPicture: boolean
  alt?: string
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
    return {url: tag[2] ?? '', isPicture, ...(isPicture ? {alt: alt?.slice(1).join('') ?? ''} : {})}
  })
}

/** Give the path that a relative address points to; undefined for another site, the page itself, or the root. */
function ownTarget(url: string): string | undefined {
  const path = url.replace(/[?#].*$/s, '')
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
