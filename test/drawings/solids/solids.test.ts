import {booleans, geometries, measurements, primitives} from '@jscad/modeling'
import {describe, expect, test} from 'vitest'
import {box, type Convex, convex, cylinder, half, prism} from '../../../plugins/drawings/solids/convex.ts'
import {areaOf, facesOf, volumeOf} from '../../../plugins/drawings/solids/faces.ts'
import {seenLines, seenParts} from '../../../plugins/drawings/solids/seen-lines.ts'
import {type Solid, solid} from '../../../plugins/drawings/solids/solid.ts'
import {cross, dot, minus, parallel, plus, unit, type Vec} from '../../../plugins/drawings/solids/space.ts'
import {seenRegions, turnedHere} from '../../../plugins/drawings/solids/visible.ts'
import fc from '../../support/properties.ts'

// The kit of solids against a general geometry library (volumes, and the meshes that rays are sent into), against
// closed forms of volume and projection, and against what holds of any closed body.

/** The same piece in the other library: each body by its corners, put together and cut there. */
function judged({of, less}: Solid) {
  const meshes = (bodies: readonly Convex[]) =>
    bodies.map(({outlines}) => {
      let at = 0
      return primitives.polyhedron({
        points: outlines.flat().map(([x, y, z]): [number, number, number] => [x, y, z]),
        faces: outlines.map((outline) => outline.map(() => at++)),
      })
    })
  const whole = booleans.union(meshes(of))
  return less.length > 0 ? booleans.subtract(whole, ...meshes(less)) : whole
}

const size = fc.integer({min: 4, max: 60})
const place = fc.record({
  x: fc.integer({min: -20, max: 20}),
  y: fc.integer({min: -20, max: 20}),
  z: fc.integer({min: -20, max: 20}),
})
const at = ({x, y, z}: {x: number; y: number; z: number}, off = 0): Vec => [
  x + off,
  y + 1.37 * off,
  z + 0.73 * off,
]
const blocks = fc
  .tuple(place, size, size, size)
  .map(([from, a, b, c]) => box(at(from), plus(at(from), [a, b, c])))
const rods = fc
  .tuple(
    place,
    fc.constantFrom<Vec>([1, 0, 0], [0, 1, 0], [0, 0, 1], [0.6, 0, 0.8]),
    size,
    fc.integer({min: 2, max: 12}),
  )
  .map(([from, way, long, wide]) => cylinder(at(from, 0.31), plus(at(from, 0.31), way, long), wide))
const wedges = fc.tuple(place, size, size, size).map(([from, a, b, c]) => {
  const corner = at(from, 0.17)
  return prism([corner, plus(corner, [a, 0, 0]), plus(corner, [0, 0, b])], [0, c, 0])
})
const bodies = fc.oneof(blocks, rods, wedges)
const pieces = fc
  .tuple(fc.array(fc.oneof(blocks, wedges), {minLength: 1, maxLength: 2}), fc.array(bodies, {maxLength: 3}))
  .map(([of, less]): Solid => ({of, less}))

describe('volumes', () => {
  test('are those of closed forms', () => {
    expect(volumeOf(solid(box([0, 0, 0], [3, 4, 5])))).toBeCloseTo(60, 9)
    expect(volumeOf(solid(cylinder([1, 2, 3], [1, 2, 13], 6)))).toBeCloseTo(Math.PI * 90, 8)
    expect(
      volumeOf(
        solid(
          prism(
            [
              [0, 0, 0],
              [3, 0, 0],
              [0, 4, 0],
            ],
            [0, 0, 5],
          ),
        ),
      ),
    ).toBeCloseTo(30, 9)
    // A corner cut off a cube: a sixth of its three edges' product (Euclid, XII 7).
    const corner = half([1, 1, 1], [3, 0, 0])
    const [x, y, z] = [half([-1, 0, 0], [0, 0, 0]), half([0, -1, 0], [0, 0, 0]), half([0, 0, -1], [0, 0, 0])]
    expect(volumeOf(solid(convex([corner, x, y, z])))).toBeCloseTo(27 / 6, 9)
    // A hole drilled through a board, and its opening bored half way.
    const board = box([0, 0, 0], [40, 60, 20])
    const [hole, bore] = [cylinder([20, 30, -1], [20, 30, 21], 6), cylinder([20, 30, 10], [20, 30, 21], 12)]
    expect(volumeOf({of: [board], less: [hole, bore]})).toBeCloseTo(48000 - Math.PI * (90 + 360), 6)
  })

  test('are those of a general geometry library, whatever is put together and cut', () => {
    fc.assert(
      fc.property(pieces, (piece) => {
        const mm3 = volumeOf(piece)
        expect(Math.abs(mm3 - measurements.measureVolume(judged(piece)))).toBeLessThan(0.05 + mm3 * 1e-4)
      }),
      {numRuns: 150},
    )
  })

  // A strip of a neck that widens from the nut line on, however little: its faces close (the sum of their areas, each
  // by its direction, is nothing, by the divergence theorem), and its volume is that of a box and a trapezium.
  test.each([0.1, 0.009, 0.0002])('of a strip that widens by %d for each mm close there', (slope) => {
    const along = (fromMm: number, toMm: number, ...sides: ReturnType<typeof half>[]) =>
      convex([
        half([0, 0, 1], [0, 0, 0]),
        half([0, 0, -1], [0, 0, -21]),
        half([-1, 0, 0], [7, 0, 0]),
        half([0, -1, 0], [0, fromMm, 0]),
        half([0, 1, 0], [0, toMm, 0]),
        ...sides,
      ])
    const strip = solid(
      along(-150, 0, half([1, 0, 0], [19, 0, 0])),
      along(0, 344, half([1, -slope, 0], [19, 0, 0])),
    )
    const faces = facesOf(strip)
    const sum = faces.reduce((all, face) => plus(all, face.normal, areaOf(face)), [0, 0, 0] as Vec)
    for (const part of sum) expect(part).toBeCloseTo(0, 6)
    expect(volumeOf(strip)).toBeCloseTo(21 * (12 * 494 + (344 * 344 * slope) / 2), 5)
  })

  test('the faces of any piece close: their areas and directions come to nothing', () => {
    fc.assert(
      fc.property(pieces, (piece) => {
        const sum = facesOf(piece).reduce<Vec>((all, face) => plus(all, face.normal, areaOf(face)), [0, 0, 0])
        expect(Math.hypot(...sum)).toBeLessThan(0.01)
      }),
      {numRuns: 150},
    )
  })
})

describe('parallel projection', () => {
  test('comes to the closed forms: isometric edges are √(2/3) long, at 30° and upright', () => {
    // ISO 5456-3: the three axes at 120° to each other, all foreshortened by 0.816.
    const {page} = parallel(45, (Math.asin(Math.tan(Math.PI / 6)) * 180) / Math.PI)
    const ends = [page([1, 0, 0]), page([0, 1, 0]), page([0, 0, 1])]
    for (const [x, y] of ends) expect(Math.hypot(x, y)).toBeCloseTo(Math.sqrt(2 / 3), 12)
    const angles = ends.map(([x, y]) => (Math.atan2(y, x) * 180) / Math.PI)
    expect(angles.map((deg) => Number(deg.toFixed(9)))).toEqual([30, -30, -90])
  })

  test('keeps what is square to the eye as long as it is, and the eye’s own direction is a point', () => {
    fc.assert(
      fc.property(fc.integer({min: 1, max: 89}), fc.integer({min: 1, max: 89}), (turn, rise) => {
        const {page, nearness, towards} = parallel(turn, rise)
        expect(Math.hypot(...page(towards))).toBeLessThan(1e-12)
        expect(nearness(towards)).toBeCloseTo(1, 12)
        // Of three edges square to each other the squares of the images come to two (Gauss).
        const squares = (
          [
            [1, 0, 0],
            [0, 1, 0],
            [0, 0, 1],
          ] as Vec[]
        ).map((edge) => Math.hypot(...page(edge)) ** 2)
        expect(squares[0]! + squares[1]! + squares[2]!).toBeCloseTo(2, 12)
      }),
    )
  })
})

/** Does a ray from a point meet a mesh? (Möller and Trumbore 1997) */
function meets(triangles: readonly (readonly [Vec, Vec, Vec])[], from: Vec, way: Vec): boolean {
  const crossed = (a: Vec, b: Vec): Vec => [
    a[1] * b[2] - a[2] * b[1],
    a[2] * b[0] - a[0] * b[2],
    a[0] * b[1] - a[1] * b[0],
  ]
  const along = (a: Vec, b: Vec) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]
  return triangles.some(([a, b, c]) => {
    const [p, q] = [minus(b, a), minus(c, a)]
    const h = crossed(way, q)
    const det = along(p, h)
    if (Math.abs(det) < 1e-12) return false
    const s = minus(from, a)
    const u = along(s, h) / det
    const r = crossed(s, p)
    const v = along(way, r) / det
    return u >= 0 && v >= 0 && u + v <= 1 && along(q, r) / det > 0
  })
}

const trianglesOf = (piece: Solid) =>
  geometries.geom3
    .toPolygons(judged(piece))
    .flatMap(({vertices}) =>
      vertices
        .slice(2)
        .map((c, i): [Vec, Vec, Vec] => [
          vertices[0] as unknown as Vec,
          vertices[i + 1] as unknown as Vec,
          c as unknown as Vec,
        ]),
    )

/** Does a point of a piece lie on the surface of another, where neither hides the other? */
const isLevel = (point: Vec, of: number, all: readonly Solid[]) =>
  all.some((other, i) =>
    i === of
      ? false
      : [...other.of, ...other.less].some(({halves}) =>
          halves.some(({normal, atMm}) => Math.abs(dot(normal, point) - atMm) < 0.1),
        ),
  )

describe('what is seen', () => {
  const scenes = fc.tuple(
    fc.array(pieces, {minLength: 1, maxLength: 3}),
    fc.integer({min: 5, max: 80}),
    fc.integer({min: 5, max: 80}),
  )

  test('of every edge is what an independent ray finds unhidden', () => {
    let asked = 0
    fc.assert(
      fc.property(scenes, ([all, turn, rise]) => {
        const view = parallel(turn + 0.37, rise + 0.53)
        const seen = turnedHere(
          all.map((piece, of) => ({of, faces: facesOf(piece)})),
          view,
        )
        const triangles = all.flatMap(trianglesOf)
        for (const one of seen)
          for (const {a, b, from} of one.lines) {
            const line = {a, b, near: [view.nearness(from.a), view.nearness(from.b)] as const}
            const parts = seenParts(
              line,
              seen.filter((other) => other !== one),
            )
            // Straight towards the eye from a point a hair within the face, since an edge is where meshes differ; not where
            // that hair is all that is seen, or all that hides it.
            for (const t of [0.13, 0.38, 0.61, 0.87]) {
              const point = plus(from.a, minus(from.b, from.a), t)
              const inward = unit(cross(one.face.normal, minus(from.b, from.a)))
              const hairs = [
                [0.0001, 0.0005],
                [0.002, 0.02],
                [0.01, 0.02],
                [0.03, 0.02],
                [0.06, 0.02],
              ] as const
              const hidden = hairs.map(([hair, off]) =>
                meets(triangles, plus(plus(point, inward, hair), view.towards, off), view.towards),
              )
              const isNearChange = parts
                .flat()
                .some((s) => Math.abs(s - t) * Math.hypot(...minus(from.b, from.a)) < 0.5)
              if (isNearChange || new Set(hidden).size > 1 || isLevel(point, one.of, all)) continue
              asked++
              expect([t, parts.some(([s, e]) => s < t && t < e)]).toEqual([t, !hidden[0]])
            }
          }
      }),
      {numRuns: 60},
    )
    expect(asked).toBeGreaterThan(1000)
  })

  test('of all faces together covers what the pieces cover, each place once', () => {
    fc.assert(
      fc.property(scenes, fc.array(place, {minLength: 20, maxLength: 20}), ([all, turn, rise], places) => {
        const view = parallel(turn + 0.37, rise + 0.53)
        const seen = turnedHere(
          all.map((piece, of) => ({of, faces: facesOf(piece)})),
          view,
        )
        const regions = seenRegions(seen)
        const triangles = all.flatMap(trianglesOf)
        for (const where of places) {
          const point = at(where, 0.4142)
          const [x, y] = view.page(point)
          const covered = regions.filter(({region}) => {
            let inside = false
            for (const {a, b} of region)
              if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]))
                inside = !inside
            return inside
          })
          const isMet = meets(triangles, plus(point, view.towards, -500), view.towards)
          expect(covered.length).toBe(isMet ? 1 : 0)
        }
      }),
      {numRuns: 60},
    )
  })

  test('the lines of a box alone are its nine', () => {
    const view = parallel(20, 30)
    const seen = turnedHere([{of: 'box', faces: facesOf(solid(box([0, 0, 0], [10, 20, 30])))}], view)
    expect(seen.length).toBe(3)
    expect(seenLines(seen, view).length).toBe(9)
  })
})
