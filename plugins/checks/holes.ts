import {tooNear as says} from '../words/findings/conflicts.ts'
import {rule, tooNear} from './rule.ts'

/** Write a box with one hole beside whatever else is listed. */
const box = (hole: string, more = '') => `box: {length: 10, width: 8, depth: 2${more}, holes: [${hole}]}`
const through = 'neck: {joins: through, width: 1 5/8, thickness: 1 1/4}\n'

export const holeRules = {
  'hole-near-edge': rule({
    severity: 'fault',
    what: 'A sound hole within a wall’s thickness and 1/4 in of the box’s edge.',
    why: 'The rim breaks out, or the bit meets the wall. Common practice, no source.',
    mend: 'Move the hole inwards, or make it smaller.',
    passes: box('{diameter: 1, along: 3, off: 2 1/2}'),
    fails: box('{diameter: 1, along: 3, off: 3 1/2}'),
    find: (_, plan) =>
      tooNear(plan, 'hole-edge').map((one) => ({
        ...one,
        severity: one.conflict.gapMm >= (plan.box?.outside?.sidesMm ?? 0) ? 'warning' : undefined,
      })),
    says,
  }),
  'hole-near-block': rule({
    severity: 'fault',
    what: 'A sound hole in a block, or within 1/8 in of one.',
    why: 'The bit runs into the block, tears the top and leaves no clean rim. Common practice, no source.',
    mend: 'Move the hole, or make it smaller.',
    passes: box(
      '{diameter: 1, along: 4, off: 2 1/2}',
      ', blocks: [{along: 1 1/4, length: 1, width: 6, thickness: 1/2}]',
    ),
    fails: box(
      '{diameter: 1, along: 2, off: 2 1/2}',
      ', blocks: [{along: 1 1/4, length: 1, width: 6, thickness: 1/2}]',
    ),
    find: (_, plan) => tooNear(plan, 'hole-block').map(milder),
    says,
  }),
  'hole-near-neck': rule({
    severity: 'warning',
    what: 'A sound hole within 1/8 in of the neck.',
    why: 'The strip between breaks out, and glue or the neck’s edge spoils the rim. Common practice, no source.',
    mend: 'Move the hole outwards, or make it smaller.',
    passes: through + box('{diameter: 1, along: 3, off: 1 1/2}'),
    fails: through + box('{diameter: 1, along: 3, off: 1 3/8}'),
    find: (_, plan) => tooNear(plan, 'hole-neck').filter(({conflict}) => conflict.gapMm >= 0),
    says,
  }),
  'hole-under-neck': rule({
    severity: 'fault',
    what: 'A sound hole where the neck runs.',
    why: 'The neck would close it, or show through it.',
    mend: 'Move the hole beside the neck.',
    passes: through + box('{diameter: 1, along: 3, off: 2}'),
    fails: through + box('{diameter: 1, along: 3, off: 1}'),
    find: (_, plan) => tooNear(plan, 'hole-neck').filter(({conflict}) => conflict.gapMm < 0),
    says,
  }),
  'holes-close': rule({
    severity: 'fault',
    what: 'Two sound holes with less than 3/8 in between them.',
    why: 'The bridge of wood between them splits along the grain. Common practice, no source.',
    mend: 'Move them apart, or make them smaller.',
    passes: box('{diameter: 1, along: 3, off: 2 1/2}, {diameter: 1, along: 5, off: 2 1/2}'),
    fails: box('{diameter: 1, along: 3, off: 2 1/2}, {diameter: 1, along: 3 3/4, off: 2 1/2}'),
    find: (_, plan) => tooNear(plan, 'hole-hole').map(milder),
    says,
  }),
  'bridge-over-hole': rule({
    severity: 'fault',
    what: 'A sound hole under the foot of a bridge on the top.',
    why: 'The top would break under the strings’ push where the hole weakens it.',
    mend: 'Move the hole.',
    passes: `${through}bridge: {on: top, length: 4, foot: 3/8}\n${box('{diameter: 1, along: 3, off: 2 1/2}', ', at: 16')}`,
    fails: `${through}bridge: {on: top, length: 4, foot: 3/8}\n${box('{diameter: 1, along: 8 1/4, off: 2}', ', at: 16')}`,
    find: (_, plan) => tooNear(plan, 'hole-bridge'),
    says,
  }),
}

/** A hole that is near and does not run in is milder. */
const milder = (one: ReturnType<typeof tooNear>[number]) => ({
  ...one,
  severity: one.conflict.gapMm >= 0 ? ('warning' as const) : undefined,
})
