import {mostFrontLines} from '../build-file/reading/front-matter.ts'
import type {Excess} from '../build-file/schema/build.ts'
import type {Place} from '../build-file/schema/problem.ts'

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
function proseStart(lines: readonly string[]): number {
  const isFence = (line: string) => /^---\s*$/.test(line)
  return isFence(lines[0] ?? '') ? lines.findIndex((line, at) => at > 0 && isFence(line)) + 1 : 0
}

/** Count the signs of quotations and list items that a line starts with, and the lists that its indent may be in. */
function containers(line: string): number {
  const [start = ''] = /^(?:\s*(?:>|[-+*](?=\s)|\d{1,9}[.)](?=\s)))*\s*/.exec(line) ?? []
  const signs = start.match(/>|[-+*]|\d+[.)]/g)?.length ?? 0
  return signs + Math.floor((start.match(/\s/g)?.length ?? 0) / 2)
}

/** Count the list items that a line begins, be that in quotations. */
const itemsOf = (line: string): number =>
  /^(?:\s*(?:>|[-+*](?=\s|$)|\d{1,9}[.)](?=\s|$)))+/.exec(line)?.[0].match(/[-+*]|\d[.)]/g)?.length ?? 0

/** Count the elements that a line opens, less those that it closes. */
function openTags(line: string): number {
  let open = 0
  for (const [, slash, name = ''] of line.matchAll(/<(\/?)([a-z][a-z\d-]*)/gi))
    if (!voidTags.has(name.toLowerCase())) open += slash ? -1 : 1
  return open
}

/** Far more than anybody writes, and what a page can still hold: one of each, references by the letters they bring. */
const mostOf: Readonly<Record<Excess, number>> = {
  cells: 10_000,
  definitions: 500,
  depth: 100_000,
  headings: 1000,
  items: 5000,
  lines: 20_000,
  paragraph: 10_000,
  references: 500_000,
  signs: 20_000,
}

export interface TooMuch {
  of: Excess
  place: Place
}

/**
 * Find the line of a build file's prose from which on it has too much: cells of tables, which a row may leave empty,
 * headings, definitions of links and notes, list items, lines, lines of one paragraph, signs of Markdown and HTML, and letters of addresses and
 * titles that references repeat.
 */
export function findTooMuch(text: string): TooMuch | undefined {
  const lines = text.split('\n')
  const start = proseStart(lines)
  // Of dimensions that are too many to be read the prose is not read either: a parser weighs each of their lines.
  if (start > mostFrontLines + 1)
    return {
      of: 'lines',
      place: {line: start, column: 1, endLine: start, endColumn: lines[start - 1]!.length + 1},
    }
  const brought = lettersBroughtBy(lines.slice(start))
  const counts = {
    cells: 0,
    definitions: 0,
    depth: 0,
    headings: 0,
    items: 0,
    lines: 0,
    paragraph: 0,
    references: 0,
    signs: 0,
  }
  let columns = 0
  let isCode = false
  for (let at = start; at < lines.length; at++) {
    const line = lines[at]!
    columns = line.trim() === '' ? 0 : columnsOf(line) || columns
    counts.lines++
    if (isFence.test(line)) isCode = !isCode
    // A parser puts a paragraph together line by line, each time anew.
    counts.paragraph = isCode || line.trim() === '' ? 0 : counts.paragraph + 1
    // Every line is weighed anew in each list and quotation around it.
    counts.depth += containers(line)
    counts.items += itemsOf(line)
    counts.signs += line.match(signs)?.length ?? 0
    // A parser weighs every line with strokes anew as the head of a table.
    counts.cells += Math.max(columns, line.split('|').length - 1)
    if (isDefinition.test(line)) counts.definitions++
    if (isHeading.test(line)) counts.headings++
    for (const [, label = ''] of line.matchAll(labels)) counts.references += brought.get(named(label)) ?? 0
    for (const of of Object.keys(mostOf) as Excess[])
      if (counts[of] > mostOf[of])
        return {of, place: {line: at + 1, column: 1, endLine: at + 1, endColumn: line.length + 1}}
  }
  return undefined
}

/** What may begin a stress, a link, a code, an element, a directive or a value, and what a parser looks back from. */
const signs = /[\\`*_~[\]<>&!@{]|::?[a-z]|www\.|^\s*(?:[-+]|\d+[.)])(?=\s|$)/g

const isFence = /^[\s>]*(?:`{3}|~{3})/
const isHeading = /^[\s>]*(?:#{1,6}(?:\s|$)|(?:=+|-+)\s*$)/
const isDefinition = /^[\s>]*\[[^\]]+\]:/
const labels = /\[([^[\]]{1,999})\]/g

const named = (label: string) => label.trim().replace(/\s+/g, ' ').toLowerCase()

/** Count the columns that a table's second line sets up; none for any other line. */
function columnsOf(line: string): number {
  if (!line.includes('|') || !/^[\s>|:-]*-[\s|:-]*$/.test(line)) return 0
  return line.split('|').filter((cell) => cell.includes('-')).length
}

/** Count the letters that each reference to a definition puts on the page, by the definition's name. */
function lettersBroughtBy(lines: readonly string[]): Map<string, number> {
  const brought = new Map<string, number>()
  for (const line of lines) {
    const [all, label = ''] = /^[\s>]*\[([^\]]{1,999})\]:/.exec(line) ?? []
    if (all && !label.startsWith('^') && !brought.has(named(label)))
      brought.set(named(label), line.length - all.length)
  }
  return brought
}
