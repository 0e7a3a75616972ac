import type {Severity} from './problem.ts'

/** What a rule says of itself. `severity` is the usual one; what it finds may be milder where it says so. */
export interface RuleText {
  severity: Severity
  what: string
  why: string
  mend: string
  /** Of the file or the journal, not of the design: stays as grave once the instrument exists. */
  about?: 'file' | 'journal'
}

/** The rules that a text breaks before it is a build. */
export const readerRules = {
  'alias-bomb': {
    severity: 'error',
    about: 'file',
    what: 'YAML aliases that unfold without end.',
    why: 'Such a file would fill the memory of whoever opens it.',
    mend: 'Write the values out.',
  },
  'comma-in-braces': {
    severity: 'warning',
    about: 'file',
    what: 'A comma inside braces has cut a text in two.',
    why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.',
    mend: 'Put quotes round the text.',
  },
  'file-too-large': {
    severity: 'error',
    what: 'A build file of more than a million characters.',
    why: 'Dimensions and notes are small; pictures and recordings belong in files of their own.',
    mend: 'Move what is large into files beside the build.',
  },
  'front-matter-fence': {
    severity: 'error',
    what: 'A first line that is more than ---.',
    why: 'Only YAML is read, and nothing in a build file is ever run.',
    mend: 'Make the first line --- alone and write the dimensions as YAML.',
  },
  'front-matter-missing': {
    severity: 'error',
    what: 'A file without front matter.',
    why: 'The dimensions stand between two lines ---, before the prose.',
    mend: 'Start the file with ---, the dimensions, and --- again.',
  },
  'front-matter-not-keys': {
    severity: 'error',
    what: 'Front matter that is not a list of keys with values.',
    why: 'Dimensions are found by their keys.',
    mend: 'Write one key and its value a line: title: Needle box.',
  },
  'front-matter-unclosed': {
    severity: 'error',
    what: 'Front matter that never ends.',
    why: 'Without the second --- the prose would be read as dimensions.',
    mend: 'Put --- on a line of its own after the last dimension.',
  },
  'key-twice': {
    severity: 'error',
    about: 'file',
    what: 'A key given twice.',
    why: 'One of the two values would be lost.',
    mend: 'Keep one.',
  },
  'negative-length': {
    severity: 'error',
    what: 'A length below zero where only distances to either side can be.',
    why: 'No piece is shorter than nothing; only a distance from a line can lie on its other side.',
    mend: 'Take the sign away.',
  },
  'not-text': {
    severity: 'error',
    what: 'A file that is not plain text.',
    why: 'A build file is Markdown in UTF-8.',
    mend: 'Save it as plain text.',
  },
  'out-of-range': {
    severity: 'error',
    what: 'A value that no instrument of this kind has.',
    why: 'It is most often a slip of the unit or of the point.',
    mend: 'Look at the unit and the point.',
  },
  'title-missing': {
    severity: 'error',
    what: 'A build without a title.',
    why: 'The title is the one key that every build has.',
    mend: 'Add title: and a name.',
  },
  'two-documents': {
    severity: 'error',
    what: 'A second block of dimensions.',
    why: 'Only the first block between --- lines is read; the rest would be lost.',
    mend: 'Move every key into the first block.',
  },
  'unknown-choice': {
    severity: 'error',
    what: 'A word that is not one of those that the key takes.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Use one of the words named.',
  },
  'unknown-key': {
    severity: 'warning',
    about: 'file',
    what: 'A key that nobody knows.',
    why: 'What it holds is not used, and a misspelt key leaves its section out.',
    mend: 'Use the key proposed, or take it out.',
  },
  'unreadable-angle': {
    severity: 'error',
    what: 'The text cannot be read as an angle.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 13 or 13°.',
  },
  'unreadable-capacitance': {
    severity: 'error',
    what: 'The text cannot be read as a capacitance.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 20 nF.',
  },
  'unreadable-date': {
    severity: 'error',
    what: 'The text cannot be read as a day.',
    why: 'The day decides in which order builds take wood off the rack.',
    mend: 'Write it as 2026-03-07.',
  },
  'unreadable-density': {
    severity: 'error',
    what: 'The text cannot be read as a density.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 672 kg/m3 or 42 lb/ft3.',
  },
  'unreadable-duration': {
    severity: 'error',
    what: 'The text cannot be read as a length of time.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 1 h 30 min.',
  },
  'unreadable-flag': {
    severity: 'error',
    what: 'The text cannot be read as yes or no.',
    why: 'Only one of two answers can be meant.',
    mend: 'Write it as true or false.',
  },
  'unreadable-force': {
    severity: 'error',
    what: 'The text cannot be read as a force.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 60 N, 13 lbf or 6 kgf.',
  },
  'unreadable-gauge': {
    severity: 'error',
    what: "The text cannot be read as a string's diameter.",
    why: 'The pull of a string follows from its diameter.',
    mend: 'Write it as .017, .032w or 0.43 mm.',
  },
  'unreadable-length': {
    severity: 'error',
    what: 'The text cannot be read as a length.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 24 1/4, 3/4 in or 38 mm.',
  },
  'unreadable-line-label': {
    severity: 'error',
    what: 'The text cannot be read as a line.',
    why: 'Lines are named as players count them.',
    mend: 'Write it as 12 or 6 1/2.',
  },
  'unreadable-mass-per-length': {
    severity: 'error',
    what: 'The text cannot be read as a mass per length.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 5.8 g/m.',
  },
  'unreadable-money': {
    severity: 'error',
    what: 'The text cannot be read as an amount of money.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 2.10.',
  },
  'unreadable-number': {
    severity: 'error',
    what: 'The text cannot be read as a number.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 440.',
  },
  'unreadable-pitch': {
    severity: 'error',
    what: 'The text cannot be read as a pitch.',
    why: 'Without a pitch and its octave the pull of the string is unknown.',
    mend: 'Write it as D3, F#3 or Bb2.',
  },
  'unreadable-step': {
    severity: 'error',
    what: 'The text cannot be read as a step of a temperament.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 702 or 3/2.',
  },
  'unreadable-stiffness': {
    severity: 'error',
    what: 'The text cannot be read as a stiffness.',
    why: 'What cannot be read cannot be reckoned with.',
    mend: 'Write it as 12.6 GPa or 1.83 Mpsi.',
  },
  'unreadable-yaml': {
    severity: 'error',
    what: 'YAML that does not parse.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Mend the line named; indent with blanks, and put quotes round text with a colon or a hash.',
  },
  'wrong-shape': {
    severity: 'error',
    what: 'A value of the wrong kind: a list where one value belongs, a text where keys belong.',
    why: 'What cannot be read cannot be computed with.',
    mend: 'Write it as the example shows.',
  },
} satisfies Record<string, RuleText>

export type ReaderRule = keyof typeof readerRules
