import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const holeRules = {
  'hole-near-edge': rule({
    severity: 'fault',
    what: 'A sound hole within a wall’s thickness and 1/4 in of the box’s edge.',
    why: 'The rim breaks out, or the bit meets the wall. Common practice, no source.',
    mend: 'Move the hole inwards, or make it smaller.',
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
  }),
  'hole-near-block': rule({
    severity: 'fault',
    what: 'A sound hole in a block, or within 1/8 in of one.',
    why: 'The bit runs into the block, tears the top and leaves no clean rim. Common practice, no source.',
    mend: 'Move the hole, or make it smaller.',
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
  }),
  'hole-near-neck': rule({
    severity: 'warning',
    what: 'A sound hole within 1/8 in of the neck.',
    why: 'The strip between breaks out, and glue or the neck’s edge spoils the rim. Common practice, no source.',
    mend: 'Move the hole outwards, or make it smaller.',
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
  }),
  'hole-under-neck': rule({
    severity: 'fault',
    what: 'A sound hole where the neck runs.',
    why: 'The neck would close it, or show through it.',
    mend: 'Move the hole beside the neck.',
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
  }),
  'holes-close': rule({
    severity: 'fault',
    what: 'Two sound holes with less than 3/8 in between them.',
    why: 'The bridge of wood between them splits along the grain. Common practice, no source.',
    mend: 'Move them apart, or make them smaller.',
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
  }),
  'bridge-over-hole': rule({
    severity: 'fault',
    what: 'A sound hole under the foot of a bridge on the top.',
    why: 'The top would break under the strings’ push where the hole weakens it.',
    mend: 'Move the hole.',
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
  }),
}

/** Say how near one thing is to another (mm), never nearer than the ruler tells: `is only 1/16 in from`, `touches`. */
function howNear(gapMm: number, ruler: {units: 'in' | 'mm'; rulerMm: number}): string {
  return gapMm < ruler.rulerMm - 1e-6 ? 'touches' : `is only ${writeLength(gapMm, ruler, 'down')} from`
}
