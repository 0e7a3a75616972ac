import {describe, expect, test} from 'vitest'
import {templatePdf} from '../../plugins/drawings/templates/sheets.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {planOf} from '../support/plan-of.ts'
import {templateBuilds} from './support/builds.ts'
import {type Joined, joinSheets} from './support/join-sheets.ts'
import {type ReadSheet, readPdf} from './support/read-pdf.ts'

// Sizes in mm. ISO 216: A4 is 210 × 297. ANSI/ASME Y14.1: size A is 8 1/2 × 11 in.
const papers = {a4: [210, 297], letter: [215.9, 279.4]} as const

/** The issue's own measure: how far anything may lie from the plan once the sheets are joined (mm). */
const withinMm = 0.05

const isNear = (a: number, b: number) => Math.abs(a - b) <= withinMm
const lengthOf = ({from, to}: Joined['lines'][number]) => Math.hypot(from[0] - to[0], from[1] - to[1])
const isLevel = ({from, to}: Joined['lines'][number]) => Math.abs(from[1] - to[1]) < 1e-6

/** The sheets of one template, by the words in their foot. */
const sheetsOf = (sheets: readonly ReadSheet[], name: string) =>
  sheets.filter(({texts}) => texts.some(({text}) => text === `${name}, full size`))

/** Put 0 on the centre line and on the given level line, of all that have its length and look the first or the last. */
function originOf(joined: Joined, lengthMm: number, widthMm: number, end: 'first' | 'last') {
  const alike = joined.lines
    .filter(
      (line) =>
        isLevel(line) && !line.dashed && isNear(lengthOf(line), lengthMm) && isNear(line.widthMm, widthMm),
    )
    .sort((a, b) => a.from[1] - b.from[1])
  const {from, to} = (end === 'first' ? alike[0] : alike.at(-1))!
  return {x: (from[0] + to[0]) / 2, y: from[1]}
}

function expectLine(joined: Joined, origin: {x: number; y: number}, halfMm: number, stationMm: number) {
  const found = joined.lines.some(
    (line) =>
      isLevel(line) &&
      isNear(line.from[1] - origin.y, stationMm) &&
      isNear(Math.min(line.from[0], line.to[0]) - origin.x, -halfMm) &&
      isNear(Math.max(line.from[0], line.to[0]) - origin.x, halfMm),
  )
  expect(found, `a line across at ${stationMm}`).toBe(true)
}

function expectHole(
  joined: Joined,
  origin: {x: number; y: number},
  {x, stationMm, diameterMm}: {x: number; stationMm: number; diameterMm: number},
) {
  const found = joined.rings.some(
    ({centre, radiusMm}) =>
      isNear(centre[0] - origin.x, x) &&
      isNear(centre[1] - origin.y, stationMm) &&
      isNear(2 * radiusMm, diameterMm),
  )
  expect(found, `a hole ${diameterMm} wide at ${stationMm}, ${x}`).toBe(true)
}

/** A left-handed template is the mirror image of a right-handed one; `off` grows towards the last string. */
const across = (plan: Plan, offMm: number) => (plan.handed === 'left' ? -offMm : offMm)

for (const [name, frontMatter] of Object.entries(templateBuilds))
  for (const paper of ['a4', 'letter'] as const)
    describe(`the templates of a ${name} build on ${paper}`, async () => {
      const {build, plan} = planOf(frontMatter)
      const bytes = (await templatePdf(plan, build, paper))!
      const sheets = await readPdf(bytes)

      test('are on the paper asked for, inside what printers reach', () => {
        for (const {widthMm, heightMm, window, lines} of sheets) {
          const sides = [widthMm, heightMm].sort((a, b) => a - b)
          expect(sides[0]).toBeCloseTo(papers[paper][0], 3)
          expect(sides[1]).toBeCloseTo(papers[paper][1], 3)
          // 6.35 mm: common practice, no source.
          expect(Math.min(window!.x, window!.y)).toBeGreaterThan(6.35)
          const foot = lines.filter(({cut}) => !cut)
          for (const [x, y] of foot.flatMap(({from, to}) => [from, to])) {
            expect(x).toBeGreaterThan(6.35)
            expect(x).toBeLessThan(widthMm - 6.35)
            expect(y).toBeLessThan(heightMm - 6.35)
          }
        }
      })

      test('have both bars on every sheet, and say what they are', () => {
        sheets.forEach(({lines, texts}, i) => {
          // 4 in is 101.6 mm (international inch, 25.4 mm).
          for (const lengthMm of [100, 101.6])
            expect(lines.some((line) => isLevel(line) && isNear(lengthOf(line), lengthMm))).toBe(true)
          const words = texts.map(({text}) => text)
          expect(words).toEqual(
            expect.arrayContaining([
              '100 mm',
              '4 in',
              'Print at 100 %, then measure these bars.',
              plan.title,
              'needle-box',
              build.values.finished?.iso ?? build.values.started?.iso,
              `sheet ${i + 1} of ${sheets.length}`,
            ]),
          )
        })
      })

      test('have every line and hole of the neck where the plan has it', () => {
        const joined = joinSheets(sheetsOf(sheets, 'neck'))
        expect(joined.worstMissMm).toBeLessThan(0.001)
        const {scale, bridge, box, outline, holes = []} = plan
        const {nutWidthMm, tailWidthMm, tailMm} = outline!.neck!
        const half = (mm: number) =>
          (nutWidthMm + (tailWidthMm - nutWidthMm) * Math.min(1, Math.max(0, mm / tailMm))) / 2
        const origin = originOf(joined, nutWidthMm, 0.18, 'first')
        const stations = [0, bridge!.stationMm, box!.atMm!, box!.tailMm!, tailMm]
        for (const {fromNutMm} of scale!.lines!) stations.push(fromNutMm)
        for (const mm of stations.filter((station) => station <= tailMm))
          expectLine(joined, origin, half(mm), mm)
        for (const {face, stationMm, offMm, diameterMm} of holes)
          if (face === 'playing face')
            expectHole(joined, origin, {
              x: across(plan, offMm),
              stationMm,
              diameterMm: widest(holes, stationMm, offMm, diameterMm),
            })
      })

      test('have every post of the head where the plan has it', () => {
        const joined = joinSheets(sheetsOf(sheets, 'head'))
        const origin = originOf(joined, plan.outline!.head!.widthMm, 0.18, 'last')
        expect(plan.tuners).toHaveLength(plan.strings!.length)
        for (const {stationMm, offMm} of plan.tuners!)
          expectHole(joined, origin, {
            x: across(plan, offMm),
            stationMm,
            diameterMm: build.values.tuners!['post-hole']!.mm,
          })
      })

      test('have bridge line and holes of the box’s top where the plan has them', () => {
        const joined = joinSheets(sheetsOf(sheets, 'box top'))
        const {box, bridge, holes = []} = plan
        const widthMm = box!.outside!.widthMm
        const ring = box!.soundHoles![0]!
        const found = joined.rings.find(({radiusMm}) => isNear(2 * radiusMm, ring.diameterMm))!
        const origin = {x: found.centre[0] - across(plan, ring.offMm), y: found.centre[1] - ring.stationMm}
        for (const {stationMm, offMm, diameterMm} of box!.soundHoles!)
          expectHole(joined, origin, {x: across(plan, offMm), stationMm, diameterMm})
        for (const {face, stationMm, offMm, diameterMm} of holes)
          if (face === 'top')
            expectHole(joined, origin, {
              x: across(plan, offMm),
              stationMm,
              diameterMm: widest(holes, stationMm, offMm, diameterMm),
            })
        if (widthMm < 190) expectLine(joined, origin, widthMm / 2, bridge!.stationMm)
      })

      test('are the same bytes every time', async () => {
        expect(Buffer.from((await templatePdf(plan, build, paper))!).equals(Buffer.from(bytes))).toBe(true)
      })
    })

/** Where two bits enter at one place, the wider rim is drawn. */
function widest(
  holes: NonNullable<Plan['holes']>,
  stationMm: number,
  offMm: number,
  diameterMm: number,
): number {
  return holes
    .filter((hole) => isNear(hole.stationMm, stationMm) && isNear(hole.offMm, offMm))
    .filter(({face}) => ['playing face', 'neck back', 'top', 'top inside'].includes(face))
    .reduce((most, hole) => Math.max(most, hole.diameterMm), diameterMm)
}
