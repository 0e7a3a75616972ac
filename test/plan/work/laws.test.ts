import {expect, test} from 'vitest'
import {hazards} from '../../../plugins/tables/hazards.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {randomWork} from '../../support/random-work.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

// What holds of the work on any build: nothing is left over, and nothing comes before what it needs. Common practice,
// no source, where no other is named.

type Plan = ReturnType<typeof planOf>['plan']
type Work = NonNullable<Plan['work']>

const plans = fc.sample(randomWork, 80).map((text) => ({text, ...planOf(text)}))

/** Hold something of the work on random builds. */
function law(name: string, holds: (plan: Plan, work: Work) => void): void {
  test(name, () => {
    for (const {text, plan} of plans) {
      try {
        holds(plan, plan.work ?? [])
      } catch (fault) {
        throw new Error(`On this build:\n${text}`, {cause: fault})
      }
    }
  })
}

const placesOf = (work: Work) => new Map(work.map(({id}, at) => [id, at]))

law('every part of the cut list comes to its place in one step', ({cuts}, work) => {
  const placed = work.flatMap(({parts = []}) => parts)
  expect(placed.toSorted()).toEqual((cuts?.parts ?? []).map(({id}) => id).toSorted())
})

law('every hole is drilled in one step', ({holes = []}, work) => {
  const key = (one: {
    face?: string | undefined
    stationMm: number
    offMm?: number | undefined
    depthMm?: number | undefined
  }) => [one.face, one.stationMm, one.offMm, one.depthMm].join(' ')
  const drilled = work.flatMap(({stations}) => stations.filter(({bit}) => bit).map(key))
  expect(drilled.toSorted()).toEqual(holes.map(key).toSorted())
})

law('every screw is driven, or else neck and box are glued', ({fasteners = []}, work) => {
  const ofTop = fasteners.filter(({holdsTop}) => holdsTop).length
  const others = fasteners.length - ofTop
  for (const {facts} of work) {
    if (facts.of === 'fasten-top' && ofTop > 0) expect(facts.setting?.screws.count).toBe(ofTop)
    if (facts.of !== 'fasten') continue
    expect(facts.by).toBe(fasteners.some(({joinsNeck}) => joinsNeck) ? 'screws' : 'glue')
    if (others > 0) expect(facts.setting?.screws?.count).toBe(others)
  }
})

law('every coat goes on in one step', (_, work) => {
  for (const {facts, waitH} of work)
    if (facts.of === 'finish') {
      expect(facts.coats).toBeGreaterThanOrEqual(1)
      expect(waitH).toBeGreaterThan(0)
    }
})

law('faces are planed before they are glued', (_, work) => {
  const at = placesOf(work)
  for (const {id, kind} of work) {
    if (kind !== 'glue-up' && kind !== 'glue-head') continue
    const planed = id === 'glue-up' ? 'plane-faces' : 'plane'
    expect([id, at.get(planed)! < at.get(id)!]).toEqual([id, true])
  }
})

law('short parts are trimmed before they are fitted, and never ripped by themselves', ({cuts}, work) => {
  const at = placesOf(work)
  const small = new Set((cuts?.parts ?? []).flatMap(({id, isSmall}) => (isSmall ? [id] : [])))
  for (const {id, parts = [], facts} of work) {
    if (facts.of === 'rip')
      for (const {lengthMm} of facts.setting?.sawn ?? []) expect(lengthMm).toBeGreaterThanOrEqual(12 * 25.4)
    if (parts.some((one) => small.has(one)) && id !== 'plane-sides')
      expect([id, at.get('trim')! < at.get(id)!]).toEqual([id, true])
  }
})

/** What takes the lines off the face that places are measured on. */
const takesLines = ['plane', 'glue-up', 'glue-head', 'glue-up-face', 'glue-up-board', 'sand']
const strikes = ['mark-lines-stick', 'mark-lines-face', 'mark-lines-board', 'mark-lines']

law('nothing is measured from a line that is not there, or no longer', (_, work) => {
  let isStruck = false
  const isSlotted =
    work.findIndex(({id}) => id === 'slot-frets') < work.findIndex(({id}) => id === 'glue-up-board')
  for (const {id, facts, stations} of work) {
    if (id === 'glue-up-board' && facts.of === 'glue-up-board') {
      // What is glued on is laid to the line that it then hides.
      expect(isStruck).toBe(true)
    }
    const isOnNeck = stations.some(({face}) => face === undefined || /neck|head|playing/.test(face))
    const isBox = ['fit-blocks', 'drill-top', 'drill-box'].includes(id)
    if (strikes.includes(id)) isStruck = true
    else if (isOnNeck && !isBox) expect([id, isStruck]).toEqual([id, true])
    if (takesLines.includes(id)) isStruck = false
    // A fingerboard that was slotted first brings its lines with it.
    if (id === 'glue-up-board' && isSlotted) isStruck = true
  }
})

law('the nut’s groove is cut before any finish, and once its rod is there', (_, work) => {
  const at = placesOf(work)
  const groove = at.get('groove-nut')
  if (groove === undefined) return
  expect(at.get('cut-rod-nut')).toBeLessThan(groove)
  expect(groove).toBeLessThan(at.get('sand')!)
})

law('what is glued after the finish is kept bare', (_, work) => {
  const finishes = work.flatMap(({facts}) => (facts.of === 'finish' ? [facts] : []))
  for (const {facts} of work)
    for (const finish of finishes) {
      if (facts.of === 'fasten' && facts.by === 'glue') expect(finish.bare).toContain('joint')
      if (facts.of === 'fasten-top' && facts.held === 'glued') expect(finish.bare).toContain('rim')
    }
})

law(
  'a neck that runs through is cut down before it is let in, and let in before it is joined',
  (plan, work) => {
    const at = placesOf(work)
    if (plan.neck?.inside === undefined || plan.neck.inside.surfaceMm <= 0) return
    expect(at.has('cut-down')).toBe(true)
    expect(at.get('cut-down')).toBeGreaterThan(at.get('plane-sides')!)
    for (const [before, then] of [
      ['cut-down', 'notch-box'],
      ['notch-box', 'fasten'],
    ] as const)
      if (at.has(then) && at.has(before)) expect(at.get(before)).toBeLessThan(at.get(then)!)
  },
)

law('a bit is one that is sold: brad points from 3 mm, twist bits below', ({holes = []}) => {
  for (const {bit} of holes) {
    if (bit?.with === 'brad-point') expect(bit.bit.mm).toBeGreaterThanOrEqual(3)
    if (bit?.with === 'twist' && !bit.or) expect(bit.bit?.mm ?? 0).toBeLessThan(3)
  }
})

law(
  'each caution stands only beside a step of its kind, and none that has such a step is left out',
  (plan, work) => {
    const rows: Readonly<Record<string, {steps: readonly string[]}>> = hazards
    for (const {id} of plan.cautions ?? []) {
      const beside = work.filter(({cautions}) => cautions.includes(id))
      for (const {kind} of beside) expect(rows[id]?.steps).toContain(kind)
    }
  },
)

test('a wood in the box alone is not warned of at the saw', () => {
  const {work = []} = planOf(changed(soundBuilds['on top'], {'box.wood': 'western redcedar'})).plan
  const beside = work.filter(({cautions}) => cautions.includes('redcedar-dust')).map(({kind}) => kind)
  expect(beside).not.toContain('rip')
  expect(beside).toContain('sand')
})

test('a wood in the neck alone is not warned of at the box', () => {
  const {work = []} = planOf(changed(soundBuilds['on top'], {'neck.wood': 'cocobolo'})).plan
  const beside = work.filter(({cautions}) => cautions.includes('rosewood-dust')).map(({kind}) => kind)
  expect(beside).toContain('rip')
  expect(beside).not.toContain('drill-top')
  expect(work.find(({id}) => id === 'glue-head')?.cautions).toContain('oily-wood')
})

test('shellac’s solvent is no oily rag', () => {
  const {work = []} = planOf(changed(soundBuilds['on top'], {finish: '[{kind: oil}, {kind: shellac}]'})).plan
  const of = (id: string) => work.find((one) => one.id === id)?.cautions
  expect(of('finish-oil')).toContain('oil-rags')
  expect(of('finish-shellac')).not.toContain('oil-rags')
  expect(of('finish-shellac')).toContain('solvents')
})
