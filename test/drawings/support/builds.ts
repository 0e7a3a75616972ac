// Four builds that templates are tried on: each a way of building that draws something else.

const box = `box:
  wood: eastern white pine
  length: 10 1/8
  width: 7
  depth: 2 1/2
  holes: [{diameter: 1 3/8, along: 3, off: -2 1/4}, {diameter: 1, along: 3, off: 2 1/4}]
  blocks: [{wood: poplar, along: 1 1/4, off: 0, length: 1 1/4, width: 4 1/2, thickness: 3/4, glued: under the top}]`

const tuners = (post: string, button: string, height: string, at: string, off: string) =>
  `tuners: {side: both, post-hole: ${post}, button: ${button}, string-height: ${height}, at: [${at}], off: [${off}]}`

const fretless = `
title: Fretless
finished: 2026-03-15
scale: {length: 24 1/4, dots: [5, 7, 12]}
nut: {kind: rod, diameter: 3/16, groove: 1/16}
bridge: {kind: rod, on: neck, from-tail: 1 7/8, length: 1 1/2, foot: 1/2}
strings: [D3 .030w, A3 .020w, D4 .013]
spacing: {nut: 1 1/16, bridge: 1 1/4}
neck: {length: 33 1/2, width: 1 5/8, thickness: 13/16, wood: white ash}
head: {length: 6 1/4, thickness: 9/16, joint: scarf, angle: 14}
${box}
${tuners('1/4', '3/4', '5/16', '-2, -4 1/2, -3 1/4', '-7/16, -7/16, 7/16')}
anchors: {kind: ferrule, at: 26 3/4, spacing: 1/2, body: 5/16, string-hole: 3/32}
screws: [{size: 8, length: 1 1/4, along: [1 1/4], off: [0], through: [block, top], into: neck, head: flat}]`

const through = `
title: Through
finished: 2026-05-02
scale: {length: 25, fretted: true, dots: [3, 5, 7, 9, 12]}
frets: {wire-width: 0.080, crown: 0.037, tang: 0.020, tang-depth: 0.062, saw-kerf: 0.023}
nut: {kind: flat}
bridge: {kind: saddle, on: top, from-tail: 3, length: 3, foot: 1/2}
strings: [G2 .042w, D3 .026w, G3 .017]
neck: {length: 34, width: {nut: 1 1/2, tail: 1 7/8}, thickness: 3/4, joins: through, above-top: 1/4, wood: sugar maple}
head: {length: 5 1/2, thickness: 9/16, joint: solid, angle: 13}
fingerboard: {wood: black walnut, thickness: 1/4, from: 0, to: 17 3/4}
${box}
${tuners('1/4', '3/4', '5/16', '-1 7/8, -4, -2 7/8', '-7/16, -7/16, 7/16')}
anchors: {kind: plain, at: 28 3/8, spacing: 1/2, string-hole: 3/32, height: -1/4}`

const sixStrings = `
title: Six strings
units: mm
started: 2026-06-01
scale: {length: 900, fretted: true}
nut: {kind: zero-fret}
bridge: {kind: saddle, on: top, from-tail: 95, length: 90, foot: 12}
strings: [E2 1.1w, A2 0.9w, D3 0.7w, G3 0.45, B3 0.33, E4 0.25]
neck: {length: 1180, width: 52, thickness: 22, joins: through, wood: hard maple}
head: {length: 172, thickness: 15, joint: straight, drop: 4}
box: {length: 410, width: 330, depth: 90, holes: [{diameter: 80, along: 130, off: 80}]}
${tuners('6', '18', '8', '-40, -70, -100, -55, -85, -115', '-12, -12, -12, 12, 12, 12')}
anchors: {kind: plain, along: 405, spacing: 8, string-hole: 2.5}`

/** Front matter by what each is for. */
export const templateBuilds = {
  fretless,
  'through-neck': through,
  'left-handed': fretless.replace('title: Fretless', 'title: Left-handed\nhanded: left'),
  'six-string': sixStrings,
}
