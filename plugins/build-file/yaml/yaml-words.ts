/** A complaint of the YAML parser. */
interface Slip {
  code: string
  message: string
}

const mark = (sign: string): string =>
  `${sign} at the start of a value has a meaning of its own here; put quotes round the whole text`

/** What the parser complains of, by its code; where one code is said of several things, by its message too. */
const inWords: Readonly<Record<string, string | readonly (readonly [RegExp, string])[]>> = {
  ALIAS_PROPS: mark('* or &'),
  BAD_ALIAS: mark('* or &'),
  BAD_COLLECTION_TYPE: mark('!'),
  BAD_DIRECTIVE: 'a line that starts with % is no key; take it out, or put quotes round the text',
  BAD_DQ_ESCAPE:
    'a backslash within double quotes has a meaning of its own; write a plain stroke /, or use single quotes',
  BAD_INDENT: [
    [/sufficiently indented/, 'what stands within brackets is indented further than its key'],
    [/./, 'this line is indented differently from its neighbours'],
  ],
  BAD_PROP_ORDER: mark('& or !'),
  BAD_SCALAR_START: [
    [/with (?:reserved character )?`/, mark('`')],
    [/with (?:reserved character )?@/, mark('@')],
    [/with (?:directive indicator character )?%/, mark('%')],
    [/with (?:block scalar indicator )?[|>]/, mark('| or >')],
    [/./, 'a value cannot start with this sign; put quotes round the whole text'],
  ],
  BLOCK_AS_IMPLICIT_KEY: [
    [/sequence/, 'a dash stands where no list can begin; lists with dashes start on a line of their own'],
    [
      /./,
      'a key and its value stand on the line of another key; put them on a line of their own, or quotes round a text with a colon',
    ],
  ],
  BLOCK_IN_FLOW:
    'within brackets no line can start with a dash or a key of its own; close the bracket before it',
  DUPLICATE_KEY: 'a key is given twice',
  KEY_OVER_1024_CHARS: 'this key is far too long; a colon and a blank end a key',
  MISSING_CHAR: [
    [/quote/, 'a quotation mark is not closed'],
    [/followed by map values/, 'this line has no colon; a key, a colon and a blank stand before the value'],
    [/Missing ,/, 'a comma is missing between two values'],
    [/Comments/, 'a # needs a blank before it to start a remark; put quotes round a text with a #'],
    [/space after :/, 'a blank is missing behind a colon'],
    [/without -/, 'a dash is missing before an item of the list'],
    [/Tags and anchors/, mark('& or !')],
    [/indicator/, 'only one block of dimensions is read; the rest of the line cannot stand here'],
    [/./, 'a sign is missing here'],
  ],
  MULTILINE_IMPLICIT_KEY:
    'a key runs over several lines; a colon is missing, or a quotation mark or a bracket is not closed',
  MULTIPLE_ANCHORS: mark('&'),
  MULTIPLE_DOCS: 'a second document begins here; only one block of dimensions is read',
  MULTIPLE_TAGS: mark('!'),
  NON_STRING_KEY: 'a key must be one word',
  RESOURCE_EXHAUSTION: 'brackets or lists stand too deep in each other to be read',
  TAB_AS_INDENT: 'a tab indents this line; use blanks',
  TAG_RESOLVE_FAILED: mark('!'),
  UNEXPECTED_TOKEN: [
    [/Unexpected ,|empty item/, 'there is a comma too many'],
    [/header/, 'behind | or > nothing else stands on the line; put quotes round the whole text'],
    [/flow-(?:map|seq)-end|Unexpected [}\]]/, 'a bracket closes here that was never opened'],
    [/scalar|node end/, 'the value has ended, and something follows it; put quotes round the whole text'],
    [/seq-item-ind/, 'a dash stands where no list can begin'],
    [/./, 'this cannot be read here'],
  ],
}

/** Say in a maker's words what the YAML parser complains of. */
export function slipInWords({code, message}: Slip): string {
  const open = /end with a ([}\]])/.exec(message)?.[1]
  if (open) return `a ${open === '}' ? '{' : '['} is not closed: put ${open} where it ends`
  const words = inWords[code]
  if (typeof words === 'string') return words
  return words?.find(([said]) => said.test(message))?.[1] ?? 'this cannot be read here'
}

const without = (text: string, signs: RegExp): string => text.replace(signs, '')

/** Say what is wrong with lines by what mends them; where that is not plain, by what the parser says. */
export function rewritingInWords(own: string, way: string, slip: Slip): string {
  const differs = (signs: RegExp) => without(own, signs) === without(way, signs)
  const more = (sign: RegExp) => (way.match(sign)?.length ?? 0) > (own.match(sign)?.length ?? 0)
  if (/^ *\t/m.test(own) && !/^ *\t/m.test(way)) return 'a tab indents this line; use blanks'
  if (differs(/^\s+/gm)) return 'this line is indented differently from its neighbours'
  if (differs(/(?<=[A-G]) (?=#\d)/g))
    return 'a # after a blank starts a comment, so what stands open before it never ends; write a sharp without the blank: F#3'
  if (differs(/(?<=:)\s*/g)) return 'a blank is missing behind a colon'
  if (differs(/[,\s]+/g) && more(/,/g)) return 'a comma is missing'
  if (differs(/,\s*/g)) return more(/,/g) ? 'a comma is missing' : 'there is a comma too many'
  if (differs(/[[\]{}]/g)) {
    const [added] = [']', '}', '[', '{'].filter((sign) => way.split(sign).length > own.split(sign).length)
    return added ? `a ${added} is missing` : 'there is a bracket too many'
  }
  if (differs(/^\s*-?\s*/gm)) return 'an item of a list starts with a dash and a blank'
  if (differs(/["'\\]/g))
    return more(/["']/g) ? 'a text with such signs stands in quotes' : 'there is a quotation mark too many'
  if (differs(/[:=\s]/g)) return 'between a key and its value stand a colon and a blank'
  return slipInWords(slip)
}
