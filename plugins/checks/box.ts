import {writeLength} from '../build-file/quantities/write-length.ts'
import {rule} from './rule.ts'

export const boxRules = {
  'box-places-disagree': rule({
    severity: 'fault',
    what: 'The box is placed twice, and not at the same place.',
    why: 'One of the two would be marked on the wood.',
    mend: 'Keep one of box.at and bridge.from-tail, or make them agree.',
    find: ({values: {box, bridge, scale}}, plan) => {
      const {atMm, atByTailMm} = plan.box ?? {}
      if (atMm === undefined || atByTailMm === undefined) return []
      if (Math.abs(atMm - atByTailMm) <= plan.rulerMm + 1e-6) return []
      const text = writeLength(atByTailMm, plan)
      return [
        {
          at: 'box.at',
          message: `box.at puts the box’s head-side edge ${box?.at?.text} from the nut, but bridge.from-tail ${bridge?.['from-tail']?.text}, on a scale of ${scale?.length?.text}, puts it at ${text}; keep one of the two, or make them agree`,
          expected: [text],
          cause: 'bridge.from-tail',
        },
      ]
    },
  }),
  'box-without-inside': rule({
    severity: 'fault',
    what: 'Walls that leave no room inside the box.',
    why: 'All box measures are outside; there would be no air to sound.',
    mend: 'Measure the box again: outside, walls included.',
    find: ({values: {box}}, {box: {outside, inside} = {}}) => {
      if (!outside || inside) return []
      const isDeep = outside.depthMm > outside.topMm + outside.backMm
      const {depth, length, width, sides} = box ?? {}
      return [
        {
          at: isDeep ? (sides ? 'box.sides' : 'box.width') : 'box.depth',
          message: isDeep
            ? `sides of ${sides?.text ?? '3/16 in'} leave no room inside a box ${length?.text} by ${width?.text}; all box measures are outside`
            : `top and back leave no room inside a box ${depth?.text} deep; all box measures are outside`,
        },
      ]
    },
  }),
  'block-outside': rule({
    severity: 'fault',
    what: 'A block that does not fit inside the box.',
    why: 'All box measures are outside; walls, top and back take their part of it.',
    mend: 'Make the block smaller, or move its middle.',
    find: (_, {box, ...plan}) =>
      (box?.blocks ?? []).flatMap(({of, overWallMm = 0, wouldDo}) => {
        if (overWallMm <= plan.rulerMm + 1e-6) return []
        const {lengthMm, widthMm, heightMm} = box!.inside!
        const text = wouldDo && writeLength(wouldDo.mm, plan)
        const inside = [lengthMm, widthMm, heightMm].map((mm) => writeLength(mm, plan, 'down'))
        return [
          {
            at: wouldDo?.path ?? of,
            message: `this block reaches ${writeLength(overWallMm, plan, 'up')} into a wall; inside, the box is ${inside[0]} long, ${inside[1]} wide and ${inside[2]} high${text ? `: ${wouldDo.path.split('.').at(-1)} ${text} would do` : ''}`,
            ...(text && {expected: [text]}),
          },
        ]
      }),
  }),
  'block-under-neck': rule({
    severity: 'fault',
    what: 'A block under the top where a neck runs through.',
    why: 'Neck and block would be in the same place.',
    mend: 'Put the block beside the neck, or make it thinner than the daylight over the neck.',
    find: (_, {box, ...plan}) =>
      (box?.blocks ?? []).flatMap(({of, overNeckMm = 0, wouldDo}) => {
        if (overNeckMm <= 1e-6) return []
        const text = wouldDo?.path.endsWith('.thickness') ? writeLength(wouldDo.mm, plan) : undefined
        return [
          {
            at: text ? wouldDo!.path : of,
            message: `this block would stand ${writeLength(overNeckMm, plan, 'up')} into the neck that runs through under the top; put it beside the neck${text ? `, or make it ${text} thick` : ''}`,
            ...(text && {expected: [text]}),
          },
        ]
      }),
  }),
  'top-shuts-in': rule({
    severity: 'warning',
    what: 'A top glued down over wiring, with no other way in.',
    why: 'Wires come off and jacks wear; they have to be reached.',
    mend: 'Screw or hinge the top, or leave a sound hole of 2 in or more.',
    find: (_, {box, pickup}) =>
      pickup && box?.isShut
        ? [
            {
              at: 'box.top.held',
              message:
                'with the top glued down nobody gets at the pickup and the jack any more; screw the top, or make a sound hole of 2 in for fingers',
              expected: ['screwed'],
            },
          ]
        : [],
  }),
}
