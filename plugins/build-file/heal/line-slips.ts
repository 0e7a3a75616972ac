/** How far a rewriting goes from what was typed: signs, then indents, then quotes, then a line left out. */
type Reach = 0 | 1 | 2 | 3

/** Lines of a key as they may have been meant. */
export interface Rewriting {
  lines: string[]
  reach: Reach
}

/** What is known of the file when a line is rewritten. */
interface Known {
  /** Every key of the schema. */
  keys: ReadonlySet<string>
  /** The keys that the short form of a key of the first level stands for. */
  shortOf: (key: string) => readonly string[]
}

type Change = (line: string, known: Known) => (string | undefined)[]

const put =
  (find: RegExp, by: string): Change =>
  (line) => [line.replace(find, by)]

/** Part a line into its text and the remark behind it. */
function withoutRemark(line: string): [text: string, remark: string] {
  const found = /\s+#(?:\s.*)?$/.exec(line)
  return found ? [line.slice(0, found.index), found[0]] : [line, '']
}

const onText =
  (change: (text: string, known: Known) => (string | undefined)[]): Change =>
  (line, known) => {
    const [text, remark] = withoutRemark(line)
    return change(text.trimEnd(), known).map((each) => (each === undefined ? undefined : each + remark))
  }

const head = /^(\s*(?:- +)?(?:[\w .'-]+?):\s+)(\S.*)$/

/** Signs that were left out, doubled or mistaken. */
const ofSigns: readonly Change[] = [
  put(/[\u00a0\u2000-\u200b\u202f\u3000\ufeff]/g, ' '),
  put(/[“”„‟«»]/g, '"'),
  put(/[‘’‚‛]/g, "'"),
  put(/：/g, ':'),
  put(/(?<![\w#])([A-Ga-g]) #(-?\d)/g, '$1#$2'),
  put(/^(\s*(?:- )?[A-Za-z][\w .-]*?)\s*:(?=[^\s:/])/, '$1: '),
  put(/([{,]\s*[A-Za-z][\w-]*):(?=[^\s:/])/g, '$1: '),
  put(/^(\s*(?:- )?[A-Za-z][\w .-]*?)\s*(?:::+|:?=>?|->|→)\s*/, '$1: '),
  put(/([{,]\s*[A-Za-z][\w-]*)\s*=\s*/g, '$1: '),
  put(/^(\s*)[*•·–—+](?=\s*\S)\s*/, '$1- '),
  put(/^(\s*)-(?=[^\s-])/, '$1- '),
  put(/^(\s*)(?=[^\s#-])/, '$1- '),
  put(/(:\s+)- +(?=[\d.])/, '$1-'),
  put(/,(\s*,)+/g, ','),
  put(/([[{])\s*,\s*/g, '$1'),
  put(/\s*;\s*/g, ', '),
  put(/([^\s,:[{]) +([A-Za-z][\w-]*:(?=\s))/g, '$1, $2'),
  put(/([}\]])\s+(?=[{[\w])/g, '$1, '),
  (line) =>
    [...line.matchAll(/,(?=\s*[\w-]+:\s)/g)].flatMap(({index}) =>
      [']', '}'].map((end) => line.slice(0, index) + end + line.slice(index)),
    ),
  (line, {keys}) => {
    const [, indent = '', word = '', value = ''] =
      /^(\s*(?:- )?)([A-Za-z][\w-]*)[\s;,.-]+(\S.*)$/.exec(line) ?? []
    return [keys.has(word.toLowerCase()) ? `${indent}${word}: ${value}` : undefined]
  },
  (line, {keys}) => {
    const [, indent = '', word = ''] = /^(\s*)([A-Za-z][\w-]*)[\s;.]*$/.exec(line) ?? []
    return [keys.has(word.toLowerCase()) ? `${indent}${word}:` : undefined]
  },
  (text) => [closed(text), closed(text.replace(/[,\s]+$/, ''))],
  (text) => {
    const [, before = '', value = ''] = head.exec(text) ?? []
    if (!before) return []
    const isPairs = /^[\w-]+:\s/.test(value)
    return [
      /\]\s*$/.test(value) ? `${before}[${value}` : undefined,
      /\}\s*$/.test(value) ? `${before}{${value}` : undefined,
      isPairs ? `${before}{${value.replace(/[,}]\s*$/, '')}}` : undefined,
    ]
  },
  (text) => {
    const [, dash = '', pairs = ''] = /^(\s*- +)([\w-]+:\s.*,\s*[\w-]+:\s.*)$/.exec(text) ?? []
    return [dash ? `${dash}{${pairs.replace(/[}\s]+$/, '')}}` : undefined]
  },
  // Quotes: one too many, one too few, an inch mark within quotes.
  put(/"([^"]*\d)""/g, '$1"'),
  put(/""/g, '"'),
  (text) => [
    ...endsOf(text).flatMap((each) => [
      /^[^"]*"[^"]*$/.test(text) ? `${each}"` : undefined,
      /^[^']*'[^']*$/.test(text) ? `${each}'` : undefined,
    ]),
  ],
  put(/(:\s+|[[{,]\s*)"([^",}\]]*)(?=[,}\]])/, '$1"$2"'),
  (line) => ((line.match(/"/g)?.length ?? 0) === 1 ? [line.replace('"', '')] : []),
  (line) => ((line.match(/'/g)?.length ?? 0) === 1 ? [line.replace("'", '')] : []),
]

const opens: Readonly<Record<string, string>> = {'[': ']', '{': '}'}

/** Put in the brackets that are not closed, and take out those that close nothing. */
function closed(text: string): string {
  const open: string[] = []
  let quote = ''
  let out = ''
  for (const [at, sign] of [...text].entries()) {
    if (quote) {
      if (sign === quote) quote = ''
    } else if ((sign === '"' || sign === "'") && /[\s[{,:]/.test(text[at - 1] ?? ' ')) quote = sign
    else if (opens[sign]) open.push(opens[sign])
    else if (sign === ']' || sign === '}') {
      const at = open.lastIndexOf(sign)
      // One that closes nothing stands for the one that is open, or for none.
      if (at < 0) {
        const wanted = open.pop()
        if (wanted) out += wanted
        continue
      }
      while (open.length > at + 1) out += open.pop()
      open.pop()
    }
    out += sign
  }
  return out + open.reverse().join('')
}

/** Put quotes round a value that YAML would take for something else. */
const quotes: readonly Change[] = [
  onText((text) => {
    const [, before = '', value = ''] = head.exec(text) ?? /^(\s*- +)(\S.*)$/.exec(text) ?? []
    // Brackets that do not close may be a text's own.
    return before && (!/^[[{]/.test(value) || (/^[[{]\p{L}/u.test(value) && closed(value) !== value))
      ? endsOf(value).map((each) => before + inQuotes(each))
      : []
  }),
  (line) => {
    const [, before = '', value = ''] = head.exec(line.trimEnd()) ?? []
    return before && !/^[[{]/.test(value) ? endsOf(value).map((each) => before + inQuotes(each)) : []
  },
  // Within braces: each value in turn, up to the next key or the end.
  (line) =>
    [...line.matchAll(/(?<=[{,]\s*[\w-]+:\s+)(?![[{])([^,{}[\]]+?)(?=\s*(?:,\s*[\w-]+:\s|\}))/g)].map(
      ({index, 0: value}) => line.slice(0, index) + inQuotes(value) + line.slice(index + value.length),
    ),
  (line) =>
    [...line.matchAll(/(?<=[{,]\s*[\w-]+:\s+)(?![[{])(.+?)(?=\s*(?:,\s*[\w-]+:\s|\}\s*(?:#.*)?$))/g)].map(
      ({index, 0: value}) => line.slice(0, index) + inQuotes(value) + line.slice(index + value.length),
    ),
]

/** A comma at the end may be part of the text or not; behind quotes it is not. */
const endsOf = (value: string): string[] =>
  /^(["']).*\1[\s,;]+$/.test(value) ? [withoutEnd(value)] : [value, withoutEnd(value)]

const withoutEnd = (value: string): string => value.replace(/[\s,;]+$/, '')

/** Write a text in double quotes, without the stray quotes round it. */
function inQuotes(value: string): string {
  const bare = /^(["']).*\1$/.test(value)
    ? value.slice(1, -1)
    : value.replace(/^["'](?=[^"']*$)|(?<=^[^"']*)["']$/, '')
  return JSON.stringify(bare.replace(/\\(?=["'])/g, ''))
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
