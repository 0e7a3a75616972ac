import {expect, test} from 'vitest'
import {planBridge} from '../../../plugins/plan/action/bridge.ts'
import {planAnchors} from '../../../plugins/plan/box/anchors.ts'
import {planScrewPlaces} from '../../../plugins/plan/fasteners/screw-places.ts'
import {planBoxPlace} from '../../../plugins/plan/kit/box-place.ts'
import {planTuners} from '../../../plugins/plan/strings/tuners.ts'
import fc from '../../support/properties.ts'

const mm = (value: number) => ({
  mm: value,
  text: String(value),
  place: {line: 1, column: 1, endLine: 1, endColumn: 1},
})
const inch = (value: number) => mm(value * 25.4)
const words = <T extends string>(value: T) => ({...mm(0), value, text: value})

const box = {length: inch(10.125)}
const scale = {length: inch(24.25)}

test('the box lies where box.at puts it', () => {
  const placed = planBoxPlace({scale, box: {...box, at: inch(16)}})
  expect(placed!.atMm).toBeCloseTo(16 * 25.4, 9)
  expect(placed!.tailMm).toBeCloseTo(26.125 * 25.4, 9)
  expect(placed!.bridgeFraction).toBeCloseTo(8.25 / 10.125, 9)
})

test('bridge.from-tail places it as well, and the two ways agree', () => {
  const values = {scale, box: {...box, at: inch(16)}, bridge: {'from-tail': inch(1.875)}}
  expect(planBoxPlace(values)!.atByTailMm).toBeCloseTo(16 * 25.4, 9)
  expect(planBoxPlace({...values, box})!.atMm).toBeCloseTo(16 * 25.4, 9)
})

test('nothing lies anywhere without a place or without a scale length', () => {
  expect(planBoxPlace({scale, box})).toBeUndefined()
  expect(planBoxPlace({box, bridge: {'from-tail': inch(2)}})).toBeUndefined()
})

test('the bridge line lies at the scale length, whatever the box', () => {
  fc.assert(
    fc.property(
      fc.double({min: 100, max: 2000, noNaN: true}),
      fc.double({min: -200, max: 2500, noNaN: true}),
      (scaleMm, atMm) => {
        const values = {scale: {length: mm(scaleMm)}, box: {...box, at: mm(atMm)}}
        const bridge = planBridge(values, planBoxPlace(values), undefined)
        expect(bridge!.stationMm).toBe(scaleMm)
        expect(bridge!.alongMm).toBeCloseTo(scaleMm - atMm, 9)
      },
    ),
  )
})

test('a place along the box is measured from its head-side edge', () => {
  const values = {scale, box: {...box, at: inch(16)}, screws: [{along: [inch(1.25)], off: [inch(0)]}]}
  expect(planScrewPlaces(values, planBoxPlace(values))![0]!.stationMm).toBeCloseTo(17.25 * 25.4, 9)
  expect(planScrewPlaces({screws: [{along: [inch(1)]}]}, undefined)).toBeUndefined()
})

test('every at of a row of screws goes with every off, in the order of the file', () => {
  const screws = planScrewPlaces(
    {screws: [{at: [mm(10), mm(20)], off: [mm(-5), mm(5)]}, {at: [mm(30)]}]},
    undefined,
  )
  expect(screws!.map(({stationMm, offMm}) => [stationMm, offMm])).toEqual([
    [10, -5],
    [10, 5],
    [20, -5],
    [20, 5],
    [30, 0],
  ])
  expect(screws![2]).toMatchObject({of: 'screws.1', stationPath: 'screws.1.at.2', offPath: 'screws.1.off.1'})
})

test('anchors stand in a row, even about the centre line', () => {
  const strings = [{}, {}, {}]
  const anchors = planAnchors(
    {strings, anchors: {kind: words('ferrule'), at: mm(680), spacing: mm(12)}},
    undefined,
  )
  expect(anchors!.map(({offMm}) => offMm)).toEqual([-12, 0, 12])
  expect(planAnchors({strings, anchors: {at: mm(680)}}, undefined)).toBeUndefined()
  expect(planAnchors({strings: [{}], anchors: {at: mm(680)}}, undefined)![0]!.offMm).toBe(0)
})

test('each tuner keeps its own place and its string’s order', () => {
  const tuners = planTuners(
    {tuners: {at: [mm(-50), mm(-114), mm(-82)], off: [mm(-11), mm(-11), mm(11)]}},
    undefined,
  )
  expect(tuners!.map(({stationMm, offMm}) => [stationMm, offMm])).toEqual([
    [-50, -11],
    [-114, -11],
    [-82, 11],
  ])
  expect(planTuners({tuners: {at: [mm(-50), mm(-60)]}}, undefined)).toBeUndefined()
})
