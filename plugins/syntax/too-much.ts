import type {Place} from '../build-file/problem.ts'
import {containers, proseStart} from './too-nested.ts'

/** What prose can have so much of that a short file makes an endless page. */
export type Excess = 'cells' | 'definitions' | 'depth' | 'headings' | 'lines' | 'references' | 'signs'

/** Far more than anybody writes, and what a page can still hold: one of each, references by the letters they bring. */
export const mostOf: Readonly<Record<Excess, number>> = {
  cells: 10_000,
  definitions: 500,
  depth: 100_000,
  headings: 1000,
  lines: 20_000,
  references: 500_000,
  signs: 20_000,
}

export interface TooMuch {
  of: Excess
  place: Place
}

/**
 * Find the line of a build file's prose from which on it has too much: cells of tables, which a row may leave empty,
 * headings, definitions of links and notes, lines, signs of Markdown and HTML, and letters of addresses and titles that
 * references repeat.
 */
export function findTooMuch(text: string): TooMuch | undefined {
  const lines = text.split('\n')
  const start = proseStart(lines)
  const brought = lettersBroughtBy(lines.slice(start))
  const counts = {cells: 0, definitions: 0, depth: 0, headings: 0, lines: 0, references: 0, signs: 0}
  let columns = 0
  for (let at = start; at < lines.length; at++) {
    const line = lines[at]!
    columns = line.trim() === '' ? 0 : columnsOf(line) || columns
    counts.lines++
    // Every line is weighed anew in each list and quotation around it.
    counts.depth += containers(line)
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
