import {ownAt} from '../schema/path.ts'
import type {LeafName} from '../schema/values.ts'

/** A slip of the hand taken back: other spellings of a text, one step away. */
type Undo = (text: string, units: 'in' | 'mm') => string | undefined

const swap =
  (find: RegExp, put: string): Undo =>
  (text) =>
    text.replace(find, put)

/** Numbers as they are spelt, from one to ten. */
export const numbers = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten']

/** What goes wrong with any value. */
const ofAny: readonly Undo[] = [
  swap(/^[\s"'“”„‘’«»([{<]+|[\s“”„‘’«»)\]}>]+$/g, ''),
  swap(/^["'“”„‘’«»([{<]+(.*?)["'“”„‘’«»)\]}>]+$/, '$1'),
  swap(/[\s.,;:!]+$/, ''),
  swap(/^[\s:=>~≈,;]+/, ''),
]

/** What goes wrong with a figure and its unit. */
const ofFigures: readonly Undo[] = [
  swap(/(?<=^|[\d/ .-])[oO](?=$|[\d/ .])/g, '0'),
  swap(/(?<=^|[\d/ .-])[lI|](?=$|[\d/ .])/g, '1'),
  swap(/(\d)\s*,\s*(?=\d)/g, '$1.'),
  swap(/^,(?=\d)/, '.'),
  swap(/(\d)\s*(?:[.,_+&;]|and|und)\s*(\d+\s*\/\s*\d+)/i, '$1 $2'),
  swap(/(\d)\s*-\s*(\d+\s*\/\s*\d+)/, '$1 $2'),
  swap(/[\\|÷:]|\/\/+/g, '/'),
  swap(/\.\.+/g, '.'),
  swap(/^(?:about|approx(?:imately)?\.?|ca\.?|circa|roughly|just|exactly|at|is)\s+/i, ''),
  swap(/\s*(?:long|wide|deep|thick|tall|high|across|each|total|or so|only)\.?$/i, ''),
  swap(/^([a-zµ"']+)\.?\s*([\d.][\d./ ]*)$/i, '$2 $1'),
  swap(/^(\d+)\s*(in|inch|inches|")\.?\s*(\d+\s*\/\s*\d+)$/i, '$1 $3 $2'),
  swap(/\s*(in|inch|inches|"|”)\.?\s*(?:in|inch|inches|"|”)\.?$/i, ' $1'),
  swap(/\s*mm\.?\s*mm\.?$/i, ' mm'),
  swap(/\s*(?:mms|mil|millis?|millimet(?:er|re)s?)\.?$/i, ' mm'),
  swap(/\s*(?:cms|centimet(?:er|re)s?)\.?$/i, ' cm'),
  swap(/\s*(?:ins|inc|inchs|zoll|['′’`]{2}|“|”|″|'"|"')\.?$/i, ' in'),
  (text) => {
    const at = numbers.indexOf(text.toLowerCase())
    return at < 0 ? undefined : String(at + 1)
  },
]

const ofCounts: readonly Undo[] = [
  swap(/^x\s*(?=\d)|(?<=\d)\s*x$/i, ''),
  swap(/^(-?[\d./ ]*\d)\s*(?:%|[a-z][a-z .]*)$/i, '$1'),
  swap(/^[a-z]+\.?\s*(?=\d)/i, ''),
  swap(/(?<=\d)(?:st|nd|rd|th)\b.*$/i, ''),
]

const ofPitches: readonly Undo[] = [
  (text) => text.charAt(0).toUpperCase() + text.slice(1),
  swap(/\s*-?\s*sharp\s*/i, '#'),
  swap(/\s*-?\s*flat\s*/i, 'b'),
  swap(/^([a-g])is\s*/i, '$1#'),
  swap(/[\s._-]+/g, ''),
  swap(/^(\d)\s*([a-g][#b♯♭]?)$/i, '$2$1'),
  swap(/^(.)B(?=\d)/, '$1b'),
  swap(/\s*(?:string|note)s?$/i, ''),
  swap(/^h(?=\d)/i, 'B'),
  swap(/(?<=^.)0(?=\d)/, ''),
]

const ofGauges: readonly Undo[] = [
  swap(/\s*\(?\s*(?:wound|wnd|wd|wrapped|w\.)\s*\)?$/i, 'w'),
  swap(/\s*\(?\s*(?:plain|steel|pl|p)\s*\)?$/i, ''),
  swap(/^w\.?\s*(?=[\d.])(.*)$/i, '$1w'),
  swap(/\s*(?:gauge|ga|thou|thousandths?|mils?)\.?(?=w?$)/i, ''),
  swap(/^#/, ''),
  (text, units) => {
    const [, figure, w = ''] = /^(?:0?\.)?0?(\d{2})\s*(w?)$/i.exec(text) ?? []
    return figure && (units === 'in' ? `.0${figure}${w}` : `.0${figure} in${w ? ' w' : ''}`)
  },
  swap(/^(0?\.\d+)\s*(w?)$/i, '$1 in $2'),
  swap(/^(\d*\.\d+)\s*(w?)$/i, '$1 mm $2'),
  swap(/^([\d.]+)\s*w\s*(in|mm|")$/i, '$1 $2 w'),
]

const ofDates: readonly Undo[] = [swap(/^(?:on|the)\s+/i, '')]

const flags: Readonly<Record<string, string>> = {
  y: 'true',
  n: 'false',
  on: 'true',
  off: 'false',
  '1': 'true',
  '0': 'false',
  t: 'true',
  f: 'false',
  ja: 'true',
  nein: 'false',
  none: 'false',
}
const ofFlags: readonly Undo[] = [
  (text) => ownAt(flags, text.toLowerCase()),
  (text) => ['true', 'false', 'yes', 'no'].find((word) => word.startsWith(text.toLowerCase()) && text !== ''),
  (text) => ['true', 'false'].find((word) => isNear(text.toLowerCase(), word)),
]

/** Two words that differ in one letter, or in the order of two. */
const isNear = (a: string, b: string): boolean =>
  Math.abs(a.length - b.length) <= 1 &&
  ([...a].sort().join('') === [...b].sort().join('') ||
    [...a].some((_, at) => a.slice(0, at) + a.slice(at + 1) === b) ||
    [...b].some((_, at) => b.slice(0, at) + b.slice(at + 1) === a))

const undoes: Partial<Record<LeafName, readonly Undo[]>> = {
  pitch: ofPitches,
  gauge: [...ofFigures, ...ofGauges],
  flag: ofFlags,
  date: ofDates,
  number: [...ofFigures, ...ofCounts],
  label: [...ofFigures, ...ofCounts],
  money: [...ofFigures, ...ofCounts],
}

/**
 * Spell a text that cannot be read as it may have been meant, the likeliest first, in rings: what one slip of the hand
 * explains, then what two do, then three.
 */
export function* spellings(text: string, leaf: LeafName, units: 'in' | 'mm'): Generator<string[]> {
  const undo = [...ofAny, ...(undoes[leaf] ?? ofFigures)]
  const seen = new Set([text])
  let ring = [text]
  for (let slips = 1; slips <= 3 && ring.length > 0; slips += 1) {
    const next: string[] = []
    for (const from of ring)
      for (const one of undo) {
        const to = one(from, units)?.replace(/\s+/g, ' ').trim()
        if (to === undefined || to === '' || seen.has(to) || seen.size > 150) continue
        seen.add(to)
        next.push(to)
      }
    yield next
    ring = next
  }
}
