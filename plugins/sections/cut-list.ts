import {cutParts} from './cut-list/cut-parts.ts'
import {cutPieces} from './cut-list/cut-pieces.ts'
import {cutSummary} from './cut-list/cut-summary.ts'
import {cutUnplaced} from './cut-list/cut-unplaced.ts'
import type {Section} from './section.ts'

/** Which piece gives which part, where to rip and crosscut, what goes back on the rack, and what to buy. */
export const cutList: Section = {
  name: 'cut-list',
  title: 'Cut list',
  needs: ({plan}) => (plan.cuts || plan.tooManyParts ? [] : ['neck.length', 'parts']),
  content: ({plan}) =>
    plan.cuts
      ? [
          ...cutSummary(plan.cuts, plan),
          ...cutParts(plan.cuts, plan),
          ...cutUnplaced(plan.cuts, plan),
          ...cutPieces(plan.cuts, plan),
        ]
      : [],
}
