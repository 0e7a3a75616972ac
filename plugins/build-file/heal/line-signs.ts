/** What is known of the file when a line is rewritten. */
export interface Known {
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
export function withoutRemark(line: string): [text: string, remark: string] {
  const found = /\s+#(?:\s.*)?$/.exec(line)
  return found ? [line.slice(0, found.index), found[0]] : [line, '']
}

export const onText =
  (change: (text: string, known: Known) => (string | undefined)[]): Change =>
  (line, known) => {
    const [text, remark] = withoutRemark(line)
    return change(text.trimEnd(), known).map((each) => (each === undefined ? undefined : each + remark))
  }

const head = /^(\s*(?:- +)?(?:[\w .'-]+?):\s+)(\S.*)$/

/** Signs that were left out, doubled or mistaken. */
export const ofSigns: readonly Change[] = [
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
export function closed(text: string): string {
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
export const quotes: readonly Change[] = [
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
