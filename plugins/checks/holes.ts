import {writeLength} from '../build-file/quantities/write-length.ts'
import type {Check} from './rule.ts'

/** A sound hole over a wall of the box, or too near one. */
export const holeNearEdge: Check = {
  rule: 'hole-near-edge',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, edge, wouldDo}) => {
      if (!edge || edge.gapMm >= edge.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole’s rim is ${edge.gapMm < 0 ? 'past the box’s edge' : `${writeLength(edge.gapMm, plan, 'down')} from the box’s edge`}, where ${writeLength(edge.needsMm, plan)} keeps it clear of the wall${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          ...(edge.gapMm >= (box?.outside?.sidesMm ?? 0) && {severity: 'warning' as const}),
        },
      ]
    }),
}

/** A sound hole in a block, or too near one. */
export const holeNearBlock: Check = {
  rule: 'hole-near-block',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, block, wouldDo}) => {
      if (!block || block.gapMm >= block.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole ${block.gapMm < 0 ? `runs ${writeLength(-block.gapMm, plan, 'up')} into a block` : `${howNear(block.gapMm, plan)} a block`}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          cause: block.of,
          ...(block.gapMm >= 0 && {severity: 'warning' as const}),
        },
      ]
    }),
}

/** A sound hole too near the neck. */
export const holeNearNeck: Check = {
  rule: 'hole-near-neck',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, neck, wouldDo}) => {
      if (!neck || neck.gapMm < 0 || neck.gapMm >= neck.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole’s rim ${howNear(neck.gapMm, plan)} the neck${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}

/** A sound hole where the neck runs. */
export const holeUnderNeck: Check = {
  rule: 'hole-under-neck',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, neck, wouldDo}) => {
      if (!neck || neck.gapMm >= 0) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole lies ${writeLength(-neck.gapMm, plan, 'up')} ${box?.neck?.joins === 'through' ? 'over the neck that runs through under it' : 'under the neck'}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}

/** Two sound holes with too little wood between them. */
export const holesClose: Check = {
  rule: 'holes-close',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, earlier, wouldDo}) => {
      if (!earlier || earlier.gapMm >= earlier.needsMm - 1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `this sound hole ${earlier.gapMm < 0 ? 'runs into another' : `${howNear(earlier.gapMm, plan)} another`}; ${writeLength(earlier.needsMm, plan)} keeps the wood between them whole${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move it, or make it smaller'}`,
          ...(text && {expected: [text]}),
          cause: earlier.of,
          ...(earlier.gapMm >= 0 && {severity: 'warning' as const}),
        },
      ]
    }),
}

/** A sound hole under the foot of a bridge that stands on the top. */
export const bridgeOverHole: Check = {
  rule: 'bridge-over-hole',
  find: (_, {box, ...plan}) =>
    (box?.soundHoles ?? []).flatMap(({of, bridge, wouldDo}) => {
      if (!bridge || bridge.gapMm >= -1e-6) return []
      const text = wouldDo && writeLength(wouldDo.mm, plan)
      return [
        {
          at: wouldDo?.path ?? of,
          message: `the bridge’s foot stands over this sound hole, by ${writeLength(-bridge.gapMm, plan, 'up')}${text ? `; ${wouldDo.path.split('.').at(-1)} ${text} would do` : '; move one of them'}`,
          ...(text && {expected: [text]}),
        },
      ]
    }),
}

/** Say how near one thing is to another (mm), never nearer than the ruler tells: `is only 1/16 in from`, `touches`. */
function howNear(gapMm: number, ruler: {units: 'in' | 'mm'; rulerMm: number}): string {
  return gapMm < ruler.rulerMm - 1e-6 ? 'touches' : `is only ${writeLength(gapMm, ruler, 'down')} from`
}
