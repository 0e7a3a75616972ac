/**
 * Every rule that a problem can name: what it looks for, why, and how to mend what it finds.
 * Sorted by name, a line each. `severity` is the usual one; a rule may report a milder one where it says so.
 */
export interface RuleRow {
	severity: "error" | "fault" | "warning" | "remark";
	what: string;
	why: string;
	mend: string;
}

// biome-ignore format: a line each, so that parts can be added side by side
export const rules = {
  'box-places-disagree': {severity: 'fault', what: 'The box is placed twice, and not at the same place.', why: 'One of the two would be marked on the wood.', mend: 'Keep one of box.at and bridge.from-tail, or make them agree.'},
  'comma-in-braces': {severity: 'warning', what: 'A comma inside braces has cut a text in two.', why: 'In YAML a comma inside braces starts a new key, so part of the text is lost.', mend: 'Put quotes round the text.'},
  'unknown-key': {severity: 'warning', what: 'A key that nobody knows.', why: 'What it holds is not used, and a misspelt key leaves its section out.', mend: 'Use the key proposed, or take it out.'},
} satisfies Record<string, RuleRow>

export type RuleName = keyof typeof rules;
