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
  'comma-in-braces': {severity: 'warning', what: 'A comma inside braces has cut a text in two.', why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.', mend: 'Put quotes round the text.'},
  'file-too-large': {severity: 'error', what: 'A build file of more than a million characters.', why: 'Dimensions and notes are small; pictures and recordings belong in files of their own.', mend: 'Move what is large into files beside the build.'},
  'front-matter-fence': {severity: 'error', what: 'A first line that is more than ---.', why: 'Only YAML is read, and nothing in a build file is ever run.', mend: 'Make the first line --- alone and write the dimensions as YAML.'},
  'front-matter-missing': {severity: 'error', what: 'A file without front matter.', why: 'The dimensions stand between two lines ---, before the prose.', mend: 'Start the file with ---, the dimensions, and --- again.'},
  'front-matter-not-keys': {severity: 'error', what: 'Front matter that is not a list of keys with values.', why: 'Dimensions are found by their keys.', mend: 'Write one key and its value a line: title: Needle box.'},
  'front-matter-unclosed': {severity: 'error', what: 'Front matter that never ends.', why: 'Without the second --- the prose would be read as dimensions.', mend: 'Put --- on a line of its own after the last dimension.'},
  'key-twice': {severity: 'error', what: 'A key given twice.', why: 'One of the two values would be lost.', mend: 'Keep one.'},
  'needs-started': {severity: 'error', what: 'Wood taken from the rack by a build without a starting date.', why: 'Builds take their wood in the order in which they were started.', mend: 'Give started, or list the pieces under stock.'},
  'not-text': {severity: 'error', what: 'A file that is not plain text.', why: 'A build file is Markdown in UTF-8.', mend: 'Save it as plain text.'},
  'title-missing': {severity: 'error', what: 'A build without a title.', why: 'The title is the one key that every build has.', mend: 'Add title: and a name.'},
  'two-documents': {severity: 'error', what: 'A second block of dimensions.', why: 'Only the first block between --- lines is read; the rest would be lost.', mend: 'Move every key into the first block.'},
  'unknown-choice': {severity: 'error', what: 'A word that is not one of those that the key takes.', why: 'What cannot be read cannot be computed with.', mend: 'Use one of the words named.'},
  'unknown-key': {severity: 'warning', what: 'A key that nobody knows.', why: 'What it holds is not used, and a misspelt key leaves its section out.', mend: 'Use the key proposed, or take it out.'},
  'unknown-rule': {severity: 'warning', what: 'A rule that nobody knows under accept.', why: 'Nothing is accepted by it.', mend: 'Use the name that the problem shows.'},
  'unreadable-yaml': {severity: 'error', what: 'YAML that does not parse.', why: 'What cannot be read cannot be computed with.', mend: 'Mend the line named; indent with blanks, and put quotes round text with a colon or a hash.'},
  'wrong-shape': {severity: 'error', what: 'A value of the wrong kind: a list where one value belongs, a text where keys belong.', why: 'What cannot be read cannot be computed with.', mend: 'Write it as the example shows.'},
} satisfies Record<string, RuleRow>

export type RuleName = keyof typeof rules
