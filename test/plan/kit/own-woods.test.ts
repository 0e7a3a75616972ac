import {expect, test} from 'vitest'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'

const build = `
title: Bog
scale: 24
box: 10 x 7 x 2
neck: {width: 1 1/2, thickness: 3/4, wood: bog oak, length: 33}
head: {length: 5, thickness: 9/16}
stock: [{id: B1, wood: bog oak, length: 40, width: 4, thickness: 1, density: 800 kg/m3, stiffness: 12 GPa}]
`

test('a wood that is described under stock is known where it is used', () => {
  const {plan} = planOf(build)
  expect(plan.unknownWoods).toBeUndefined()
  expect(plan.neck!.massKg).toBeGreaterThan(0)
  expect(plan.assumptions).toEqual(
    expect.arrayContaining([
      expect.objectContaining({path: 'neck.density', value: '800 kg/m3'}),
      expect.objectContaining({path: 'neck.stiffness', value: '12 GPa'}),
    ]),
  )
  const own = planOf(changed(build, {'neck.density': '800 kg/m3', 'neck.stiffness': '12 GPa'})).plan
  expect(plan.neck!.massKg).toBe(own.neck!.massKg)
})

test('what a part says of its own wood wins, and a piece of another wood says nothing of it', () => {
  const light = planOf(changed(build, {'neck.density': '400 kg/m3'})).plan
  expect(light.neck!.massKg! / planOf(build).plan.neck!.massKg!).toBeCloseTo(0.5, 9)
  expect(planOf(changed(build, {'stock.1.wood': 'bog yew'})).plan.unknownWoods).toEqual([
    {path: 'neck.wood', wood: 'bog oak', nearest: undefined},
  ])
})

test('a head’s plate is known by its density alone, since it only weighs', () => {
  const plated = (more: string) =>
    planOf(changed(build, {'head.plate': `{wood: bog yew, thickness: 1/8${more}}`})).plan
  expect(plated('').unknownWoods).toMatchObject([{path: 'head.plate.wood'}])
  expect(plated('').neck!.massKg).toBeUndefined()
  expect(plated(', density: 600 kg/m3').unknownWoods).toBeUndefined()
  expect(plated(', density: 600 kg/m3').neck!.massKg).toBeLessThan(planOf(build).plan.neck!.massKg!)
})
