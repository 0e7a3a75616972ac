import {stringHole} from '../words/findings/anchors.ts'
import {tooNear as says} from '../words/findings/conflicts.ts'
import {rule, tooNear} from './rule.ts'

export const anchorRules = {
  'anchors-crowded': rule({
    severity: 'fault',
    what: 'Anchors that leave less than 1/16 in of wood between neighbours.',
    why: 'The holes would run into each other, or the wood between them break out. Common practice, no source.',
    mend: 'Space them wider, or take smaller ones.',
    passes: 'anchors: {kind: ferrule, at: 26 3/4, body: 5/16, spacing: 3/8}',
    fails: 'anchors: {kind: ferrule, at: 26 3/4, body: 5/16, spacing: 11/32}',
    find: ({values}, plan) =>
      tooNear(plan, 'anchor-anchor').map((one) => ({...one, spacing: values.anchors?.spacing?.text})),
    says,
  }),
  'anchor-near-edge': rule({
    severity: 'warning',
    what: 'Anchors with less than 1/16 in of wood out to an edge of the neck.',
    why: 'The wood splits when the hole is bored, or later under the pull. Common practice, no source.',
    mend: 'Bring them closer together, or take a wider neck.',
    passes: 'anchors: {kind: ferrule, at: 26 3/4, body: 5/16, spacing: 9/16}',
    fails: 'anchors: {kind: ferrule, at: 26 3/4, body: 5/16, spacing: 5/8}',
    find: (_, plan) => tooNear(plan, 'anchor-edge'),
    says,
  }),
  'string-hole': rule({
    severity: 'fault',
    what: 'A string hole too small for its string, or too large for its ball end.',
    why: 'The string could not be put on, or would pull through.',
    mend: 'Bore the hole to suit the strings.',
    passes: 'anchors: {kind: ferrule, at: 26 3/4, spacing: 1/2, string-hole: 3/32}',
    fails: 'anchors: {kind: ferrule, at: 26 3/4, spacing: 1/2, string-hole: 1/64}',
    find: ({values}, {anchorRow: row}) => {
      const hole = values.anchors?.['string-hole']
      if (!hole || !row) return []
      const {stringMm, ballMm} = row
      const at = 'anchors.string-hole'
      if (stringMm !== undefined && hole.mm < stringMm - 1e-6) return [{at, hole: hole.text, stringMm}]
      if (ballMm === undefined || hole.mm < ballMm - 1e-6) return []
      return [{at, hole: hole.text, ballMm}]
    },
    says: stringHole,
  }),
}
