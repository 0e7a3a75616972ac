import type {FileTrouble} from './build.ts'
import type {Severity} from './problem.ts'

/**
 * A build that shows what a rule is about: lines of front matter, to which a test adds a title and the usual scale,
 * strings, neck and box where they are left out; or a whole file, from its first line on.
 */
export type FileExample =
  | string
  | {
      text: string
      /** The files of its folder. */
      files?: readonly string[]
      /** The other builds of its journal. */
      builds?: readonly {slug: string; basedOn?: string}[]
      /** Those of its files that cannot be shown or published. */
      troubles?: readonly FileTrouble[]
      /** The pieces on the rack. */
      rack?: string
      /** Files of other builds that look at the rack. */
      others?: readonly string[]
    }

/** An example that is one build file, or a whole journal: each of its files by its path. */
export type Example = FileExample | {journal: Readonly<Record<string, string>>}

/** What a rule says of itself. `severity` is the usual one; what it finds may be milder where it says so. */
export interface RuleText {
  severity: Severity
  /** Of the file or the journal, not of the design: stays as grave once the instrument exists. */
  about?: 'file' | 'journal'
  what: string
  why: string
  mend: string
  passes?: Example
  fails?: Example
  /** Why no file shows it, where none does. */
  unshown?: string
}

const sound = '---\ntitle: Needle box\n---\n'

/** Nine times nine of everything: a short text that would unfold into all the memory there is. */
const nine = (name: string) => Array(9).fill(`*${name}`).join(', ')
const bomb = `a: &a [x, x, x, x, x, x, x, x, x]\nb: &b [${nine('a')}]\nc: &c [${nine('b')}]\nd: &d [${nine('c')}]\ne: &e [${nine('d')}]\ntags: [${nine('e')}]`

/** The rules that a text breaks before it is a build. */
export const readerRules = {
  'alias-bomb': {
    severity: 'error',
    about: 'file',
    what: 'YAML aliases that unfold without end.',
    why: 'Such a file would fill the memory of whoever opens it.',
    mend: 'Write the values out.',
    passes: 'tags: [&wood beech, *wood]',
    fails: bomb,
  },
  'comma-in-braces': {
    severity: 'warning',
    about: 'file',
    what: 'A comma inside braces has cut a text in two.',
    why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.',
    mend: 'Put quotes round the text.',
    passes: 'played:\n  - {on: 2026-03-16, remark: "low, soft"}',
    fails: 'played:\n  - {on: 2026-03-16, remark: low, soft}',
  },
  'file-too-large': {
    severity: 'error',
    what: 'A build file of more than a million characters.',
    why: 'Dimensions and notes are small; pictures and recordings belong in files of their own.',
    mend: 'Move what is large into files beside the build.',
    passes: sound,
    fails: `${sound}${'A word and another. '.repeat(60_000)}`,
  },
  'front-matter-fence': {
    severity: 'error',
    what: 'A first line that is more than ---.',
    why: 'Only YAML is read, and nothing in a build file is ever run.',
    mend: 'Make the first line --- alone and write the dimensions as YAML.',
    passes: sound,
    fails: "---toml\ntitle = 'Needle box'\n---\n",
  },
  'front-matter-missing': {
    severity: 'error',
    what: 'A file without front matter.',
    why: 'The dimensions stand between two lines ---, before the prose.',
    mend: 'Start the file with ---, the dimensions, and --- again.',
    passes: sound,
    fails: '# Needle box\n',
  },
  'front-matter-not-keys': {
    severity: 'error',
    what: 'Front matter that is not a list of keys with values.',
    why: 'Dimensions are found by their keys.',
    mend: 'Write one key and its value a line: title: Needle box.',
    passes: sound,
    fails: '---\n- Needle box\n---\n',
  },
  'front-matter-unclosed': {
    severity: 'error',
    what: 'Front matter that never ends.',
    why: 'Without the second --- the prose would be read as dimensions.',
    mend: 'Put --- on a line of its own after the last dimension.',
    passes: sound,
    fails: '---\ntitle: Needle box\n',
  },
  'hash-in-text': {
    severity: 'warning',
    about: 'file',
    what: 'A text that ends before a # and a number.',
    why: 'In YAML a # after a blank starts a remark, so that the number is lost.',
    mend: 'Put quotes round the whole text; or write a blank behind the # of a remark.',
    passes: 'summary: "The porch box #2"',
    fails: 'summary: The porch box #2',
  },
  'key-twice': {
    severity: 'error',
    about: 'file',
    what: 'A key given twice.',
    why: 'One of the two values would be lost.',
    mend: 'Keep one.',
    passes: 'scale: 24',
    fails: 'scale: 24\nscale: 25',
  },
  'negative-length': {
    severity: 'error',
    what: 'A length below zero where only distances to either side can be.',
    why: 'No piece is shorter than nothing; only a distance from a line can lie on its other side.',
    mend: 'Take the sign away.',
    passes: 'scale: 24',
    fails: 'scale: -24',
  },
  'not-text': {
    severity: 'error',
    what: 'A file that is not plain text.',
    why: 'A build file is Markdown in UTF-8.',
    mend: 'Save it as plain text.',
    passes: sound,
    fails: `${sound}\u0000\u0001`,
  },
  'out-of-range': {
    severity: 'error',
    what: 'A value that no instrument of this kind has.',
    why: 'It is most often a slip of the unit or of the point.',
    mend: 'Look at the unit and the point.',
    passes: 'scale: 24',
    fails: 'scale: 24 m',
  },
  'list-without-brackets': {
    severity: 'warning',
    about: 'file',
    what: 'Short texts with commas between them where a list belongs, without its brackets.',
    why: 'Without brackets they are read as one text.',
    mend: 'Put square brackets round the list, or straight quotation marks round a text that has a comma.',
    passes: 'tags: [evening, harbour]',
    fails: 'tags: evening, harbour',
  },
  'quotes-curly': {
    severity: 'warning',
    about: 'file',
    what: 'A text in curly quotation marks.',
    why: 'Only straight quotation marks keep a text together; curly ones are printed with it.',
    mend: 'Write straight ones, or none.',
    passes: 'summary: "For the porch."',
    fails: 'summary: “For the porch.”',
  },
  'sides-unclear': {
    severity: 'warning',
    about: 'file',
    what: 'A neck whose width comes out less than its thickness.',
    why: 'The first size is the width. Boards are sold by other numbers than they measure, and with the thickness first.',
    mend: 'Write the size that lies across the strings first; a neck that is deeper than wide takes width and thickness as keys.',
    passes: 'neck: {width: 3/4, thickness: 1 1/2}',
    fails: 'neck: 1x2',
  },
  'title-missing': {
    severity: 'error',
    what: 'A build without a title.',
    why: 'The title is the one key that every build has.',
    mend: 'Add title: and a name.',
    passes: sound,
    fails: '---\nbox: 10 x 7 x 2\n---\n',
  },
  'too-many-problems': {
    severity: 'error',
    about: 'file',
    what: 'More than a hundred problems in one file.',
    why: 'Nobody reads them all, and most are often the same slip.',
    mend: 'Mend those that are told; the rest are told then.',
    passes: sound,
    fails: Array.from({length: 102}, (_, at) => `key-${at}: 1`).join('\n'),
  },
  'two-documents': {
    severity: 'error',
    what: 'A second block of dimensions.',
    why: 'Only the first block between --- lines is read; the rest would be lost.',
    mend: 'Move every key into the first block.',
    passes: sound,
    fails: '---\ntitle: Needle box\n---\nbox: 10 x 7 x 2\n---\n',
  },
  'unknown-choice': {
    severity: 'error',
    what: 'A word that is not one of those that the key takes.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Use one of the words named.',
    passes: 'handed: left',
    fails: 'handed: lefty',
  },
  'unknown-key': {
    severity: 'warning',
    about: 'file',
    what: 'A key that nobody knows.',
    why: 'What it holds is not used, and a misspelt key leaves its section out.',
    mend: 'Use the key proposed, or take it out.',
    passes: 'summary: For the porch.',
    fails: 'sumary: For the porch.',
  },
  'unreadable-angle': {
    severity: 'error',
    what: 'The text cannot be read as an angle.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 13 or 13°.',
    passes: 'head: {angle: 13}',
    fails: 'head: {angle: steep}',
  },
  'unreadable-capacitance': {
    severity: 'error',
    what: 'The text cannot be read as a capacitance.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 20 nF.',
    passes: 'pickup: {kind: piezo, diameter: 1, capacitance: 20 nF}',
    fails: 'pickup: {kind: piezo, diameter: 1, capacitance: 20}',
  },
  'unreadable-date': {
    severity: 'error',
    what: 'The text cannot be read as a day.',
    why: 'The day decides in which order builds take wood off the rack.',
    mend: 'Write it as 2026-03-07.',
    passes: 'started: 2026-02-28',
    fails: 'started: 2026-02-30',
  },
  'unreadable-density': {
    severity: 'error',
    what: 'The text cannot be read as a density.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 672 kg/m3 or 42 lb/ft3.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4, wood: fence post, density: 672 kg/m3, stiffness: 12 GPa}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4, wood: fence post, density: 672, stiffness: 12 GPa}',
  },
  'unreadable-duration': {
    severity: 'error',
    what: 'The text cannot be read as a length of time.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 1 h 30 min.',
    unshown: 'No key holds a length of time; in a heading of the prose it is words where it cannot be read.',
  },
  'unreadable-flag': {
    severity: 'error',
    what: 'The text cannot be read as yes or no.',
    why: 'Only one of two answers can be meant.',
    mend: 'Write it as true or false.',
    passes: 'scale: {length: 24, fretted: true}',
    fails: 'scale: {length: 24, fretted: maybe}',
  },
  'unreadable-force': {
    severity: 'error',
    what: 'The text cannot be read as a force.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 60 N, 13 lbf or 6 kgf.',
    passes: 'strings: [{note: D4, tension: {pull: 85 N, scale: 25 1/2, note: D4}}]',
    fails: 'strings: [{note: D4, tension: {pull: 85, scale: 25 1/2, note: D4}}]',
  },
  'unreadable-gauge': {
    severity: 'error',
    what: "The text cannot be read as a string's diameter.",
    why: 'The pull of a string follows from its diameter.',
    mend: 'Write it as .017, .032w or 0.43 mm.',
    passes: 'strings: [D4 .013]',
    fails: 'strings: [{note: D4, gauge: thin}]',
  },
  'unreadable-length': {
    severity: 'error',
    what: 'The text cannot be read as a length.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 24 1/4, 3/4 in or 38 mm.',
    passes: 'scale: 24 in',
    fails: 'scale: 24 inn',
  },
  'unreadable-line-label': {
    severity: 'error',
    what: 'The text cannot be read as a line.',
    why: 'Lines are named as players count them.',
    mend: 'Write it as 12 or 6 1/2.',
    passes: 'scale: {length: 24, dots: [3, 5]}',
    fails: 'scale: {length: 24, dots: [3, 6.3]}',
  },
  'unreadable-mass-per-length': {
    severity: 'error',
    what: 'The text cannot be read as a mass per length.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 5.8 g/m.',
    passes: 'strings: [{note: D4, mass: 0.67 g/m}]',
    fails: 'strings: [{note: D4, mass: 0.67}]',
  },
  'unreadable-money': {
    severity: 'error',
    what: 'The text cannot be read as an amount of money.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 2.10.',
    passes: 'price: 40',
    fails: 'price: $40',
  },
  'unreadable-number': {
    severity: 'error',
    what: 'The text cannot be read as a number.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 440.',
    passes: 'reference-pitch: 440',
    fails: 'reference-pitch: high',
  },
  'unreadable-pitch': {
    severity: 'error',
    what: 'The text cannot be read as a pitch.',
    why: 'Without a pitch and its octave the pull of the string is unknown.',
    mend: 'Write it as D3, F#3 or Bb2.',
    passes: 'strings: [G3 .017]',
    fails: 'strings: [G .017]',
  },
  'unreadable-step': {
    severity: 'error',
    what: 'The text cannot be read as a step of a temperament.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 702 or 3/2.',
    passes:
      'scale: {length: 24, temperament: [100, 200, 300, 400, 500, 600, 3/2, 800, 900, 1000, 1100, 1200]}',
    fails:
      'scale: {length: 24, temperament: [100, 200, 300, 400, 500, 600, fifth, 800, 900, 1000, 1100, 1200]}',
  },
  'unreadable-stiffness': {
    severity: 'error',
    what: 'The text cannot be read as a stiffness.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 12.6 GPa or 1.83 Mpsi.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4, wood: fence post, density: 672 kg/m3, stiffness: 12 GPa}',
    fails: 'neck: {width: 1 5/8, thickness: 3/4, wood: fence post, density: 672 kg/m3, stiffness: 12}',
  },
  'unreadable-yaml': {
    severity: 'error',
    what: 'YAML that does not parse.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Mend the line named; indent with blanks, and put quotes round text with a colon or a hash.',
    passes: 'scale: {length: 24}',
    fails: 'scale: {length: 24',
  },
  'wrong-shape': {
    severity: 'error',
    what: 'A value of the wrong kind: a list where one value belongs, a text where keys belong.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Write it as the example shows.',
    passes: 'neck: {width: 1 5/8, thickness: 3/4}',
    fails: 'neck: [1 5/8, 3/4]',
  },
} satisfies Record<string, RuleText>

export type ReaderRule = keyof typeof readerRules
