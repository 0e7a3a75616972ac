import {asBuilt} from './as-built.ts'
import {assumptions} from './assumptions.ts'
import {beforeYouCut} from './before-you-cut.ts'
import {bill} from './bill.ts'
import {box} from './box.ts'
import {cautions} from './cautions.ts'
import {cutList} from './cut-list.ts'
import {drawing} from './drawing.ts'
import {drilling} from './drilling.ts'
import {fasteners} from './fasteners.ts'
import {intonation} from './intonation.ts'
import {layout} from './layout.ts'
import {lineage} from './lineage.ts'
import {lines} from './lines.ts'
import {neck} from './neck.ts'
import {played} from './played.ts'
import {scarf} from './scarf.ts'
import type {Section} from './section.ts'
import {settingUp} from './setting-up.ts'
import {strings} from './strings.ts'
import {workOrder} from './work-order.ts'

/** Every section, sorted by name, a line each. */
export const allSections: readonly Section[] = [
  asBuilt,
  assumptions,
  beforeYouCut,
  bill,
  box,
  cautions,
  cutList,
  drawing,
  drilling,
  fasteners,
  intonation,
  layout,
  lineage,
  lines,
  neck,
  played,
  scarf,
  settingUp,
  strings,
  workOrder,
]
