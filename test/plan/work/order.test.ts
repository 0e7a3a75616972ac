import {describe, expect, test} from 'vitest'
import {hazards} from '../../../plugins/tables/hazards.ts'
import {workKinds} from '../../../plugins/tables/work-kinds.ts'
import {printedPlan} from '../../../plugins/words/printed-plan.ts'
import {changed} from '../../support/changed.ts'
import {planOf, printedOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {randomWork, workBases} from '../../support/random-work.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

// The laws of the order; what has to come before what: common practice, no source.

test('whatever is built, each step comes after all that it stands on', () => {
  fc.assert(
    fc.property(randomWork, (text) => {
      const {work = [], cautions = []} = planOf(text).plan
      const at = new Map(work.map(({id}, i) => [id, i]))
      expect(at.size).toBe(work.length)
      const known = new Set(cautions.map(({id}) => id))
      work.forEach((step, i) => {
        for (const id of step.after) expect(at.get(id)).toBeLessThan(i)
        for (const id of step.cautions) {
          expect(known).toContain(id)
          expect(hazards[id as keyof typeof hazards].steps).toContain(step.kind)
        }
        for (const id of step.meanwhile ?? []) {
          expect(at.get(id)).toBeGreaterThan(i)
          expect(work[at.get(id)!]!.after).not.toContain(step.id)
        }
        expect(Object.keys(workKinds)).toContain(step.kind)
        expect(step.id === step.kind || step.id.startsWith(`${step.kind}-`)).toBe(true)
        expect(JSON.stringify(step)).not.toMatch(/undefined|NaN|Infinity|null/)
        if (step.waitH !== undefined) expect(step.waitH).toBeGreaterThan(0)
      })
      const order = ['stain', 'oil', 'shellac', 'wax']
      const places = order.flatMap((kind) => {
        const found = work.findIndex(({id}) => id === (kind === 'stain' ? 'stain' : `finish-${kind}`))
        return found < 0 ? [] : [found]
      })
      expect(places).toEqual([...places].sort((a, b) => a - b))
      const last = work.findLastIndex(({kind}) => kind === 'finish' || kind === 'stain')
      const joined = work.findIndex(({kind}) => kind === 'fasten')
      if (joined >= 0) expect(joined).toBeGreaterThan(last)
    }),
    {numRuns: 150},
  )
})

test('every layout place along the neck belongs to a step', () => {
  for (const text of workBases) {
    const {work = [], layout = []} = planOf(text).plan
    const listed = work.flatMap(({stations}) => stations.map(({stationMm}) => stationMm))
    for (const {what, stationMm} of layout)
      expect([what, listed.some((mm) => Math.abs(mm - stationMm) < 1e-9)]).toEqual([what, true])
  }
})

describe('on a bench with one drill press', () => {
  const work = planOf(soundBuilds['on top']).plan.work ?? []
  test('all drilling is done in one go', () => {
    const tools = work.map(({tool}) => tool)
    const first = tools.indexOf('drill press')
    const count = tools.filter((tool) => tool === 'drill press').length
    expect(count).toBeGreaterThan(2)
    expect(tools.slice(first, first + count).every((tool) => tool === 'drill press')).toBe(true)
  })

  test('every hole of the plan is drilled in one step', () => {
    const {holes = []} = planOf(soundBuilds['on top']).plan
    expect(work.flatMap(({stations}) => stations.filter(({bit}) => bit)).length).toBe(holes.length)
  })
})

describe('settings come from the plan', () => {
  const {plan} = planOf(
    changed(soundBuilds['on top'], {'neck.round-over': '{radius: 3/8, from: nut, to: box}'}),
  )
  const step = (id: string) => printedPlan(plan).work!.find((one) => one.id === id)!

  test('the scarf’s angle, from the stick and from square', () => {
    // 14° of the stick is 76° off square, by arithmetic.
    expect(step('saw-scarf').setting).toMatch(/^14° to the stick \(76° from square, 1 in 4\), blade tilt 0°/)
  })

  test('the router starts and stops short of the ends by what its cutter reaches past its centre', () => {
    // √(5/8² − 1/4²) = 0.5728 in for a 3/8 in cutter on a 1/2 in bearing, by Pythagoras: 9/16 in to the nearest 1/32.
    expect(step('round-over').setting).toBe(
      'radius 3/8 in, bit’s centre from 9/16 in to 15 7/16 in (it cuts 9/16 in past)',
    )
  })

  test('the bits are those of the holes, once each', () => {
    expect(step('drill-head').setting).toBe('1/4 in brad-point bit')
  })

  test('the lines are checked from end to end, in the words of the file', () => {
    expect(step('mark-lines').check).toContain('Nut line to bridge line reads 24 1/4 in;')
  })
})

describe('waits', () => {
  const {work = [], workTime} = printedOf(
    changed(soundBuilds['on top'], {finish: '[{kind: shellac, coats: 3}, {kind: oil, coats: 2}]'}),
  )
  const waitOf = (id: string) => work.find((one) => one.id === id)

  test('count the coats, and say where they come from', () => {
    // Oil a day between coats and three days before shellac, shellac two hours and a day: common practice, no source.
    expect(waitOf('finish-oil')).toMatchObject({waitH: 24 + 72, waitFrom: expect.stringContaining('label')})
    expect(waitOf('finish-shellac')).toMatchObject({
      waitH: 2 * 2 + 24,
      after: expect.arrayContaining(['finish-oil']),
    })
  })

  test('add up along the longest chain only', () => {
    // Head, then oil, then shellac; the blocks dry beside the head.
    expect(workTime).toMatchObject({waitH: 24 + 96 + 28, waitsH: 24 + 24 + 96 + 28})
  })
})
