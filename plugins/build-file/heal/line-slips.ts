import {closed, type Known, ofSigns, onText, quotes, withoutRemark} from './line-signs.ts'

/** How far a rewriting goes from what was typed: signs, then indents, then quotes, then a line left out. */
type Reach = 0 | 1 | 2 | 3

/** Lines of a key as they may have been meant. */
export interface Rewriting {
  lines: string[]
  reach: Reach
}

/** Whether a dash is put before a key that the item above it does not have yet, where an indent is likelier. */
function isNewItem(by: string, above: readonly string[]): boolean {
  const key = /^\s*- ([\w-]+):\s/.exec(by)?.[1]
  const start = above.findLastIndex((each) => /^\s*- [\w-]+:\s/.test(each))
  return key !== undefined && start >= 0 && !above.slice(start).some((each) => keyOf(each) === key)
}

const keyOf = (line: string): string | undefined => /^\s*(?:- )?([\w-]+):/.exec(line)?.[1]

const indentOf = (line: string): string => /^\s*/.exec(line)![0]

const isBlank = (line: string): boolean => /^\s*(?:#.*)?$/.test(line)

/** Write blanks for the tabs that indent lines, which are never right. */
export const withoutTabs = (lines: readonly string[]): string[] =>
  lines.map((each) => each.replace(/^[ \t]+/, (gap) => gap.replaceAll('\t', '  ')))

/** Give every rewriting of one line of a key: what one slip of the hand explains. */
export function* rewritings(lines: readonly string[], at: number, known: Known): Generator<Rewriting> {
  const line = lines[at]!
  const withLine = (...by: string[]) => [...lines.slice(0, at), ...by, ...lines.slice(at + 1)]
  for (const change of ofSigns)
    for (const by of onText(change)(line, known))
      if (by !== undefined && by !== line)
        yield {lines: withLine(by), reach: isNewItem(by, lines.slice(0, at)) ? 2 : 0}
  yield* overLines(lines, at)
  const gap = Math.min(...lines.filter((each) => !isBlank(each)).map((each) => indentOf(each).length))
  if (gap > 0) yield {lines: lines.map((each) => (isBlank(each) ? each : each.slice(gap))), reach: 1}
  const body = line.trimStart()
  const indents = new Set([...lines.filter((each) => !isBlank(each)).map(indentOf), ''])
  const before = lines.slice(0, at).findLast((each) => !isBlank(each))
  if (before) indents.add(`${indentOf(before)}  `)
  for (const indent of indents)
    if (indent !== indentOf(line)) yield {lines: withLine(indent + body), reach: 1}
  const nested = nestedUnder(lines, at, known)
  if (nested) yield {lines: nested, reach: 1}
  for (const change of quotes)
    for (const by of change(line, known))
      if (by !== undefined && by !== line) yield {lines: withLine(by), reach: 2}
  yield {lines: withLine(`${indentOf(line)}# ${body}`), reach: 3}
}

/** A bracket that opens on one line and closes on none. */
function* overLines(lines: readonly string[], at: number): Generator<Rewriting> {
  const last = lines.findLastIndex((each) => !isBlank(each))
  if (at !== last || last === 0) return
  const [text, remark] = withoutRemark(lines[last]!)
  const whole = closed(lines.map((each) => withoutRemark(each)[0]).join('\n'))
  const added = /[\]}]+$/.exec(whole)?.[0] ?? ''
  for (let count = 1; count <= added.length; count += 1)
    yield {
      lines: [
        ...lines.slice(0, last),
        `${text.trimEnd()}${added.slice(-count)}${remark}`,
        ...lines.slice(last + 1),
      ],
      reach: 0,
    }
}

/** Keys below a key that has its value already: the value goes among them, under the key that it stands for. */
function nestedUnder(lines: readonly string[], at: number, {shortOf}: Known): string[] | undefined {
  const [, indent = '', key = '', value = ''] = /^(\s*)([\w-]+):\s+([^\s{[#].*?)\s*$/.exec(lines[at]!) ?? []
  const next = lines.slice(at + 1).find((each) => !isBlank(each))
  if (!key || !next || indentOf(next).length <= indent.length || next.trimStart().startsWith('-'))
    return undefined
  const keys = shortOf(key)
  const parts = keys.length > 1 ? value.split(/\s+[x×]\s+/) : [value]
  if (keys.length === 0 || parts.length > keys.length) return undefined
  const own = parts.map((part, each) => `${indentOf(next)}${keys[each]}: ${part}`)
  return [...lines.slice(0, at), `${indent}${key}:`, ...own, ...lines.slice(at + 1)]
}
