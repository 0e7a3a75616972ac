import {readFileSync} from 'node:fs'
import {toHtml} from 'hast-util-to-html'
import {describe, expect, test} from 'vitest'
import {apartPicture} from '../../../plugins/drawings/pictures/apart.ts'
import {roundedOff} from '../../../plugins/drawings/pictures/cutters.ts'
import {neckPieces} from '../../../plugins/drawings/pictures/neck-bodies.ts'
import {neckLook} from '../../../plugins/drawings/pictures/neck-look.ts'
import {benchView, picture, viewOf} from '../../../plugins/drawings/pictures/picture.ts'
import {stepPictures, stepScenes} from '../../../plugins/drawings/pictures/step-pictures.ts'
import {areaOf, facesOf, volumeOf} from '../../../plugins/drawings/solids/faces.ts'
import {plus, type Vec} from '../../../plugins/drawings/solids/space.ts'
import {planOf} from '../../support/plan-of.ts'
import fc from '../../support/properties.ts'
import {randomWork} from '../../support/random-work.ts'
import {soundBuilds} from '../../support/sound-builds.ts'

const journal = [
  'fog-signal',
  'harbour-bell',
  'lantern-pier/index',
  'left-bank',
  'needle-box-one',
  'tide-table',
]
/** As it was before any step was done. */
const frontMatter = (name: string) =>
  /^---\n([\s\S]*?)\n---/
    .exec(readFileSync(`builds/${name}.md`, 'utf8'))![1]!
    .replace(/^status: .*$/m, 'status: on the bench')
const builds = [
  ...journal.map((name) => [name, frontMatter(name)] as const),
  ...Object.entries(soundBuilds),
].map(([name, text]) => ({name, ...planOf(text)}))
/** Between them they have every kind of step that the others have. */
const everyKind = builds.filter(({name}) =>
  ['lantern-pier/index', 'harbour-bell', 'tide-table'].includes(name),
)
const planCalled = (name: string) => builds.find((one) => one.name === name)!.plan

const written = (svg: Parameters<typeof toHtml>[0]) => toHtml(svg, {space: 'svg'})

describe('a picture for each step', () => {
  test('of every build: well told, the same twice, without a style or a number that is none', () => {
    for (const {name, plan, build} of everyKind) {
      const pictures = stepPictures(plan, build.values)
      // One build twice is as good as each: what draws them is the same.
      const again = name === 'tide-table' ? stepPictures(plan, build.values) : pictures
      for (const {id} of plan.work!) {
        const svg = pictures.get(id)
        expect([name, id, svg !== undefined]).toEqual([name, id, true])
        const html = written(svg!)
        if (again !== pictures) expect(html).toBe(written(again.get(id)!))
        expect(html).not.toMatch(/NaN|Infinity|undefined|style=/)
        expect(html).toMatch(/<title[^>]*>.+<\/title><desc[^>]*>.+<\/desc>/)
        expect([name, id, html.length]).toSatisfy(([, , length]) => (length as number) < 40_000)
      }
    }
  })

  test('of a step that is done is not drawn', () => {
    const {plan, build} = planOf(`${soundBuilds['on top']}\nstatus: strung up`)
    const open = plan.work!.filter(({isDone}) => !isDone).map(({id}) => id)
    expect([...stepPictures(plan, build.values).keys()]).toEqual(open)
  })

  test('of any build can be drawn', () => {
    fc.assert(
      fc.property(randomWork, (text) => {
        const {plan, build} = planOf(text)
        for (const svg of stepPictures(plan, build.values).values())
          expect(written(svg)).not.toMatch(/NaN|Infinity/)
        apartPicture(plan, build.values)
      }),
      {numRuns: 4},
    )
  })

  // The way back from the page: x and y of a point whose height is known, by the closed form of the projection.
  const turn = (18 * Math.PI) / 180
  const rise = (32 * Math.PI) / 180
  const back = ([px, py]: readonly [number, number], z: number): readonly [number, number] => {
    const down = (py + z * Math.cos(rise)) / Math.sin(rise)
    return [px * Math.sin(turn) + down * Math.cos(turn), px * Math.cos(turn) - down * Math.sin(turn)]
  }

  test('shows every hole of the top at its place, to 0.1 mm, read back from the SVG', () => {
    let read = 0
    for (const {plan} of builds) {
      const {scene} = stepScenes(plan, {}).find(({moment}) => moment.step.id === 'drill-top') ?? {}
      if (!scene || plan.box?.neck?.aboveTopMm === undefined) continue
      const svg = picture(scene, {id: 'top', title: 'Top', says: 'Its holes'})
      const z = -plan.box.neck.aboveTopMm
      const now = [...written(svg).matchAll(/<path d="([^"]+)" class="pic-now-face"/g)]
        .map(([, d]) => d!)
        .join('')
      const rims = [...written(svg).matchAll(/<path d="([^"]+)" class="pic-now"/g)]
        .map(([, d]) => d!)
        .join('')
      expect(now.length + rims.length).toBeGreaterThan(0)
      const corners = [...rims.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) =>
        back([Number(x), Number(y)], z),
      )
      const ofTop = plan.holes!.filter(({face}) => face === 'top')
      // A pilot has its rim below the clearance hole around it.
      const open = ofTop.filter(
        (hole) =>
          !ofTop.some(
            (other) =>
              other.diameterMm > hole.diameterMm &&
              Math.hypot(other.stationMm - hole.stationMm, other.offMm - hole.offMm) < 0.01,
          ),
      )
      for (const {face, stationMm, offMm, diameterMm} of open) {
        const x = (plan.handed === 'right' ? -1 : 1) * offMm * (plan.strings?.length === 1 ? -1 : 1)
        const rim = corners.filter(
          ([cx, cy]) =>
            Math.abs(Math.hypot(cx - x, cy - stationMm) - diameterMm / 2) < 0.04 * diameterMm + 0.1,
        )
        expect([face, rim.length]).toSatisfy(([, count]) => (count as number) >= 6)
        const ends = [rim.map(([cx]) => cx), rim.map(([, cy]) => cy)]
        const middles = ends.map((all) => (Math.min(...all) + Math.max(...all)) / 2)
        expect(Math.abs(middles[0]! - x)).toBeLessThan(0.1)
        expect(Math.abs(middles[1]! - stationMm)).toBeLessThan(0.1)
        read++
      }
    }
    expect(read).toBeGreaterThan(5)
  })

  test('has a part 3 mm thin or 1.2 m long, one part, forty steps, no box, no strings, and names in any script', () => {
    const long = soundBuilds['on top']
      .replace('length: 33 1/2', 'length: 48')
      .replace('thickness: 1/8', 'thickness: 3 mm')
    const parts = `title: 竪琴の箱
parts: [{name: "部品 <b>א</b>", wood: 桐, length: 1200 mm, width: 30 mm, thickness: 3 mm, count: 40}]`
    const noStrings = soundBuilds['on top'].replace(/strings:\n( {2}.*\n)+/, '')
    const noBox = soundBuilds['on top'].replace(/box:\n( {2}.*\n)+/, '')
    const forty = `${soundBuilds.through}\nfinish: [${'oil, '.repeat(20)}wax]`.replace(
      /^finish:.*\n(?=[\s\S]*finish:)/m,
      '',
    )
    expect(planOf(forty).plan.work!.length).toBeGreaterThan(40)
    for (const text of [
      forty,
      long,
      parts,
      noStrings,
      noBox,
      'title: One\nneck: {length: 600 mm, width: 40, thickness: 20, wood: ash}',
    ]) {
      const {plan, build} = planOf(text)
      for (const svg of stepPictures(plan, build.values).values())
        expect(written(svg)).not.toMatch(/NaN|Infinity|<b>/)
      const apart = apartPicture(plan, build.values)
      if (apart) expect(written(apart)).not.toMatch(/NaN|Infinity/)
    }
  })

  test('leaves later cuts and holes out, and shows earlier ones', () => {
    const plan = planCalled('needle-box-one')
    const of = (id: string) => stepScenes(plan, {}).find(({moment}) => moment.step.id === id)!.scene!
    const cuts = (id: string) => of(id).pieces.reduce((sum, {solid}) => sum + solid.less.length, 0)
    expect(cuts('plane')).toBe(0)
    expect(cuts('drill-head')).toBeGreaterThan(cuts('shape-head'))
    expect(viewOf({isTurned: false})).toBe(benchView)
  })
})

describe('the solids', () => {
  test('of neck and head weigh what the plan says, the bend of the head among it', () => {
    let weighed = 0
    for (const {name, plan} of builds) {
      const look = neckLook(plan, undefined)
      const {massKg, sections, layup} = plan.neck ?? {}
      const density = sections?.[0]?.massPerLengthKgM
      if (!look || massKg === undefined || !density || layup!.layers.length !== 1 || plan.neck?.inside)
        continue
      const done = new Set(plan.work!.map(({id}) => id))
      const mm3 = neckPieces(look, done).reduce(
        (sum, {solid}) => sum + volumeOf({...solid, less: [...solid.less, ...roundedOff(look)]}),
        0,
      )
      const kgMm3 = density / 1000 / sections![0]!.areaMm2
      if (look.head!.angleDeg === 0 || plan.neck?.head?.joint !== 'scarf') continue
      // What flat faces stand for a rounded edge leave on is less than 0.2 %.
      expect([name, (mm3 * kgMm3) / massKg]).toSatisfy(([, share]) => Math.abs((share as number) - 1) < 0.002)
      weighed++
    }
    expect(weighed).toBeGreaterThan(1)
  })

  test('of the finished instrument close: areas and directions of a piece’s faces come to nothing', () => {
    for (const {name, plan} of everyKind)
      for (const {of, solid} of stepScenes(plan, {}).at(-1)!.scene!.pieces) {
        const sum = facesOf(solid).reduce<Vec>((all, face) => plus(all, face.normal, areaOf(face)), [0, 0, 0])
        expect([name, of, Math.hypot(...sum)]).toSatisfy(([, , mm2]) => (mm2 as number) < 0.1)
      }
  })

  test('of parts to cut have the volume that the cut list has', () => {
    const plan = planCalled('lantern-pier/index')
    const {scene} = stepScenes(plan, {}).find(({moment}) => moment.step.id === 'rip')!
    for (const {of, solid} of scene!.pieces) {
      const part = plan.cuts!.parts.find(({id}) => id === of)!
      expect(volumeOf(solid)).toBeCloseTo(part.lengthMm * part.widthMm * part.thicknessMm, 3)
    }
  })
})
