import type {Place} from '../build-file/problem.ts'

// Far more than anybody writes, and far less than what exhausts a parser.
const mostContainers = 200
const mostMarks = 1000
const mostTags = 300

const voidTags = new Set([
  'area',
  'br',
  'col',
  'embed',
  'hr',
  'img',
  'input',
  'link',
  'meta',
  'source',
  'track',
  'wbr',
])

/**
 * Find the line of a build file's prose from which on it is nested too deep to be read: quotations and lists in one
 * line, stresses and pictures in one paragraph, or HTML elements that stay open.
 */
export function findTooNested(text: string): Place | undefined {
  const lines = text.split('\n')
  let marks = 0
  let tags = 0
  for (let at = proseStart(lines); at < lines.length; at++) {
    const line = lines[at]!
    marks = line.trim() === '' ? 0 : marks + (line.match(/[*_~]+|!\[/g)?.length ?? 0)
    tags = Math.max(0, tags + openTags(line))
    if (marks > mostMarks || tags > mostTags || containers(line) > mostContainers)
      return {line: at + 1, column: 1, endLine: at + 1, endColumn: line.length + 1}
  }
  return undefined
}

/** Find the line after the front matter; the first one where there is none. */
export function proseStart(lines: readonly string[]): number {
  const isFence = (line: string) => /^---\s*$/.test(line)
  return isFence(lines[0] ?? '') ? lines.findIndex((line, at) => at > 0 && isFence(line)) + 1 : 0
}

/** Count the signs of quotations and list items that a line starts with, and the lists that its indent may be in. */
export function containers(line: string): number {
  const [start = ''] = /^(?:\s*(?:>|[-+*](?=\s)|\d{1,9}[.)](?=\s)))*\s*/.exec(line) ?? []
  const signs = start.match(/>|[-+*]|\d+[.)]/g)?.length ?? 0
  return signs + Math.floor((start.match(/\s/g)?.length ?? 0) / 2)
}

/** Count the elements that a line opens, less those that it closes. */
function openTags(line: string): number {
  let open = 0
  for (const [, slash, name = ''] of line.matchAll(/<(\/?)([a-z][a-z\d-]*)/gi))
    if (!voidTags.has(name.toLowerCase())) open += slash ? -1 : 1
  return open
}
