import {readerRules} from '../build-file/rules/rules.ts'
import {unknownRule} from './accept.ts'
import {anchorRules} from './anchors.ts'
import {asBuiltRules} from './as-built.ts'
import {bodyRules} from './body.ts'
import {boxRules} from './box.ts'
import {bridgeRules} from './bridge.ts'
import {finishRules} from './finish.ts'
import {gaugeRules} from './gauges.ts'
import {headRules} from './head.ts'
import {heightRules} from './heights.ts'
import {holeRules} from './holes.ts'
import {journalRules} from './journal.ts'
import {fileRules} from './named-files.ts'
import {neckRules} from './neck.ts'
import {neckJointRules} from './neck-joint.ts'
import {openingRules} from './opening.ts'
import {pickupRules} from './pickup.ts'
import type {Rule} from './rule.ts'
import {scaleRules} from './scale.ts'
import {screwPlaceRules} from './screw-places.ts'
import {screwRules} from './screws.ts'
import {stockRules} from './stock.ts'
import {stringRules} from './strings.ts'
import {tunerRules} from './tuners.ts'

const known = {
  ...readerRules,
  ...openingRules,
  ...anchorRules,
  ...asBuiltRules,
  ...bodyRules,
  ...boxRules,
  ...bridgeRules,
  ...fileRules,
  ...finishRules,
  ...gaugeRules,
  ...headRules,
  ...heightRules,
  ...holeRules,
  ...journalRules,
  ...neckJointRules,
  ...neckRules,
  ...pickupRules,
  ...scaleRules,
  ...screwPlaceRules,
  ...screwRules,
  ...stockRules,
  ...stringRules,
  ...tunerRules,
}

export type RuleName = keyof typeof known | 'unknown-rule'

const names = [...Object.keys(known), 'unknown-rule'].sort() as RuleName[]
const byName: Record<RuleName, Rule> = {...known, 'unknown-rule': unknownRule(names)}

/** Every rule that a problem can name, sorted by name: those of the reader, of the checks, and of whoever opens the journal. */
export const rules = names.map((name) => ({name, ...byName[name]}))

/** Write every rule as a row of a Markdown table: its name, how grave it is, what it finds and what to do. */
export function ruleReference(): string {
  const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('<', '&lt;')
  const rows = rules.map(
    ({name, severity, what, mend}) => `| \`${name}\` | ${severity} | ${cell(what)} | ${cell(mend)} |`,
  )
  return ['| rule | is | finds | mend it |', '| --- | --- | --- | --- |', ...rows].join('\n')
}
