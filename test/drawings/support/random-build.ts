import fc from '../../support/properties.ts'

const mm = (min: number, max: number) => fc.integer({min, max})

const notes = ['D3', 'G3', 'B3', 'D4', 'G4', 'B4']
const gauges = ['.030w', '.020w', '.017', '.013', '.011', '.010']

/** Front matter of a plausible build: scale lengths from 300 to 900 mm, one to six strings, any way a neck joins. */
export const randomBuild: fc.Arbitrary<string> = fc
  .record({
    units: fc.constantFrom('in', 'mm'),
    handed: fc.constantFrom('right', 'left'),
    scaleMm: mm(300, 900),
    strings: mm(1, 6),
    fretted: fc.boolean(),
    diatonic: fc.boolean(),
    joins: fc.constantFrom('on top', 'through', 'end'),
    joint: fc.constantFrom('scarf', 'solid', 'straight'),
    boxLength: mm(120, 420),
    boxWidth: mm(90, 320),
    boxDepth: mm(35, 110),
    bridgePart: mm(62, 86),
    neckWidth: mm(28, 62),
    widens: mm(0, 12),
    thickness: mm(16, 32),
    layers: mm(0, 4),
    strips: mm(1, 5),
    past: mm(-10, 40),
    angle: mm(8, 17),
    board: fc.option(mm(3, 8), {nil: undefined}),
    roundOver: fc.option(mm(3, 12), {nil: undefined}),
    holes: fc.array(fc.record({along: mm(15, 85), off: mm(-40, 40), diameter: mm(6, 45)}), {maxLength: 6}),
    blocks: fc.array(
      fc.record({along: mm(10, 90), off: mm(-20, 20), length: mm(15, 50), width: mm(30, 90)}),
      {
        maxLength: 4,
      },
    ),
    screws: fc.array(
      fc.record({along: mm(5, 95), off: fc.array(mm(-25, 25), {minLength: 1, maxLength: 3})}),
      {
        maxLength: 3,
      },
    ),
    tuners: fc.boolean(),
    anchors: fc.boolean(),
    nut: fc.constantFrom('rod', 'bolt', 'flat', 'zero-fret'),
    bridgeOn: fc.constantFrom('neck', 'top'),
  })
  .map((of) => {
    const unit = of.units === 'mm' ? 1 : 25.4
    const len = (value: number) => `${Number((value / unit).toFixed(3))}`
    const {boxLength, strings, thickness} = of
    const at = Math.max(30, of.scaleMm - (boxLength * of.bridgePart) / 100)
    const along = (part: number) => len((boxLength * part) / 100)
    const off = (part: number) => len((of.boxWidth * part) / 100)
    const headMm = 76 + 32 * Math.ceil(strings / 2)
    const counts = Array.from({length: strings}, (_, i) => i)
    const lines = [
      'title: A build of chance',
      `units: ${of.units}`,
      `handed: ${of.handed}`,
      'started: 2026-02-03',
      `scale: {length: ${len(of.scaleMm)}, fretted: ${of.fretted}, pattern: ${of.diatonic ? 'diatonic' : 'chromatic'}, dots: [3, 5, 7, 9, 12]}`,
      `nut: {kind: ${of.nut}, diameter: ${len(5)}, groove: ${len(1.5)}}`,
      `bridge: {kind: saddle, on: ${of.bridgeOn}, length: ${len(of.neckWidth)}, foot: ${len(8)}}`,
      `strings: [${counts.map((i) => `${notes[i]} ${gauges[i]}`).join(', ')}]`,
      `spacing: {nut: ${len(of.neckWidth * 0.7)}, bridge: ${len(of.neckWidth * 0.85)}}`,
      'neck:',
      `  width: {nut: ${len(of.neckWidth)}, tail: ${len(of.neckWidth + of.widens)}}`,
      `  thickness: ${len(thickness)}`,
      `  joins: ${of.joins}`,
      ...(of.joins === 'end' ? [] : [`  length: ${len(headMm + at + boxLength + of.past)}`]),
      ...(of.layers > 0
        ? [
            `  laminations: [${Array.from({length: of.layers}, (_, i) => `{wood: ${i % 2 ? 'walnut' : 'hard maple'}, thickness: ${len(thickness / of.layers)}${i === of.layers - 1 ? `, strips: ${of.strips}` : ''}}`).join(', ')}]`,
          ]
        : ['  wood: cherry']),
      ...(of.roundOver ? [`  round-over: {radius: ${len(of.roundOver)}, from: scarf, to: box}`] : []),
      `head: {length: ${len(headMm)}, joint: ${of.joint}, angle: ${of.angle}, thickness: ${len(14)}}`,
      ...(of.board
        ? [`fingerboard: {wood: walnut, thickness: ${len(of.board)}, to: ${len(at + boxLength * 0.3)}}`]
        : []),
      'box:',
      `  length: ${len(boxLength)}`,
      `  width: ${len(of.boxWidth)}`,
      `  depth: ${len(of.boxDepth)}`,
      `  at: ${len(at)}`,
      `  holes: [${of.holes.map((hole) => `{diameter: ${len(hole.diameter)}, along: ${along(hole.along)}, off: ${off(hole.off)}}`).join(', ')}]`,
      `  blocks: [${of.blocks.map((block) => `{wood: pine, along: ${along(block.along)}, off: ${off(block.off)}, length: ${len(block.length)}, width: ${len(block.width)}, thickness: ${len(15)}, glued: under the top}`).join(', ')}]`,
      `screws: [${of.screws.map((row) => `{size: 8, length: ${len(25)}, along: [${along(row.along)}], off: [${row.off.map(len).join(', ')}], through: [top], into: neck, head: round}`).join(', ')}]`,
      ...(of.tuners
        ? [
            `tuners: {side: both, post-hole: ${len(8)}, button: ${len(18)}, string-height: ${len(7)}, at: [${counts.map((i) => len(-30 - 16 * i)).join(', ')}], off: [${counts.map((i) => len(i % 2 ? 10 : -10)).join(', ')}]}`,
          ]
        : []),
      ...(of.anchors
        ? [
            `anchors: {kind: ferrule, along: ${along(96)}, spacing: ${len(7)}, body: ${len(6)}, string-hole: ${len(2)}, height: 0}`,
          ]
        : []),
    ]
    return lines.join('\n')
  })
