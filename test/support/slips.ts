/** Numbers from 0 to 1 from a seed (mulberry32, public domain): the same on every machine. */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}

type Random = () => number

/** A slip of a maker's hand on a line of a file; undefined where the line gives no occasion for it. */
type Slip = (line: string, random: Random) => string | undefined

const pick = <T>(of: readonly T[], random: Random): T => of[Math.floor(random() * of.length)]!

/** Change one of the places where a pattern is found. */
function change(line: string, find: RegExp, by: (found: RegExpExecArray) => string, random: Random) {
  // A remark has no slips.
  const end = /\s+#\s.*$/.exec(line)?.index ?? line.length
  const all = [...line.matchAll(new RegExp(find.source, `${find.flags}g`))] as RegExpExecArray[]
  const own = all.filter(({index}) => index < end)
  if (own.length === 0) return undefined
  const found = pick(own, random)
  return line.slice(0, found.index) + by(found) + line.slice(found.index + found[0].length)
}

const withText =
  (slip: Slip): Slip =>
  (line, random) => {
    const remark = /\s+#\s.*$/.exec(line)?.[0] ?? ''
    const changed = slip(line.slice(0, line.length - remark.length), random)
    return changed === undefined ? undefined : changed + remark
  }

const by = (find: RegExp, ...puts: string[]): Slip =>
  withText((line, random) => {
    const put = pick(puts, random)
    const changed = change(
      line,
      find,
      (found) => found[0].replace(new RegExp(find.source, find.flags), put),
      random,
    )
    return changed === line ? undefined : changed
  })

/** A word with one letter left out, doubled, or changed about with its neighbour. */
function misspelt(word: string, random: Random): string {
  const at = 1 + Math.floor(random() * (word.length - 2))
  const ways = [
    word.slice(0, at) + word.slice(at + 1),
    word.slice(0, at) + word[at] + word.slice(at),
    word.slice(0, at) + word[at + 1] + word[at] + word.slice(at + 2),
  ]
  return pick(ways, random)
}

const key = /(?<=^\s*(?:- )?|[{,]\s*)[a-z][a-z-]*(?=: |:$)/
const length = /(?<=[:[,]\s+|x |\[)-?(?:\d+ )?\d+(?:\/\d+)?(?=$|[,\]}]| x )/
const fraction = /(?<![\d.])(\d+) (\d+)\/(\d+)(?![\d.])/
const note = /(?<=[[,]\s*|note: |- )[A-G][#b]?\d(?=[ ,}\]]|$)/
const gauge = /(?<= )\.0(\d\d)(w?)(?=[\],}]|$)/

/** The slips that makers' files have, by what they are about. */
export const slips: Readonly<Record<string, Slip>> = {
  // Units.
  'a unit misspelt': (line, random) =>
    /: /.test(line) && !/tags|price|cost|size/.test(line)
      ? by(length, `$& ${pick(['inn', 'inchs', 'inhces', 'ins', 'inc'], random)}`)(
          isInches(line) ? line : '',
          random,
        )
      : undefined,
  'an inch mark of another kind': (line, random) =>
    by(length, "$&''", '$&”', '$& inches.', '$&"')(isInches(line) ? line : '', random),
  'a unit left out': by(/(?<=\d) mm(?=[,}\s]|$)/, ''),
  'a millimetre misspelt': by(/(?<=: )(\d[\d.]*)$/, '$1 mn', '$1 milimeters', '$1mms', '$1 mm mm'),
  'units in another word': (line, random) =>
    /^units: in\b/.test(line)
      ? line.replace('in', pick(['inches', 'Inch', 'imperial', '"in."'], random))
      : /^units: mm\b/.test(line)
        ? line.replace('mm', pick(['millimetres', 'metric', 'millimeter', 'MM'], random))
        : undefined,
  'a decimal comma': by(/(?<=[: ]\d*)(\d)\.(\d+)(?=[,}\s]|$)/, '$1,$2'),
  'a stroke the wrong way': by(fraction, '$1 $2\\$3'),
  'a point in a fraction': by(fraction, '$1.$2/$3'),
  'a letter for a figure': by(/(?<= )1\/(\d+)(?=[,}\s]|$)/, 'l/$1'),
  'an and in a fraction': by(fraction, '$1 and $2/$3', '$1+$2/$3'),
  'a figure with about': (line, random) =>
    by(/(?<=: )(\d+ \d+\/\d+)$/, 'about $1', '~$1', '$1 or so')(line, random),
  // Quotes.
  // Round a value; within a text they are as good as straight ones.
  'curly quotes': by(/(?<=[:,{[]\s*)"([^"]*)"/, '“$1”'),
  'a quote that never ends': by(/(?<=: )"([^"]*)"$/, '"$1', '$1"'),
  'no quotes where they are needed': by(/(?<=: )"([^"]*(?:: |#)[^"]*)"/, '$1'),
  'quotes and an inch mark': (line, random) =>
    by(/(?<=: )(\d[\d /]*)$/, '"$1""')(isInches(line) ? line : '', random),
  'quotes within quotes': by(/(?<=^(?:title|summary): )([^"']*"[^"]*"[^"']*)$/, '"$1"'),
  'an apostrophe in single quotes': by(/(?<=^(?:title|summary): )([^"']*'[^"']*)$/, "'$1'"),
  // Commas and brackets.
  'a comma left out': by(/, (?=[a-z-]+: )/, ' '),
  'a comma twice': by(/, (?=[a-z-]+: |[A-G-]?\d)/, ',, '),
  'a semicolon': by(/, (?=[a-z-]+: |[A-G][#b]?\d)/, '; '),
  'a comma at the end of a line': withText((line) =>
    /: [^{["]*[\w/]$/.test(line) && !/title|summary|remark|says/.test(line) ? `${line},` : undefined,
  ),
  'a bracket not closed': by(/[\]}]$/, ''),
  'a bracket of the other kind': by(/\}$/, ']'),
  'a bracket too many': by(/\}$/, '}}'),
  'no blank behind a colon': by(/(?<=[a-z]): (?=[\w.-])/, ':'),
  'an equals sign': by(/(?<=^\s*[a-z-]+): (?=\S)/, ' = '),
  'no colon': by(/(?<=^[a-z-]+): (?=[\d.])/, ' '),
  'two colons': by(/(?<=^\s*[a-z-]+): (?=\S)/, ':: '),
  'no brackets round a list': by(/(?<=: )\[([^[\]{}]+, [^[\]{}]+)\](?=$)/, '$1'),
  'braces round a list': by(/(?<=: )\[([^[\]{}]+)\](?=$)/, '{$1}', '($1)'),
  // Names.
  'a key misspelt': (line, random) =>
    change(
      line,
      /(?<=^\s*(?:- )?|[{,]\s*)[a-z][a-z-]{3,}(?=: |:$)/,
      ([word]) => misspelt(word!, random),
      random,
    ),
  'a capital': (line, random) =>
    change(line, key, ([word]) => word!.charAt(0).toUpperCase() + word!.slice(1), random),
  'a blank for a hyphen': by(/(?<=^\s*|[{,]\s*)([a-z]+)-([a-z]+)(?=: |:$)/, '$1 $2', '$1_$2', '$1$2'),
  'one for many': by(/^(string|tuner|anchor|screw)s(?=:)/, '$1'),
  'many for one': by(/^(scale|nut|bridge|neck|box)(?=:)/, '$1s'),
  'another name': (line, random) =>
    pick(
      [
        by(/^title(?=:)/, 'name'),
        by(/(?<=\bbox:.*|^ {2})depth(?=: )/, 'height'),
        by(/(?<=[{ ])note(?=: )/, 'pitch'),
        by(/(?<=^ {2})joins(?=: )/, 'joint'),
      ],
      random,
    )(line, random),
  'a word misspelt': (line, random) =>
    change(
      line,
      /(?<=(?:kind|joins|held|status|play|side|pattern|handed|joint|ends|material|glued): )[a-z][a-z ]{3,}(?=[,}]|$)/,
      ([word]) => misspelt(word!, random),
      random,
    ),
  // The kind of a finish is a text of its own, printed as it is written.
  'a word with a capital': (line, random) =>
    /coats: /.test(line)
      ? undefined
      : change(
          line,
          /(?<=(?:kind|joins|held|status|play|side|pattern|handed|joint|ends): )[a-z]+/,
          ([word]) => word!.charAt(0).toUpperCase() + word!.slice(1),
          random,
        ),
  'a wood misspelt': (line, random) =>
    change(line, /(?<=wood: )[a-z]{5,}(?=[,}]|$)/, ([word]) => misspelt(word!, random), random),
  // Forms.
  'sizes with by': by(/(?<=\d)( x )(?=\d)/, ' by ', ' * ', 'X', ', '),
  'a list for sizes': by(
    /(?<=^(?:box|neck): )(\d[\d /]*) x (\d[\d /]*) x (\d[\d /]*)$/,
    '[$1, $2, $3]',
    '$1, $2, $3',
  ),
  'a small letter for a note': (line, random) => change(line, note, ([word]) => word!.toLowerCase(), random),
  'a note without its octave': (line, random) => change(line, note, ([word]) => word!.slice(0, -1), random),
  'a note in pieces': by(/(?<=[[,]\s*|- )([A-G])(\d)(?= \.)/, '$1-$2', '$1 $2'),
  'a gauge without its point': by(gauge, '$1$2', '0$1$2', '.$1$2'),
  'a gauge in words': by(gauge, '.0$1 wound', '.0$1 plain'),
  'note and gauge changed about': by(/([A-G][#b]?\d) (\.0\d\dw?)(?=[\],]|$)/, '$2 $1'),
  'note and gauge as two items': by(/([A-G][#b]?\d) (\.0\d\dw?)(?=[\],])/, '$1, $2'),
  'a day in another form': (line, random) =>
    change(
      line,
      /(?<=: )(\d{4})-(\d\d)-(\d\d)(?=[,}\s]|$)/,
      ([, y, m, d]) =>
        pick(
          [
            `${Number(m)}/${Number(d)}/${y}`,
            `${Number(d)}.${Number(m)}.${y}`,
            `${y}/${m}/${d}`,
            `${y}-${Number(m)}-${Number(d)}`,
            `"${months[Number(m) - 1]} ${Number(d)}, ${y}"`,
          ],
          random,
        ),
      random,
    ),
  'yes in another word': by(/(?<=(?:fretted|publish): )true/, 'y', 'Yes', 'TRUE', 'ture'),
  'a tab': (line) => (/^ {2}\S/.test(line) ? line.replace(/^ {2}/, '\t') : undefined),
  'a blank too many': (line) => (/^ {2}[a-z-]+: \S/.test(line) ? ` ${line}` : undefined),
  'a blank too few': (line) => (/^ {2}[a-z-]+: \S/.test(line) ? line.slice(1) : undefined),
  'an indent at the first level': (line) => (/^[a-z-]+: \S/.test(line) ? ` ${line}` : undefined),
  'a dash without its blank': by(/^(\s+)- (?=\S)/, '$1-'),
  'no dash': by(/^(\s+)- (?=[A-G])/, '$1'),
}

const months = 'January February March April May June July August September October November December'.split(
  ' ',
)

const isInches = (line: string): boolean =>
  !/ mm|°|angle|lines|count|coats|dots|size|cents|scores|each|price/.test(line)

/** Slips that only a file in inches has, and one of millimetres. */
const ofInches = [
  'a unit misspelt',
  'an inch mark of another kind',
  'quotes and an inch mark',
  'a gauge without its point',
]
const ofMillimetres = ['a millimetre misspelt']

/** A file with slips in it, and what they are. */
export interface Slipped {
  text: string
  made: string[]
  /** The lines of the file with a slip, from 1. */
  lines: number[]
}

/** Make from one to six slips in the front matter of a build file, nearly always each on a line of its own. */
export function slipped(source: string, random: Random): Slipped {
  const lines = source.split('\n')
  const end = lines.indexOf('---', 1)
  const wanted = 1 + Math.floor(random() * 6)
  const made: string[] = []
  const at = new Set<number>()
  const units = /^units: mm/m.test(source) ? ofInches : ofMillimetres
  const names = Object.keys(slips).filter((name) => !units.includes(name))
  for (let tries = 0; made.length < wanted && tries < 200; tries += 1) {
    const name = pick(names, random)
    const open = lines.flatMap((line, i) => {
      if (i === 0 || i >= end || line.trim() === '' || /^\s*#/.test(line)) return []
      if (at.has(i) && random() > 0.1) return []
      return slips[name]!(line, randomFrom(i)) === undefined ? [] : [i]
    })
    if (open.length === 0) continue
    const line = pick(open, random)
    const changed = slips[name]!(lines[line]!, random)
    if (changed === undefined || changed === lines[line]) continue
    lines[line] = changed
    made.push(name)
    at.add(line)
  }
  return {text: lines.join('\n'), made, lines: [...at].map((i) => i + 1)}
}
