import {describe, expect, it} from 'vitest'
import {printedOf} from '../../support/plan-of.ts'

const inch = 25.4
const build = `
title: Needle box
scale: {length: 24, lines: 12, dots: [5, 12]}
strings: [D3 .030w, A3 .020w, D4 .013]
neck: {length: 33}
head: {length: 6, ledge: 1/4}
box: {length: 10, width: 7, depth: 2, at: 15 1/2, holes: [{diameter: 1, along: 3, off: 2}]}
tuners: {at: [-2, -4, -3], off: [-1/2, -1/2, 1/2]}
anchors: {at: 26, spacing: 1/2}
screws: [{size: 6, length: 1, at: [17, 22], off: [-1, 1], into: neck}]
`
const layout = (text: string) => printedOf(text).layout ?? []
const at = (text: string, what: string) => layout(text).find((station) => station.what === what)

describe('the layout', () => {
  const stations = layout(build)

  it('has every station once, in order from the head end to the tail end', () => {
    expect(stations.map(({what}) => what).filter((what) => !what.startsWith('round-over'))).toEqual([
      'head end',
      'tuner A3',
      'tuner D4',
      'tuner D3',
      'head’s slope starts',
      'nut line',
      'line 1',
      'line 2',
      'line 3',
      'line 4',
      'line 5, dot',
      'line 6',
      'line 7',
      'line 8',
      'line 9',
      'line 10',
      'line 11',
      'line 12, dot',
      'box, head side',
      '2 screws',
      'sound hole, centre',
      '2 screws',
      'bridge line',
      'box, tail side',
      'string anchors',
      'tail end',
    ])
    const places = stations.map(({stationMm}) => stationMm)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  it('measures each from the nut, from the head end and from the tail end', () => {
    // The octave lies at half the scale length: twelve equal steps of the twelfth root of two.
    expect(at(build, 'line 12, dot')).toMatchObject({
      stationMm: expect.closeTo(12 * inch),
      fromHeadMm: expect.closeTo(18 * inch),
      fromTailMm: expect.closeTo(15 * inch),
      mark: '12 in',
      markErrorMm: expect.closeTo(0),
    })
    for (const {fromHeadMm = 0, fromTailMm = 0} of stations)
      expect(fromHeadMm + fromTailMm).toBeCloseTo(33 * inch)
  })

  it('counts what stands in one row across once, with each distance off the centre', () => {
    expect(stations.filter(({kind}) => kind === 'screw')).toMatchObject([
      {stationMm: expect.closeTo(17 * inch), offMm: [expect.closeTo(-inch), expect.closeTo(inch)]},
      {stationMm: expect.closeTo(22 * inch), offMm: [expect.closeTo(-inch), expect.closeTo(inch)]},
    ])
    expect(at(build, 'string anchors')?.offMm).toEqual([
      expect.closeTo(-inch / 2),
      0,
      expect.closeTo(inch / 2),
    ])
  })

  it('puts the dots of a fretted neck between the frets', () => {
    const fretted = build.replace('lines: 12', 'lines: 12, fretted: true')
    const dot = at(fretted, 'dot 12')
    const [before = 0, after = 0] = ['fret 11', 'fret 12'].map((what) => at(fretted, what)?.stationMm)
    expect(dot?.stationMm).toBeCloseTo((before + after) / 2)
  })

  it('is absent without a scale length, and has no end that is not known', () => {
    expect(printedOf('title: x\nbox: 10 x 7 x 2').layout).toBeUndefined()
  })
})
