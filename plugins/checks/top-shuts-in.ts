import type {Check} from './check.ts'

/** A top glued down over wiring, with no other way in. */
export const topShutsIn: Check = {
  rule: 'top-shuts-in',
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
}
