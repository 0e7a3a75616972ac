import {describe, expect, test} from 'vitest'
import {planOf, printedOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'

const one = (string: string, more = '') =>
  planOf(`title: One\nscale: {length: 650 mm}\n${more}\nstrings:\n  - ${string}`).plan.strings![0]!

test('T = μ(2Lf)² of a two-string build in millimetres, to 1e-9', () => {
  const {plan} = planOf(`title: Two
units: mm
scale: 640
strings: [{note: A2, gauge: 0.8 mm w, mass: 2.9 g/m}, {note: E3, gauge: 0.43}]`)
  const [low, high] = plan.strings!
  const hz = 440 * 2 ** ((52 - 69) / 12)
  expect(low!.tensionN! / (0.0029 * (2 * 0.64 * 110) ** 2) - 1).toBeCloseTo(0, 9)
  expect(high!.tensionN! / (7850 * (Math.PI / 4) * 0.00043 ** 2 * (2 * 0.64 * hz) ** 2) - 1).toBeCloseTo(0, 9)
  expect(plan.tensionTotalN).toBeCloseTo(low!.tensionN! + high!.tensionN!, 9)
})

test('a course counts each of its strings', () => {
  const {plan} = planOf(
    'title: C\nscale: 24\nstrings: [{note: D3, gauge: .026w, course: 2}, {note: A3, gauge: .016}]',
  )
  const [pair, single] = plan.strings!
  expect(plan.tensionTotalN).toBeCloseTo(2 * pair!.tensionN! + single!.tensionN!, 9)
})

test('the reference pitch raises every string alike', () => {
  const low = one('{note: A3, gauge: .016}', 'reference-pitch: 432')
  expect(low.frequencyHz).toBe(216)
  expect(one('{note: A3, gauge: .016}').tensionN! / low.tensionN!).toBeCloseTo((440 / 432) ** 2, 12)
})

test('strings of one note are told apart', () => {
  const {plan} = planOf('title: N\nscale: 24\nstrings: [D4 .013, D4 .013, A3 .018, D4 .014]')
  expect(plan.strings!.map(({name}) => name)).toEqual(['D4', 'D4-2', 'A3', 'D4-3'])
})

describe('mass per length', () => {
  // Worked from the geometry: core 0.016 in (7850), wrap 0.012 in of phosphor bronze (8860): 5.75721 g/m.
  test('a wound string by its core and wrap', () => {
    const string = one('{note: E2, gauge: .040w, core: .016, wrap: phosphor bronze}')
    expect(string.massPerLengthKgM! * 1000).toBeCloseTo(5.75721, 5)
    expect(string).toMatchObject({massFrom: 'wound', breakKnown: true, coreAssumed: false})
  })

  test('the packet’s mass wins, then its pull at the scale and note it prints', () => {
    expect(
      one('{note: D4, gauge: .013, mass: 0.9 g/m, tension: {pull: 70 N, scale: 648 mm, note: E4}}'),
    ).toMatchObject({
      massPerLengthKgM: 0.0009,
      massFrom: 'mass',
    })
    const packet = one('{note: E4, gauge: .013, tension: {pull: 70 N, scale: 650 mm, note: E4}}')
    expect(packet.massFrom).toBe('tension')
    expect(packet.tensionN).toBeCloseTo(70, 9)
  })

  // Common practice: a core is about 0.60 of the gauge at .020, 0.50 at .030, 0.42 at .042; pull hardly depends on it.
  test('an assumed core gives no verdict on breaking, and says how little the pull hangs on it', () => {
    const string = one('{note: D3, gauge: .030w}')
    expect(string.coreMm).toBeCloseTo(0.381, 9)
    expect(string).toMatchObject({breakKnown: false, coreAssumed: true})
    expect(string.breakFraction).toBeUndefined()
    const [least, most] = string.coreDoubt!.tensionN as [number, number]
    expect(most / least).toBeLessThan(1.03)
    const [low, high] = string.coreDoubt!.stressMpa as [number, number]
    expect(high / low).toBeGreaterThan(1.3)
    expect(one('{note: D3, gauge: .020w}').coreMm! / 0.508).toBeCloseTo(0.6, 9)
    expect(one('{note: D3, gauge: .042w}').coreMm! / 1.0668).toBeCloseTo(0.42, 9)
  })

  test('a thick plain string of unknown material has no pull', () => {
    expect(one('{note: D3, gauge: .030}').tensionN).toBeUndefined()
    expect(one('{note: G3, gauge: 1 mm, material: nylon}').tensionN).toBeGreaterThan(40)
  })
})

// σ = ρ(2Lf)², whatever the gauge: 1441 MPa of steel at E4 on 650 mm, 54 % of the least strength of 0.010 in by ASTM A228.
test('stress does not depend on the gauge, strength does', () => {
  const thin = one('{note: E4, gauge: .010}')
  expect(thin.stressMpa).toBeCloseTo(1441, 0)
  expect(thin.breakFraction).toBeCloseTo(0.54, 2)
  expect(one('{note: E4, gauge: .013}').stressMpa).toBeCloseTo(thin.stressMpa!, 6)
})

// Common practice: steel is slack under 45 N (55 under a slide), easy to 75, firm to 120; nylon 30, 50, 75.
test.each([
  ['mass: 0.4 g/m', 'fingers', 'steel'],
  ['mass: 0.4 g/m', 'slide', 'steel'],
  ['mass: 0.4 g/m', 'fingers', 'nylon'],
])('pull in a word: %s, %s, %s', (mass, play, material) => {
  const limits = material === 'nylon' ? [30, 50, 75] : [play === 'slide' ? 55 : 45, 75, 120]
  for (const [i, limit] of limits.entries()) {
    const words = ['slack', 'easy', 'firm', 'stiff']
    for (const side of [-1e-6, 1e-6]) {
      const grams = ((limit * (1 + side)) / (2 * 0.65 * 329.6275569128699) ** 2) * 1000
      const string = one(
        `{note: E4, gauge: .011, material: ${material}, ${mass.replace('0.4', grams.toFixed(9))}}`,
        `play: ${play}`,
      )
      expect(string.pull).toBe(words[side < 0 ? i : i + 1])
    }
  }
})

test('alternatives are sound, nearest to the pull to aim for first, and never the gauge that is there', () => {
  const plan = printedOf('title: A\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]')
  for (const string of plan.strings!) {
    expect(string.alternatives!.length).toBeGreaterThan(0)
    for (const {gauge, tensionN} of string.alternatives!) {
      expect(gauge).not.toBe(string.gauge)
      const other = one(`{note: ${string.note}, gauge: ${gauge}}`).tensionN! * (615.95 / 650) ** 2
      expect(other).toBeCloseTo(tensionN, 6)
      expect(tensionN).toBeGreaterThan(55)
      expect(tensionN).toBeLessThanOrEqual(120)
    }
  }
})

describe('alternatives', () => {
  const alternativesOf = (strings: string, more = 'scale: 24 1/4') =>
    printedOf(`title: A\n${more}\nstrings: [${strings}]`).strings!.map(({alternatives = []}) =>
      alternatives.map(({gauge}) => gauge),
    )

  test('come in the build’s units, and read back as what was offered', () => {
    const metric = printedOf(
      'title: A\nunits: mm\nscale: 616\nstrings: [D3 0.76 mm w, A3 0.51 mm w, D4 0.33 mm]',
    )
    for (const {note, alternatives = [], gaugeMm} of metric.strings!) {
      expect(alternatives.length).toBeGreaterThan(0)
      for (const {gauge, tensionN} of alternatives) {
        expect(gauge).toMatch(/^\d\.\d\d mm( w)?$/)
        const read = planOf(`title: A\nunits: mm\nscale: 616\nstrings: [${note} ${gauge}]`).plan.strings![0]!
        expect(read.tensionN).toBeCloseTo(tensionN, 6)
        // .013 in are 0.3302 mm: no shop tells them from 0.33 mm.
        expect(Math.abs(read.gaugeMm! - gaugeMm!)).toBeGreaterThan(0.006)
      }
    }
  })

  test('of nylon are nylon, wound ones wound with silver-plated copper', () => {
    const nylon = 'scale: 650 mm\nplay: fingers'
    const of = (string: string) => alternativesOf(string, nylon)[0]!
    expect(of('{note: D3, gauge: .028w, material: nylon}')).toContain('.029w')
    const plain = printedOf(`title: A\n${nylon}\nstrings: [{note: E4, gauge: .028, material: nylon}]`)
    for (const {gauge} of plain.strings![0]!.alternatives!) {
      const text = `title: A\n${nylon}\nstrings: [{note: E4, gauge: ${gauge}, material: nylon}]`
      expect(planOf(text).plan.strings![0]).toMatchObject({
        material: 'nylon',
        pull: expect.stringMatching(/easy|firm/),
      })
    }
  })

  test('of a string that its packet weighs are held against its like', () => {
    // By hand: .013 in plain steel is 7850·π/4·0.3302² = 0.6722 g/m; a packet of 0.62 has it 7.8 % lighter, and so its like.
    const [weighed] = printedOf('title: A\nscale: 24 1/4\nstrings: [{note: D4, gauge: .013, mass: 0.62 g/m}]')
      .strings!
    const [by] = weighed!.alternatives!
    const plain = planOf(`title: A\nscale: 24 1/4\nstrings: [D4 ${by!.gauge}]`).plan.strings![0]!
    expect(by!.tensionN / plain.tensionN!).toBeCloseTo(0.62 / 0.6722, 3)
    for (const {gauge} of weighed!.alternatives!) expect(gauge).not.toMatch(/w$/)
    // Nothing is known of a packet without a gauge, and nothing compares with one that is far off.
    expect(alternativesOf('{note: D4, mass: 0.62 g/m}')).toEqual([[]])
    expect(alternativesOf('{note: D4, gauge: .013, mass: 1.3 g/m}')).toEqual([[]])
  })
})

// Anderson and Beausoleil, J. Acoust. Soc. Am. 156, 683 (2024): diameter (mm) and mass (g/m) of three wound nylon strings.
test.each([
  ['D3', 0.736, 1.92],
  ['A2', 0.89, 3.289],
  ['E2', 1.092, 5.47],
])('a wound nylon %s of %d mm weighs what is published, within 5 %%', (note, mm, grams) => {
  const text = `title: A\nunits: mm\nscale: 650\nstrings: [{note: ${note}, gauge: ${mm} mm w, material: nylon}]`
  const {massPerLengthKgM, wrap, breakFraction, strengthMpa} = planOf(text).plan.strings![0]!
  expect(wrap).toBe('silver-plated copper')
  expect(Math.abs(massPerLengthKgM! / (grams / 1000) - 1)).toBeLessThan(0.05)
  expect([breakFraction, strengthMpa]).toEqual([undefined, undefined])
})

test('a packet that is far from its gauge is told with both figures, and what is proposed is silent', () => {
  const found = (string: string) =>
    planOf(`title: A\nscale: 24 1/4\nstrings: [${string}]`).problems.filter(
      ({rule}) => rule === 'packet-unlike-gauge',
    )
  const [problem] = found('{note: D4, gauge: .013, mass: 1.3 g/m}')
  expect(problem).toMatchObject({severity: 'remark', expected: ['0.67 g/m']})
  expect(problem!.message).toContain('weighs 1.3 g/m by its packet, and 0.67 g/m by its gauge')
  expect(found('{note: D4, gauge: .013, mass: 0.67 g/m}')).toEqual([])
  const [pull] = found('{note: D4, gauge: .013, tension: {pull: 200 N, scale: 25 1/2, note: D4}}')
  expect(
    found(`{note: D4, gauge: .013, tension: {pull: ${pull!.expected![0]}, scale: 25 1/2, note: D4}}`),
  ).toEqual([])
})

describe('a string tuned too high', () => {
  const problemsOf = (strings: string) => planOf(`title: A\nscale: 28\nstrings: [${strings}]`)
  const breaking = (strings: string) =>
    problemsOf(strings).problems.find(({rule}) => rule === 'string-near-breaking')!

  test('is not sent to a note that spoils the tuning', () => {
    // 28 in: F4 is 0.75 of the strength of .011, and E4 alone is clear of it; D3 A3 E4 are fifths.
    const {message, expected} = breaking('D3 .026w, A3 .017, F4 .011')
    expect(expected).toEqual(['E4'])
    expect(message).toContain('all strings keep their tuning')
    // A major chord with its third lowered alone is none.
    const chord = breaking('C4 .014, E4 .012, G4 .010')
    expect(chord.expected).toEqual(['E4'])
    expect(chord.message).toContain('semitones lower, all strings keep their tuning')
  })

  test('is sent nowhere where no note does, but the whole set is', () => {
    const {mend} = problemsOf('D3 .026w, D4 .013, G#4 .008').plan.strings![2]!
    expect(mend!.lowerBy).toBeGreaterThan(0)
    if (mend!.note) expect(['D3', 'D4']).toContain(mend!.note)
  })
})

test('a string of which only the note is known is told what to buy', () => {
  const [string] = printedOf('title: One\nscale: {length: 650 mm}\nstrings: [{note: D3}]').strings!
  expect(string!.tensionN).toBeUndefined()
  expect(string!.alternatives![0]!.gauge).toMatch(/^\.0\d\dw$/)
})

test('tunings that the gauges also carry are none that pull slack or stiff', () => {
  const {plan} = planOf('title: T\nscale: 24 1/4\nstrings: [D3 .030w, A3 .020w, D4 .013]')
  expect(plan.tunings!.map(({notes}) => notes.join(' '))).toContain('D3 G3 D4')
  for (const {notes, tensionsN, pulls} of plan.tunings!) {
    expect(notes).not.toEqual(['D3', 'A3', 'D4'])
    for (const pull of pulls) expect(['easy', 'firm']).toContain(pull)
    expect(Math.max(...tensionsN)).toBeLessThanOrEqual(120)
  }
})

test('how long a string has to be', () => {
  const {plan} = planOf(`title: L
scale: 24 1/4
tuners: {at: [-2, -4 1/2, -3 1/4], off: [-7/16, -7/16, 7/16]}
anchors: {at: 26 3/4, spacing: 1/2}
strings: [D3 .030w, A3 .020w, D4 .013]`)
  expect(plan.strings!.map(({lengthNeededMm}) => lengthNeededMm)).toEqual([
    28.75 * 25.4 + 75,
    31.25 * 25.4 + 75,
    30 * 25.4 + 75,
  ])
})

test('no plausible or implausible string gives a number that is none', () => {
  const note = fc
    .tuple(fc.constantFrom('C', 'F#', 'Bb', 'A'), fc.integer({min: 0, max: 8}))
    .map(([a, b]) => a + b)
  const gauge = fc
    .tuple(fc.integer({min: 4, max: 118}), fc.boolean())
    .map(([a, w]) => `.${String(a).padStart(3, '0')}${w ? 'w' : ''}`)
  const string = fc.record({
    note,
    gauge,
    core: fc.option(fc.integer({min: 4, max: 118})),
    fretted: fc.boolean(),
  })
  fc.assert(
    fc.property(
      fc.array(string, {minLength: 1, maxLength: 4}),
      fc.integer({min: 100, max: 2000}),
      fc.boolean(),
      (strings, mm, fretted) => {
        const {plan} = planOf(`title: F
scale: {length: ${mm} mm, fretted: ${fretted}}
strings:
${strings.map(({note, gauge, core}) => `  - {note: ${note}, gauge: ${gauge}${core ? `, core: .${String(core).padStart(3, '0')}` : ''}}`).join('\n')}`)
        const text = JSON.stringify(plan)
        expect(text).not.toMatch(/null/)
        for (const {tensionN = 1, stressMpa = 1, lengthNeededMm = 1} of plan.strings!)
          expect(Math.min(tensionN, stressMpa, lengthNeededMm)).toBeGreaterThan(0)
      },
    ),
    {numRuns: 100},
  )
})

describe('turns of the button from taut to pitch', () => {
  const strung = (tuners: string, string = '{note: A3, gauge: .016}') =>
    one(
      string,
      `status: strung up\nneck: {width: 1 1/2}\nanchors: {at: 700 mm, spacing: 1/2}\ntuners: ${tuners}`,
    ).buttonTurns

  // By hand: 2·0.65 m·220 Hz and 7850 kg/m³ of 0.4064 mm pull 83.3 N; over 800 mm of 203.4 GPa that is 2.525 mm,
  // of the 21.23 mm that a turn of a 6.35 mm post winds on at the string's middle; times 18.
  test('are the string’s stretch by what a turn of the post winds up, times the gear', () => {
    const tensionN = 7850 * (Math.PI / 4) * 0.0004064 ** 2 * (2 * 0.65 * 220) ** 2
    const stretchMm = (tensionN * 800) / (203_400 * (Math.PI / 4) * 0.4064 ** 2)
    const turns = (18 * stretchMm) / (Math.PI * (6.35 + 0.4064))
    expect(turns).toBeCloseTo(2.14, 2)
    expect(strung('{post-hole: 1/4, ratio: 18, at: [-100 mm], off: [0]}')).toBeCloseTo(turns, 9)
  })

  test('are not known without the gear, the post or the string’s stiffness', () => {
    expect(strung('{post-hole: 1/4, at: [-100 mm], off: [0]}')).toBeUndefined()
    expect(strung('{ratio: 18, at: [-100 mm], off: [0]}')).toBeUndefined()
    expect(strung('{post-hole: 1/4, ratio: 18}')).toBeUndefined()
    expect(
      strung('{post-hole: 1/4, ratio: 18, at: [-100 mm], off: [0]}', '{note: A3, mass: 1 g/m}'),
    ).toBeUndefined()
  })
})
