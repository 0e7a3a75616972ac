import {describe, expect, test} from 'vitest'
import type {Problem} from '../../../plugins/build-file/schema/problem.ts'
import {gluedStressMpa} from '../../../plugins/plan/fasteners/end-joint.ts'
import {endScrewLoads} from '../../../plugins/plan/fasteners/joint-loads.ts'
import {tornAcrossMpa, woodOf} from '../../../plugins/plan/kit/woods.ts'
import {stationName} from '../../../plugins/words/places.ts'
import {changed} from '../../support/changed.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const inch = 25.4
const endOf = (changes: Record<string, string> = {}) => planOf(changed(soundBuilds.end, changes))
/** Two screws, one over the other in the middle, this far below the top. */
const stacked = (...downs: string[]) => ({
  'screws.1.off': '[0]',
  'screws.1.down': `[${downs.join(', ')}]`,
})

/*
 * The free body, by hand: the neck from its head to its end face at 16 in, all strings cut there. On it act
 *   - the strings, a pull T along their line: 1/8 in over the face at the nut, bridge 9/16 in over a top that lies
 *     1/4 in below the face, so 5/16 in over the face at 24 1/4 in;
 *   - the box's end, pressing at the edge E: level with the top, so 1/4 in below the face;
 *   - the screws, drawing towards the tail, each at its depth below E.
 * Moments about E: the press has none. The line of the strings passes E at its height there over it, and the part of
 * the pull that is square to the neck acts at the very station of E, so only T·cos(slope) turns.
 */
const slope = (5 / 16 - 1 / 8) / 24.25
const overEdgeMm = (1 / 8 + slope * 16 + 1 / 4) * inch
const turning = (tensionN: number) => tensionN * Math.cos(Math.atan(slope)) * overEdgeMm

describe('a neck that ends at the box', () => {
  test('is turned by the strings about the upper edge of the box’s end', () => {
    const {endJoint, tensionTotalN} = endOf().plan
    expect(endJoint!.leverMm).toBeCloseTo(overEdgeMm, 6)
    expect(endJoint!.momentNmm / turning(tensionTotalN!)).toBeCloseTo(1, 9)
  })

  test('one screw in the middle of its end holds the moment over its own distance to that edge', () => {
    const {fasteners, tensionTotalN} = endOf({'screws.1.off': '[0]'}).plan
    // The neck is 1 in thick: its middle lies 1/2 in below the face, 1/4 in below the edge.
    expect(fasteners!.filter(({joinsNeck}) => joinsNeck).map(({loadN}) => loadN)).toEqual([
      expect.closeTo(turning(tensionTotalN!) / (inch / 4), 6),
    ])
  })

  test('two screws side by side share it', () => {
    const {fasteners, tensionTotalN} = endOf().plan
    for (const {loadN} of fasteners!.filter(({joinsNeck}) => joinsNeck))
      expect(loadN).toBeCloseTo(turning(tensionTotalN!) / (inch / 4) / 2, 6)
  })

  test('of two, one over the other, the lower is drawn harder, as it opens further', () => {
    const {fasteners, tensionTotalN} = endOf(stacked('1/4', '1/2')).plan
    const [upper, lower] = fasteners!.map(({loadN}) => loadN!)
    expect(lower! / upper!).toBeCloseTo(2, 9)
    expect(upper! * (inch / 4) + lower! * (inch / 2)).toBeCloseTo(turning(tensionTotalN!), 6)
  })

  test('a face that lies below the top turns about its own edge', () => {
    const {endJoint} = endOf({'neck.above-top': '-1/8', 'bridge.height': '5/16'}).plan
    expect(endJoint!.edgeMm).toBeCloseTo(inch / 8, 9)
    expect(endJoint!.middleMm).toBeCloseTo((5 / 8) * inch, 9)
    expect(endJoint!.face.heightMm).toBeCloseTo(inch, 9)
  })

  test('any screws balance the strings, and none pushes', () => {
    const depth = fc.double({min: 0, max: 60, noNaN: true})
    fc.assert(
      fc.property(
        fc.array(depth, {minLength: 1, maxLength: 6}),
        fc.double({min: 0, max: 5000, noNaN: true}),
        fc.double({min: 0, max: 10, noNaN: true}),
        (downs, momentNmm, edgeMm) => {
          const loads = endScrewLoads(downs, {momentNmm, edgeMm})
          fc.pre(downs.some((down) => down > edgeMm + 0.01))
          const held = loads.reduce<number>((sum, load, i) => sum + load! * (downs[i]! - edgeMm), 0)
          expect(held).toBeCloseTo(momentNmm, 5)
          for (const load of loads) expect(load).toBeGreaterThanOrEqual(0)
        },
      ),
    )
  })

  test('the plan’s loads balance the strings over random necks', () => {
    const eighths = (min: number, max: number) => fc.integer({min, max})
    fc.assert(
      fc.property(eighths(0, 3), eighths(5, 9), eighths(10, 18), (above, height, at) => {
        const {plan} = endOf({
          'neck.above-top': `${above}/8`,
          'bridge.height': `${height}/8`,
          'action.octave': '',
          'box.at': `${at}`,
          'neck.length': `${at + 6.25}`,
          'screws.1.at': `[${at}]`,
          ...stacked('1/2', '5/8'),
        })
        // Nut 1/8 in over the face; the bridge's height over a top that lies above/8 in below the face.
        const rise = (height - above - 1) / 8 / 24.25
        const lever = (1 / 8 + rise * at + above / 8) * inch
        const wanted = plan.tensionTotalN! * Math.cos(Math.atan(rise)) * lever
        const held = plan.fasteners!.reduce((sum, {loadN}, i) => sum + loadN! * (i ? 5 / 8 : 1 / 2) * inch, 0)
        expect(held / wanted).toBeCloseTo(1, 6)
      }),
      {numRuns: 25},
    )
  })

  test('a lone screw level with the edge holds nothing, and is named', () => {
    const {plan, problems} = endOf({'screws.1.off': '[0]', 'screws.1.down': '[0]'})
    expect(plan.fasteners![0]!.loadN).toBeUndefined()
    expect(problems.map(({rule}) => rule)).toContain('end-joint-weak')
    expect(JSON.stringify(plan)).not.toContain('null')
  })

  test('strings that lie in the edge ask nothing', () => {
    expect(endScrewLoads([10], {momentNmm: 0, edgeMm: 0})).toEqual([0])
    expect(gluedStressMpa(0, 0, {widthMm: 40, heightMm: 20})).toBe(0)
  })
})

/** One string pulling 250 N along a face 6 mm over the top, 4 mm over it from nut to bridge; millimetres. */
const worked = (screws: string) => `
title: Slipway
units: mm
ruler: 0.5
scale: 600
strings: [{note: A3, tension: {pull: 250 N, scale: 600, note: A3}}]
action: {nut: 4, octave: 4}
neck: {joins: end, length: 540, width: 40, thickness: 25, above-top: 6, wood: sugar maple}
head: {length: 140, joint: straight}
bridge: {kind: saddle, on: top, foot: 10, length: 60}
anchors: {kind: tailpiece, at: 650, height: 0}
box: {length: 260, width: 180, depth: 60, sides: 8, back: 3, wood: sugar maple, top: {thickness: 3}, at: 400, end-block: {wood: sugar maple, length: 20, width: 60, thickness: 40}}
${screws}`

// Worked by hand. The strings run level, 4 over a face that lies 6 over the edge: 250 N · 10 mm = 2500 N·mm.
describe('two free bodies, worked out', () => {
  test('two screws side by side, 12 mm under the edge, share it: 2500/(2·12) = 104.17 N each', () => {
    const {endJoint, fasteners} = planOf(
      worked(
        'screws: [{size: 8, length: 60, at: [400], off: [-8, 8], down: [12], through: [block, side], into: neck}]',
      ),
    ).plan
    expect(endJoint!.momentNmm).toBeCloseTo(2500, 6)
    expect(fasteners!.map(({loadN}) => loadN)).toEqual([
      expect.closeTo(104.1667, 3),
      expect.closeTo(104.1667, 3),
    ])
  })

  // One 5 under the edge and one 15: drawn as 5 to 15, so 50 N and 150 N, since 50·5 + 150·15 = 2500. Glue would
  // have a face 40 by 19: 250·(6·10 + 2·19)/(40·19²) = 1.6967 MPa at the back.
  test('two screws one over the other, and what glue alone would come to', () => {
    const {endJoint, fasteners} = planOf(
      worked(
        'screws: [{size: 8, length: 60, at: [400], off: [0], down: [5, 15], through: [block, side], into: neck}]',
      ),
    ).plan
    expect(fasteners!.map(({loadN}) => loadN)).toEqual([expect.closeTo(50, 6), expect.closeTo(150, 6)])
    expect(endJoint!.glue.stressMpa).toBeCloseTo(1.6967, 4)
  })
})

describe('what would do', () => {
  // Pine tears at 1.9 MPa across its grain, so glue on it may be asked 0.6.
  const softWalled = changed(worked(''), {'box.wood': 'eastern white pine'})
  // One string that pulls as hard as three is stiff by itself.
  const graveOf = (problems: readonly Problem[]) =>
    problems.filter(({severity}) => severity !== 'remark').map(({rule}) => rule)
  const pasted = (text: string) => {
    const {problems} = planOf(`${text}\nscrews: []`)
    const {note = ''} = problems.find(({rule}) => rule === 'end-joint-weak')!
    const line = /screws: .*$/.exec(note)![0]
    return planOf(`${text}\n${line}`)
  }

  test('the line of screws that is proposed holds, by the handbook’s own withdrawal, and is silent', () => {
    const {plan, problems} = pasted(softWalled)
    expect(graveOf(problems)).toEqual(['string-stiff'])
    // 15.7·10⁶·G²·D·L lb/in² in metric, 108.25 G² D L N (FPL-GTR-282, Eq. 8-10); three quarters of it in end grain.
    for (const {loadN, shankMm, threadMm} of plan.fasteners!)
      expect(3 * loadN!).toBeLessThanOrEqual(0.75 * 108.25 * 0.63 ** 2 * shankMm * threadMm)
  })

  test('without a block the screws go through a washer', () => {
    const {plan, problems} = pasted(changed(softWalled, {'box.end-block': ''}))
    expect(plan.fasteners![0]!.through).toEqual(['washer', 'side'])
    expect(graveOf(problems)).toEqual(['string-stiff'])
  })

  test('screws level with the edge are told how low to go', () => {
    const text = worked(
      'screws: [{size: 8, length: 60, at: [400], off: [0], down: [0], through: [block, side], into: neck}]',
    )
    const found = planOf(text).problems.find(({rule}) => rule === 'end-joint-weak')!
    const mended = planOf(changed(text, {'screws.1.down': found.expected![0]!}))
    expect(mended.problems.map(({rule}) => rule)).not.toContain('end-joint-weak')
  })

  test('where no screw of those tried would do, nothing is proposed', () => {
    const strings = '[{note: A3, tension: {pull: 2000 N, scale: 600, note: A3}}]'
    expect(
      planOf(changed(softWalled, {strings, 'action.nut': '30', 'action.octave': '30'})).plan.endJoint,
    ).toMatchObject({weak: {wouldDo: undefined}})
  })
})

describe('glued, without screws', () => {
  // By hand: T pressing on a rectangle b wide and h high, e from its middle: stress at the far edge = M/(b·h²/6) − T/(b·h).
  test('the face is torn at the neck’s back as a rectangle pressed off its middle', () => {
    const [pull, width, height, lever] = [250, 44, 21, 9.6]
    const byHand = (pull * (lever + height / 2)) / ((width * height ** 2) / 6) - pull / (width * height)
    expect(gluedStressMpa(pull, lever, {widthMm: width, heightMm: height})).toBeCloseTo(byHand, 9)
  })

  // The same, by summing thin strips of the face: the stress that varies straight over it balances force and moment.
  test('the stress over the face balances the strings', () => {
    const [pull, width, height, lever] = [300, 40, 25, 12]
    const most = gluedStressMpa(pull, lever, {widthMm: width, heightMm: height})
    const mean = -pull / (width * height)
    const strips = Array.from({length: 2000}, (_, i) => {
      const down = ((i + 0.5) * height) / 2000
      const stress = mean + (most - mean) * ((down - height / 2) / (height / 2))
      return {down, force: (stress * width * height) / 2000}
    })
    expect(strips.reduce((sum, {force}) => sum + force, 0)).toBeCloseTo(-pull, 6)
    expect(strips.reduce((sum, {force, down}) => sum + force * down, 0) / (pull * lever)).toBeCloseTo(1, 5)
  })

  // Wood Handbook, FPL-GTR-190, Table 5-3: tension perpendicular to the grain at 12 %, MPa; from memory.
  test.each([
    ['eastern white pine', 2.1],
    ['black cherry', 3.9],
    ['black walnut', 4.8],
    ['yellow-poplar', 3.7],
    ['white ash', 6.5],
  ])('%s tears across its grain near %f MPa', (name, listed) => {
    expect(Math.abs(tornAcrossMpa(woodOf(name)!) / listed - 1)).toBeLessThan(0.21)
  })

  test('a soft wall is torn before hard end grain, and the joint is named', () => {
    const {plan, problems} = endOf({screws: '[]', 'box.wood': 'eastern white pine'})
    expect(plan.endJoint!.glue).toMatchObject({isGlued: true, weaker: 'wall'})
    expect(plan.endJoint!.glue.stressMpa).toBeGreaterThan(plan.endJoint!.glue.mostMpa!)
    expect(problems.map(({rule}) => rule)).toContain('end-joint-weak')
  })

  test('where the file says that there are no screws, the list that would do can be pasted, and is silent', () => {
    const weak = {screws: '[]', 'box.wood': 'eastern white pine', 'neck.glue': 'pva'}
    const [problem] = endOf(weak).problems.filter(({rule}) => rule === 'end-joint-weak')
    const mended = endOf({...weak, screws: problem!.expected![0]!}).problems.map(({rule}) => rule)
    expect(mended.filter((rule) => /screw|end-joint/.test(rule))).toEqual([])
  })

  test('screws and glue share nothing: weak glue excuses no screw', () => {
    const weak = {'neck.wood': 'northern white cedar', 'box.wood': 'eastern white pine', 'screws.1.size': '4'}
    const rules = (more: Record<string, string>) =>
      endOf({...weak, ...more, 'screws.1.off': '[0]', 'screws.1.length': '1 3/8'}).problems.map(
        ({rule}) => rule,
      )
    expect(rules({})).toContain('screw-overloaded')
    expect(rules({'neck.glue': 'pva'})).toContain('screw-overloaded')
  })
})

describe('the end block', () => {
  const block = {'box.blocks': '', 'box.end-block': '{wood: beech, length: 3/4, width: 3, thickness: 1 3/4}'}

  test('stands behind the wall, is screwed through, cut and glued in', () => {
    const {plan, problems} = endOf(block)
    const [first] = plan.box!.blocks!
    expect(first).toMatchObject({of: 'box.end-block', offMm: 0, glued: 'at the ends'})
    // 1/4 in of wall, then half of 3/4 in.
    expect(first!.alongMm).toBeCloseTo((1 / 4 + 3 / 8) * inch, 9)
    expect(plan.fasteners![0]!.underHeadMm).toBeCloseTo(inch, 9)
    expect(plan.cuts!.parts.find(({of}) => of === 'box.end-block')).toMatchObject({
      called: {is: 'end-block'},
      wood: 'beech',
    })
    expect(plan.work!.find(({id}) => id === 'fit-blocks')!.stations.map(stationName)).toContain(
      'end block, middle',
    )
    expect(problems.filter(({severity}) => severity !== 'remark')).toEqual([])
  })

  test('that is taller than the inside is named, and the height that fits would do', () => {
    const {problems} = endOf({...block, 'box.end-block.thickness': '2 3/4'})
    expect(problems.find(({rule}) => rule === 'block-outside')?.expected).toEqual(['2 1/4 in'])
  })
})
