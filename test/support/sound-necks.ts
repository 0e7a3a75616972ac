import {changed} from './changed.ts'
import {soundBuilds} from './sound-builds.ts'

const onTop = soundBuilds['on top']

/** Sound necks of every kind, of the same invented workshop. All pass every rule in silence. */
export const soundNecks = {
  plain: `
title: Slipway
status: on the bench
box: 10 1/8 x 7 x 2
scale: 24 1/4
strings: [D3 .030w, A3 .020w, D4 .013]
neck:
  width: 1 1/2
  thickness: 3/4
  wood: black cherry
`,
  laminated: changed(onTop, {
    'neck.wood': '',
    'neck.laminations':
      '[{wood: black cherry, thickness: 3/16, from: -1/4, glued: after scarf}, {wood: white ash, thickness: 5/8, strips: 3, woods: [white ash, black walnut, white ash]}]',
    'neck.round-over': '{radius: 3/8, from: scarf, to: box}',
  }),
  tapered: changed(onTop, {
    'neck.width': '{nut: 1 1/2, tail: 1 7/8}',
    'neck.cap': '{wood: beech, thickness: 1/16}',
  }),
  'flat head': changed(onTop, {'head.angle': '8', 'tuners.string-height': '3/16'}),
  'straight head': changed(onTop, {
    'head.joint': 'straight',
    'head.angle': '',
    'head.drop': '1/4',
    'head.retainer': 'bar',
  }),
  'head out of the solid': changed(onTop, {
    'head.joint': 'solid',
    'head.angle': '10',
    'tuners.string-height': '1/4',
  }),
  'four strings on a narrow nut': `
title: Coal quay
status: on the bench
play: fingers
units: in
scale: {length: 20, fretted: true, lines: 17, dots: [3, 5, 7, 12]}
frets: {wire-width: 0.080, crown: 0.037, tang: 0.020, tang-depth: 0.062, saw-kerf: 0.023}
nut: {kind: flat}
strings: [G3 .020w, C4 .016, E4 .012, A4 .009]
neck: {width: {nut: 1 1/4, tail: 1 1/2}, thickness: 7/8, wood: hard maple, round-over: 1/4}
fingerboard: {wood: black walnut, thickness: 3/16, to: 13 3/4, radius: 12}
head: {length: 5 1/2, thickness: 1/2, angle: 13}
tuners:
  side: both
  post-hole: 1/4
  button: 1/2
  string-height: 1/4
  at: [-1 3/4, -3 1/4, -3 1/4, -1 3/4]
  off: [-3/8, -3/8, 3/8, 3/8]
box: {wood: spanish cedar, length: 9 1/2, width: 6, depth: 1 3/4}
`,
} as const
