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
  'alias-bomb': {severity: 'error', about: 'file', what: 'YAML aliases that unfold without end.', why: 'Such a file would fill the memory of whoever opens it.', mend: 'Write the values out.'},
  'alt-missing': {severity: 'remark', about: 'journal', what: 'A photograph without words for those who do not see it.', why: 'A reader with a screen reader, or without the picture, learns nothing from it.', mend: 'Write a few words in the square brackets before its address.'},
  'based-on-circle': {severity: 'fault', about: 'journal', what: 'Builds that were copied from each other in a circle.', why: 'A line of builds has a first one.', mend: 'Leave based-on out in the build that came first.'},
  'based-on-missing': {severity: 'warning', about: 'journal', what: 'A build that was copied from one that is not in the journal.', why: 'Its page cannot show what was changed.', mend: 'Name the build by its slug, as in its address.'},
  'box-places-disagree': {severity: 'fault', what: 'The box is placed twice, and not at the same place.', why: 'One of the two would be marked on the wood.', mend: 'Keep one of box.at and bridge.from-tail, or make them agree.'},
  'build-twice': {severity: 'error', about: 'journal', what: 'A build that is there twice, as SLUG.md and as SLUG/index.md.', why: 'Only one of the two can be published.', mend: 'Keep one.'},
  'cautions-left-out': {severity: 'warning', about: 'file', what: 'A file that leaves out its cautions.', why: 'Whoever works from the page must be able to see what could hurt.', mend: 'Take cautions out of leave-out; they stay on the page.'},
  'comma-in-braces': {severity: 'warning', about: 'file', what: 'A comma inside braces has cut a text in two.', why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.', mend: 'Put quotes round the text.'},
  'core-not-inside': {severity: 'error', what: 'A core that does not fit inside its string.', why: 'A wound string is its core and two turns of its wrap across.', mend: 'Leave the core out, or write the packet’s.'},
  'core-on-plain': {severity: 'error', what: 'A core or a wrap on a plain string.', why: 'A plain string is one wire.', mend: 'Write w after the gauge of a wound string, or take core and wrap out.'},
  'directive-twice': {severity: 'warning', about: 'file', what: 'A section placed twice.', why: 'It stands where it was placed first, and the second one is left out.', mend: 'Take one of the two lines out.'},
  'dot-without-line': {severity: 'fault', what: 'A dot on a line that is not there.', why: 'The dot could not be placed, so it would be left out or drilled by guess.', mend: 'Name a line that is there, or lay out more lines.'},
  'file-missing': {severity: 'warning', about: 'journal', what: 'A photograph, recording or link whose file is not there.', why: 'The page would show a gap.', mend: 'Lay the file beside the build, or mend its name.'},
  'file-outside': {severity: 'warning', about: 'journal', what: 'A file outside the folder of the build.', why: 'Only what lies in the folder of a build is published with it.', mend: 'Copy it into the folder of the build.'},
  'file-too-large': {severity: 'error', what: 'A build file of more than a million characters.', why: 'Dimensions and notes are small; pictures and recordings belong in files of their own.', mend: 'Move what is large into files beside the build.'},
  'finished-before-started': {severity: 'warning', about: 'journal', what: 'A build that was finished before it was started.', why: 'One of the two dates is a slip, and builds are sorted by them.', mend: 'Mend the date that is wrong.'},
  'front-matter-fence': {severity: 'error', what: 'A first line that is more than ---.', why: 'Only YAML is read, and nothing in a build file is ever run.', mend: 'Make the first line --- alone and write the dimensions as YAML.'},
  'front-matter-missing': {severity: 'error', what: 'A file without front matter.', why: 'The dimensions stand between two lines ---, before the prose.', mend: 'Start the file with ---, the dimensions, and --- again.'},
  'front-matter-not-keys': {severity: 'error', what: 'Front matter that is not a list of keys with values.', why: 'Dimensions are found by their keys.', mend: 'Write one key and its value a line: title: Needle box.'},
  'front-matter-unclosed': {severity: 'error', what: 'Front matter that never ends.', why: 'Without the second --- the prose would be read as dimensions.', mend: 'Put --- on a line of its own after the last dimension.'},
  'heights-disagree': {severity: 'fault', what: 'Heights at nut, octave and bridge that do not lie on one straight line.', why: 'A string is straight: only two of the three can be chosen, and the third would be made wrong.', mend: 'Leave one of them out, or make it agree.'},
  'key-twice': {severity: 'error', about: 'file', what: 'A key given twice.', why: 'One of the two values would be lost.', mend: 'Keep one.'},
  'line-past-bridge': {severity: 'fault', what: 'A line that lies under the bridge or past it.', why: 'Nothing can be played there.', mend: 'Lay out fewer lines, or mend the measure.'},
  'lines-past-pattern': {severity: 'warning', what: 'More lines than the pattern lists.', why: 'A list repeats only where it stops at the octave.', mend: 'Let the list stop at 12, or ask for as many lines as it has.'},
  'measured-line-unknown': {severity: 'warning', what: 'A measured line that is not there.', why: 'What was measured there can be compared with nothing.', mend: 'Name the line as it is numbered on this build.'},
  'needs-started': {severity: 'error', about: 'journal', what: 'Wood taken from the rack by a build without a starting date.', why: 'Builds take their wood in the order in which they were started.', mend: 'Give started, or list the pieces under stock.'},
  'negative-length': {severity: 'error', what: 'A length below zero where only distances to either side can be.', why: 'No piece is shorter than nothing; only a distance from a line can lie on its other side.', mend: 'Take the sign away.'},
  'not-text': {severity: 'error', what: 'A file that is not plain text.', why: 'A build file is Markdown in UTF-8.', mend: 'Save it as plain text.'},
  'open-value': {severity: 'warning', about: 'file', what: 'A value in a sentence that is not computed yet.', why: 'It reads “open” on the page until the file has what it needs.', mend: 'Fill in the key that is named, or take the value out of the sentence.'},
  'out-of-range': {severity: 'error', what: 'A value that no instrument of this kind has.', why: 'It is most often a slip of the unit or of the point.', mend: 'Look at the unit and the point.'},
  'packet-incomplete': {severity: 'remark', what: 'A packet’s pull without the scale and note that it was printed for.', why: 'A pull means nothing without the length and the pitch that it belongs to.', mend: 'Add what is missing, as the packet prints it.'},
  'pattern-not-rising': {severity: 'error', what: 'A list of lines that does not rise.', why: 'The lines follow one another from the nut, so each is higher than the last.', mend: 'Put the list in rising order, each line once.'},
  'pitches-out-of-order': {severity: 'remark', what: 'A string that is lower than the one before it.', why: 'Strings are listed from the player’s bass side, and tuners and anchors follow that order.', mend: 'List the strings from the bass side; leave it where the tuning is meant so.'},
  'string-material-open': {severity: 'remark', what: 'A thick plain string whose material is not said.', why: 'Steel is taken for granted only up to .022; what pull it has depends on what it is.', mend: 'Write w if it is wound, or add its material.'},
  'string-near-breaking': {severity: 'fault', what: 'A steel string tuned near its strength, or past it.', why: 'Near its strength a string wears fast and breaks while tuning, and the end that flies off can hurt an eye.', mend: 'Tune it lower, shorten the scale, or give it a lower string’s part.'},
  'string-slack': {severity: 'warning', what: 'A string that pulls too little.', why: 'A slack string buzzes, and a slide pushes it down to the lines.', mend: 'Take a heavier gauge, tune higher, or lengthen the scale.'},
  'string-stiff': {severity: 'warning', what: 'A string that pulls too much.', why: 'A stiff string is hard to press and bends the neck.', mend: 'Take a lighter gauge, tune lower, or shorten the scale.'},
  'string-too-long': {severity: 'warning', what: 'A string longer than packets come.', why: 'The string would not reach its post with enough winds to hold.', mend: 'Bring the anchors nearer, shorten the head or the scale, or buy strings made for long scales.'},
  'string-uneven': {severity: 'warning', what: 'A string that pulls far more or less than the others like it.', why: 'Under the hand it feels like another instrument’s, and it drowns the others or is drowned.', mend: 'Take a gauge that pulls as the others do.'},
  'strings-on-face': {severity: 'fault', what: 'Strings that would touch the playing face or the frets.', why: 'They could not sound.', mend: 'Raise the bridge or the octave height.'},
  'temperament-not-rising': {severity: 'error', what: 'A temperament whose steps do not rise.', why: 'Each semitone is higher than the one before it.', mend: 'Put the twelve steps in rising order.'},
  'temperament-octave': {severity: 'error', what: 'A temperament whose twelfth step is not the octave.', why: 'The twelve steps repeat by the octave.', mend: 'End the list with 1200 or 2/1.'},
  'title-missing': {severity: 'error', what: 'A build without a title.', why: 'The title is the one key that every build has.', mend: 'Add title: and a name.'},
  'tuners-uneven': {severity: 'error', what: 'Tuners and strings in unequal numbers.', why: 'Each place under at and off belongs to one string, in their order.', mend: 'List one place under at and one under off for each string.'},
  'two-documents': {severity: 'error', what: 'A second block of dimensions.', why: 'Only the first block between --- lines is read; the rest would be lost.', mend: 'Move every key into the first block.'},
  'unknown-choice': {severity: 'error', what: 'A word that is not one of those that the key takes.', why: 'What cannot be read cannot be computed with.', mend: 'Use one of the words named.'},
  'unknown-directive': {severity: 'warning', about: 'file', what: 'A line such as ::layout that names no section or view.', why: 'It cannot be filled, and stays on the page as it was written.', mend: 'Use the name proposed, or take the line out.'},
  'unknown-key': {severity: 'warning', about: 'file', what: 'A key that nobody knows.', why: 'What it holds is not used, and a misspelt key leaves its section out.', mend: 'Use the key proposed, or take it out.'},
  'unknown-rule': {severity: 'warning', about: 'file', what: 'A rule that nobody knows under accept.', why: 'Nothing is accepted by it.', mend: 'Use the name that the problem shows.'},
  'unknown-value': {severity: 'warning', about: 'file', what: 'A value in a sentence that the plan does not have.', why: 'It cannot be filled in, and stays on the page as it was written.', mend: 'Use the name proposed; strings go by their notes and lines by their labels.'},
  'unknown-wood': {severity: 'warning', about: 'file', what: 'A wood that the wood table does not have.', why: 'Without density and stiffness, weight and bow cannot be computed.', mend: 'Use a name of the wood table, a loose name such as hardwood, or give density and stiffness.'},
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
  'wound-too-thin': {severity: 'warning', what: 'A wound string thinner than any that is made.', why: 'No packet has it.', mend: 'Write the gauge without w, or a heavier one.'},
  'wrong-shape': {severity: 'error', what: 'A value of the wrong kind: a list where one value belongs, a text where keys belong.', why: 'What cannot be read cannot be computed with.', mend: 'Write it as the example shows.'},
} satisfies Record<string, RuleRow>

export type RuleName = keyof typeof rules
