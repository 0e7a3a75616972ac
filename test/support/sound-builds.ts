// Three sound builds of one invented workshop, one for each way a neck joins the box. All pass every rule in silence.

const common = `
status: on the bench
play: slide
scale:
  length: 24 1/4
strings:
  - {note: D3, gauge: .030w, core: .015, ends: ball}
  - {note: A3, gauge: .020w, core: .012, ends: ball}
  - {note: D4, gauge: .013, ends: ball}
nut: {kind: rod, diameter: 3/16, groove: 1/16}
spacing: {nut: 1, bridge: 1}
action:
  nut: 1/8
  octave: 7/32
head:
  length: 6 1/4
  thickness: 9/16
  angle: 14
tuners:
  post-hole: 1/4
  button: 3/4
  string-height: 5/16
  at: [-2, -4 1/2, -3 1/4]
  off: [-7/16, -7/16, 7/16]
`

export const soundBuilds = {
  'on top': `title: Breakwater
${common}
neck:
  length: 33 1/2
  width: 1 5/8
  thickness: 13/16
  joins: on top
  above-top: 13/16
  wood: white ash
bridge:
  kind: rod
  on: neck
  from-tail: 1 7/8
  height: 5/16
  length: 1 1/2
  foot: 1/2
anchors:
  kind: ferrule
  at: 26 3/4
  spacing: 1/2
  body: 5/16
  string-hole: 3/32
  height: 0
box:
  wood: basswood
  length: 10 1/8
  width: 7
  depth: 2
  sides: 3/16
  top:
    thickness: 1/8
    held: screwed
  back: 1/8
  at: 16
  holes:
    - diameter: 1 3/8
      along: 4
      off: 2 1/4
  blocks:
    - {wood: beech, along: 1 1/4, off: 0, length: 1 1/4, width: 4 1/2, thickness: 5/16}
    - {wood: beech, along: 6 3/4, off: 0, length: 1 1/4, width: 4 1/2, thickness: 5/16}
screws:
  - size: 6
    length: 1
    at: [17 1/4, 22 3/4]
    off: [0]
    through: [block, top]
    into: neck
pickup:
  kind: piezo
  diameter: 27 mm
  capacitance: 20 nF
  under: bridge
  jack: {hole: 3/8, thread: 3/8, in: side}
extras: [strap buttons]
`,
  through: `title: Tide table
${common}
neck:
  length: 33 1/4
  width: 1 5/8
  thickness: 1 1/4
  joins: through
  above-top: 1/4
  wood: black cherry
bridge:
  kind: saddle
  on: top
  height: 9/16
  length: 2
  foot: 3/8
anchors:
  kind: ferrule
  at: 26 1/2
  spacing: 1/2
  body: 5/16
  string-hole: 3/32
  height: 0
box:
  wood: eastern white pine
  length: 10
  width: 8
  depth: 2
  sides: 1/4
  top:
    thickness: 1/8
    held: glued
  back: 1/8
  at: 16
  holes:
    - diameter: 1
      along: 3
      off: -2 1/2
    - diameter: 1
      along: 3
      off: 2 1/2
  notch:
    width: 1 5/8
    depth: 1
  neck-gap: 3/16
`,
  end: `title: Ferry bell
${common}
neck:
  length: 22 1/4
  width: 1 5/8
  thickness: 1
  joins: end
  above-top: 1/4
  wood: sugar maple
bridge:
  kind: saddle
  on: top
  height: 9/16
  length: 2
  foot: 3/8
anchors:
  kind: tailpiece
  at: 26
  spacing: 1/2
  height: -1/4
box:
  wood: sugar maple
  length: 10
  width: 8
  depth: 2 1/2
  sides: 1/4
  top:
    thickness: 1/8
    held: screwed
  back: 1/8
  at: 16
  holes:
    - diameter: 1 1/2
      along: 3 1/2
      off: 2
  blocks:
    - {wood: sugar maple, along: 5/8, off: 0, length: 3/4, width: 3, thickness: 1 3/4, glued: at the ends}
screws:
  - size: 8
    length: 2
    at: [16]
    off: [-3/8, 3/8]
    through: [block, side]
    into: neck
pickup:
  kind: piezo
  diameter: 1
  capacitance: 15 nF
  under: bridge
  jack: {hole: 3/8, thread: 3/8, in: end, body: 1 1/4}
`,
}
