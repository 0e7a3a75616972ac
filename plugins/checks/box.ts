import * as words from '../words/findings/box.ts'
import {rule} from './rule.ts'

export const boxRules = {
  'box-places-disagree': rule({
    severity: 'fault',
    what: 'The box is placed twice, and not at the same place.',
    why: 'One of the two would be marked on the wood.',
    mend: 'Keep one of box.at and bridge.from-tail, or make them agree.',
    passes: 'scale: 24 1/4\nbridge: {from-tail: 2}\nbox: {length: 10, width: 7, depth: 2, at: 16 1/4}',
    fails: 'scale: 24 1/4\nbridge: {from-tail: 2}\nbox: {length: 10, width: 7, depth: 2, at: 16}',
    find: ({values: {box, bridge, scale}}, plan) => {
      const {atMm, atByTailMm} = plan.box ?? {}
      if (atMm === undefined || atByTailMm === undefined) return []
      if (Math.abs(atMm - atByTailMm) <= plan.rulerMm + 1e-6) return []
      return [
        {
          at: 'box.at',
          cause: 'bridge.from-tail',
          boxAt: box?.at?.text,
          fromTail: bridge?.['from-tail']?.text,
          scale: scale?.length?.text,
          atByTailMm,
        },
      ]
    },
    says: words.boxPlacesDisagree,
  }),
  'box-without-inside': rule({
    severity: 'fault',
    what: 'Walls that leave no room inside the box.',
    why: 'All box measures are outside; there would be no air to sound.',
    mend: 'Measure the box again: outside, walls included.',
    passes: 'box: {length: 10, width: 7, depth: 2, top: 1/8, back: 1/8}',
    fails: 'box: {length: 10, width: 7, depth: 2, top: 1, back: 1}',
    find: ({values: {box}}, {box: {outside, inside} = {}}) => {
      if (!outside || inside) return []
      const {depth, length, width, sides} = box ?? {}
      if (outside.depthMm <= outside.topMm + outside.backMm) return [{at: 'box.depth', depth: depth?.text}]
      return [
        {
          at: sides ? 'box.sides' : 'box.width',
          sides: sides?.text,
          length: length?.text,
          width: width?.text,
        },
      ]
    },
    says: words.boxWithoutInside,
  }),
  'block-outside': rule({
    severity: 'fault',
    what: 'A block that does not fit inside the box.',
    why: 'All box measures are outside; walls, top and back take their part of it.',
    mend: 'Make the block smaller, or move its middle.',
    passes:
      'box: {length: 10, width: 7, depth: 2, blocks: [{along: 1, length: 1, width: 6 1/2, thickness: 1/2}]}',
    fails: 'box: {length: 10, width: 7, depth: 2, blocks: [{along: 1, length: 1, width: 7, thickness: 1/2}]}',
    find: (_, {box, rulerMm}) =>
      (box?.blocks ?? []).flatMap(({of, overWallMm = 0, wouldDo}) =>
        overWallMm > rulerMm + 1e-6
          ? [{at: wouldDo?.path ?? of, overWallMm, inside: box!.inside!, wouldDo}]
          : [],
      ),
    says: words.blockOutside,
  }),
  'block-under-neck': rule({
    severity: 'fault',
    what: 'A block under the top where a neck runs through.',
    why: 'Neck and block would be in the same place.',
    mend: 'Put the block beside the neck, or make it thinner than the daylight over the neck.',
    passes:
      'neck: {joins: through, width: 1 5/8, thickness: 1 1/4}\nbox: {length: 10, width: 8, depth: 2, neck-gap: 3/16, blocks: [{along: 1 1/2, off: 2, length: 1, width: 1 1/2, thickness: 1/2, glued: under the top}]}',
    fails:
      'neck: {joins: through, width: 1 5/8, thickness: 1 1/4}\nbox: {length: 10, width: 8, depth: 2, neck-gap: 3/16, blocks: [{along: 1 1/2, off: 0, length: 1, width: 1 1/2, thickness: 1/2, glued: under the top}]}',
    find: (_, {box}) =>
      (box?.blocks ?? []).flatMap(({of, overNeckMm = 0, wouldDo}) => {
        if (overNeckMm <= 1e-6) return []
        const thinner = wouldDo?.path.endsWith('.thickness') ? wouldDo : undefined
        return [{at: thinner?.path ?? of, overNeckMm, thicknessMm: thinner?.mm}]
      }),
    says: words.blockUnderNeck,
  }),
  'top-shuts-in': rule({
    severity: 'warning',
    what: 'A top glued down over wiring, with no other way in.',
    why: 'Wires come off and jacks wear; they have to be reached.',
    mend: 'Screw or hinge the top, or leave a sound hole of 2 in or more.',
    passes: 'box: {length: 10, width: 7, depth: 2, top: {held: screwed}}\npickup: {kind: piezo, diameter: 1}',
    fails: 'box: {length: 10, width: 7, depth: 2, top: {held: glued}}\npickup: {kind: piezo, diameter: 1}',
    find: (_, {box, pickup}) => (pickup && box?.isShut ? [{at: 'box.top.held'}] : []),
    says: words.topShutsIn,
  }),
}
