import {readerRules} from '../build-file/rules.ts'
import {unknownRule} from './accept.ts'
import {anchorRules} from './anchors.ts'
import {asBuiltRules} from './as-built.ts'
import {bodyRules} from './body.ts'
import {boxRules} from './box.ts'
import {bridgeRules} from './bridge.ts'
import {gaugeRules} from './gauges.ts'
import {headRules} from './head.ts'
import {heightRules} from './heights.ts'
import {holeRules} from './holes.ts'
import {journalRules, openingRules} from './journal.ts'
import {neckRules} from './neck.ts'
import {neckJointRules} from './neck-joint.ts'
import {pickupRules} from './pickup.ts'
import type {Rule} from './rule.ts'
import {scaleRules} from './scale.ts'
import {screwRules} from './screws.ts'
import {spacingRules} from './spacing.ts'
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
  ...gaugeRules,
  ...headRules,
  ...heightRules,
  ...holeRules,
  ...journalRules,
  ...neckJointRules,
  ...neckRules,
  ...pickupRules,
  ...scaleRules,
  ...screwRules,
  ...spacingRules,
  ...stockRules,
  ...stringRules,
  ...tunerRules,
}

export type RuleName = keyof typeof known | 'unknown-rule'

const names = [...Object.keys(known), 'unknown-rule'].sort() as RuleName[]
const byName: Record<RuleName, Rule> = {...known, 'unknown-rule': unknownRule(names)}

/** Every rule that a problem can name, sorted by name: those of the reader, of the checks, and of whoever opens the journal. */
export const rules = names.map((name) => ({name, ...byName[name]}))
