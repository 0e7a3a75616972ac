/**
 * Every rule that a problem can name: what it looks for, why, and how to mend what it finds.
 * Sorted by name, a line each. `severity` is the usual one; a rule may report a milder one where it says so.
 */
export interface RuleRow {
  severity: 'error' | 'fault' | 'warning' | 'remark'
  what: string
  why: string
  mend: string
  /** Of the file or the journal, not of the design: stays as grave once the instrument exists. */
  about?: 'file' | 'journal'
}

// biome-ignore format: a line each, so that parts can be added side by side
export const rules = {
  'alias-bomb': {severity: 'error', what: 'YAML aliases that unfold without end.', why: 'Such a file would fill the memory of whoever opens it.', mend: 'Write the values out.'},
  'box-places-disagree': {severity: 'fault', what: 'The box is placed twice, and not at the same place.', why: 'One of the two would be marked on the wood.', mend: 'Keep one of box.at and bridge.from-tail, or make them agree.'},
  'build-twice': {severity: 'error', what: 'A build that is there twice, as SLUG.md and as SLUG/index.md.', why: 'Only one of the two can be published.', mend: 'Keep one.'},
  'cautions-left-out': {severity: 'warning', about: 'file', what: 'A file that leaves out its cautions.', why: 'Whoever works from the page must be able to see what could hurt.', mend: 'Take cautions out of leave-out; they stay on the page.'},
  'comma-in-braces': {severity: 'warning', what: 'A comma inside braces has cut a text in two.', why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.', mend: 'Put quotes round the text.'},
  'directive-twice': {severity: 'warning', about: 'file', what: 'A section placed twice.', why: 'It stands where it was placed first, and the second one is left out.', mend: 'Take one of the two lines out.'},
  'file-too-large': {severity: 'error', what: 'A build file of more than a million characters.', why: 'Dimensions and notes are small; pictures and recordings belong in files of their own.', mend: 'Move what is large into files beside the build.'},
  'front-matter-fence': {severity: 'error', what: 'A first line that is more than ---.', why: 'Only YAML is read, and nothing in a build file is ever run.', mend: 'Make the first line --- alone and write the dimensions as YAML.'},
  'front-matter-missing': {severity: 'error', what: 'A file without front matter.', why: 'The dimensions stand between two lines ---, before the prose.', mend: 'Start the file with ---, the dimensions, and --- again.'},
  'front-matter-not-keys': {severity: 'error', what: 'Front matter that is not a list of keys with values.', why: 'Dimensions are found by their keys.', mend: 'Write one key and its value a line: title: Needle box.'},
  'front-matter-unclosed': {severity: 'error', what: 'Front matter that never ends.', why: 'Without the second --- the prose would be read as dimensions.', mend: 'Put --- on a line of its own after the last dimension.'},
  'key-twice': {severity: 'error', what: 'A key given twice.', why: 'One of the two values would be lost.', mend: 'Keep one.'},
  'needs-started': {severity: 'error', what: 'Wood taken from the rack by a build without a starting date.', why: 'Builds take their wood in the order in which they were started.', mend: 'Give started, or list the pieces under stock.'},
  'negative-length': {severity: 'error', what: 'A length below zero where only distances to either side can be.', why: 'No piece is shorter than nothing; only a distance from a line can lie on its other side.', mend: 'Take the sign away.'},
  'not-text': {severity: 'error', what: 'A file that is not plain text.', why: 'A build file is Markdown in UTF-8.', mend: 'Save it as plain text.'},
  'open-value': {severity: 'warning', about: 'file', what: 'A value in a sentence that is not computed yet.', why: 'It reads “open” on the page until the file has what it needs.', mend: 'Fill in the key that is named, or take the value out of the sentence.'},
  'out-of-range': {severity: 'error', what: 'A value that no instrument of this kind has.', why: 'It is most often a slip of the unit or of the point.', mend: 'Look at the unit and the point.'},
  'title-missing': {severity: 'error', what: 'A build without a title.', why: 'The title is the one key that every build has.', mend: 'Add title: and a name.'},
  'two-documents': {severity: 'error', what: 'A second block of dimensions.', why: 'Only the first block between --- lines is read; the rest would be lost.', mend: 'Move every key into the first block.'},
  'unknown-choice': {severity: 'error', what: 'A word that is not one of those that the key takes.', why: 'What cannot be read cannot be computed with.', mend: 'Use one of the words named.'},
  'unknown-directive': {severity: 'warning', about: 'file', what: 'A line such as ::layout that names no section or view.', why: 'It cannot be filled, and stays on the page as it was written.', mend: 'Use the name proposed, or take the line out.'},
  'unknown-key': {severity: 'warning', what: 'A key that nobody knows.', why: 'What it holds is not used, and a misspelt key leaves its section out.', mend: 'Use the key proposed, or take it out.'},
  'unknown-rule': {severity: 'warning', what: 'A rule that nobody knows under accept.', why: 'Nothing is accepted by it.', mend: 'Use the name that the problem shows.'},
  'unknown-value': {severity: 'warning', about: 'file', what: 'A value in a sentence that the plan does not have.', why: 'It cannot be filled in, and stays on the page as it was written.', mend: 'Use the name proposed; strings go by their notes and lines by their labels.'},
  'unreadable-angle': {severity: 'error', what: 'The text cannot be read as an angle.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 13 or 13°.'},
  'unreadable-capacitance': {severity: 'error', what: 'The text cannot be read as a capacitance.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 20 nF.'},
  'unreadable-date': {severity: 'error', what: 'The text cannot be read as a day.', why: 'The day decides in which order builds take wood off the rack.', mend: 'Write it as 2026-03-07.'},
  'unreadable-density': {severity: 'error', what: 'The text cannot be read as a density.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 672 kg/m3 or 42 lb/ft3.'},
  'unreadable-duration': {severity: 'error', what: 'The text cannot be read as a length of time.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 1 h 30 min.'},
  'unreadable-flag': {severity: 'error', what: 'The text cannot be read as yes or no.', why: 'Only one of two answers can be meant.', mend: 'Write it as true or false.'},
  'unreadable-force': {severity: 'error', what: 'The text cannot be read as a force.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 60 N, 13 lbf or 6 kgf.'},
  'unreadable-gauge': {severity: 'error', what: "The text cannot be read as a string's diameter.", why: 'The pull of a string follows from its diameter.', mend: 'Write it as .017, .032w or 0.43 mm.'},
  'unreadable-length': {severity: 'error', what: 'The text cannot be read as a length.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 24 1/4, 3/4 in or 38 mm.'},
  'unreadable-line-label': {severity: 'error', what: 'The text cannot be read as a line.', why: 'Lines are named as players count them.', mend: 'Write it as 12 or 6 1/2.'},
  'unreadable-mass-per-length': {severity: 'error', what: 'The text cannot be read as a mass per length.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 5.8 g/m.'},
  'unreadable-money': {severity: 'error', what: 'The text cannot be read as an amount of money.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 2.10.'},
  'unreadable-number': {severity: 'error', what: 'The text cannot be read as a number.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 440.'},
  'unreadable-pitch': {severity: 'error', what: 'The text cannot be read as a pitch.', why: 'Without a pitch and its octave the pull of the string is unknown.', mend: 'Write it as D3, F#3 or Bb2.'},
  'unreadable-step': {severity: 'error', what: 'The text cannot be read as a step of a temperament.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 702 or 3/2.'},
  'unreadable-stiffness': {severity: 'error', what: 'The text cannot be read as a stiffness.', why: 'What cannot be read cannot be reckoned with.', mend: 'Write it as 12.6 GPa or 1.83 Mpsi.'},
  'unreadable-yaml': {severity: 'error', what: 'YAML that does not parse.', why: 'What cannot be read cannot be computed with.', mend: 'Mend the line named; indent with blanks, and put quotes round text with a colon or a hash.'},
  'wrong-shape': {severity: 'error', what: 'A value of the wrong kind: a list where one value belongs, a text where keys belong.', why: 'What cannot be read cannot be computed with.', mend: 'Write it as the example shows.'},
} satisfies Record<string, RuleRow>

export type RuleName = keyof typeof rules
