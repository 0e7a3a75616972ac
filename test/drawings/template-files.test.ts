import type {IDxf} from 'dxf-parser'
import dxfParser from 'dxf-parser'
import {describe, expect, test} from 'vitest'
import {templateDxf, templateSvg} from '../../plugins/drawings/templates/sheets.ts'
import {planOf} from '../support/plan-of.ts'
import {templateBuilds} from './support/builds.ts'

interface Entity {
  type: string
  layer: string
  vertices?: {x: number; y: number}[]
  center?: {x: number; y: number}
  radius?: number
  text?: string
}

// Its types say that the class is a field of what is imported, which is so for bundlers alone.
const DxfParser = dxfParser as unknown as new () => {parseSync: (text: string) => IDxf}

const layers = ['BAR', 'CENTRE', 'CUT', 'DIMENSION', 'FIGURE', 'HOLE', 'NAME', 'PENCIL', 'PUNCH', 'SLOT']

for (const [name, frontMatter] of Object.entries(templateBuilds))
  describe(`the templates of a ${name} build on one sheet`, () => {
    const {build, plan} = planOf(frontMatter)
    const {nutWidthMm} = plan.outline!.neck!

    describe('as DXF, read back by a DXF library', () => {
      const text = templateDxf(plan, build)!
      const read = new DxfParser().parseSync(text)
      const entities = read.entities as unknown as Entity[]

      test('is release 12 in millimetres, on named layers', () => {
        // DXF Reference, release 12: AC1009. $INSUNITS 4 is millimetres.
        expect(read.header.$ACADVER).toBe('AC1009')
        expect(read.header.$INSUNITS).toBe(4)
        const named = Object.keys((read.tables as {layer: {layers: object}}).layer.layers)
        expect(named).toEqual(
          expect.arrayContaining(layers.filter((layer) => entities.some((one) => one.layer === layer))),
        )
        expect(new Set(entities.map(({layer}) => layer)).size).toBeGreaterThan(7)
        for (const {layer} of entities) expect(named).toContain(layer)
      })

      test('has both bars at their lengths', () => {
        const bars = entities
          .filter(({layer, type}) => layer === 'BAR' && type === 'LINE')
          .map(({vertices}) => Math.abs(vertices![1]!.x - vertices![0]!.x))
        expect(bars.some((mm) => Math.abs(mm - 100) < 1e-6)).toBe(true)
        expect(bars.some((mm) => Math.abs(mm - 101.6) < 1e-6)).toBe(true)
      })

      test('has every line of the neck as far from the nut line as the plan has it', () => {
        const level = entities
          .filter(
            ({type, layer, vertices}) =>
              type === 'LINE' &&
              (layer === 'SLOT' || layer === 'PENCIL') &&
              vertices![0]!.y === vertices![1]!.y,
          )
          .map(({vertices}) => ({y: vertices![0]!.y, mm: Math.abs(vertices![1]!.x - vertices![0]!.x)}))
        const nutY = Math.max(...level.filter(({mm}) => Math.abs(mm - nutWidthMm) < 1e-5).map(({y}) => y))
        const from = level.map(({y}) => nutY - y)
        const ledgeMm = plan.outline!.head!.ledgeMm
        const wanted = plan.scale!.lines!.map(
          ({fromNutMm}) => fromNutMm + (plan.outline!.head!.angleDeg > 0 ? ledgeMm : 0),
        )
        for (const mm of wanted)
          expect(
            from.some((one) => Math.abs(one - mm) < 0.05),
            `a line at ${mm}`,
          ).toBe(true)
      })

      test('has a ring for every sound hole and post', () => {
        const rings = entities.filter(({type}) => type === 'CIRCLE').map(({radius}) => radius!)
        for (const {diameterMm} of plan.box!.soundHoles!)
          expect(rings.some((radius) => Math.abs(2 * radius - diameterMm) < 1e-5)).toBe(true)
        const posts = rings.filter(
          (radius) => Math.abs(2 * radius - build.values.tuners!['post-hole']!.mm) < 1e-5,
        )
        expect(posts.length).toBeGreaterThanOrEqual(plan.tuners!.length)
      })
    })

    describe('as SVG', () => {
      const svg = templateSvg(plan, build)!

      test('has a millimetre for its unit', () => {
        // SVG 2, 8.2: a viewBox as large as width and height in mm makes a user unit one mm.
        const [, width, height, x, y, boxWidth, boxHeight] =
          /width="([\d.]+)mm" height="([\d.]+)mm" viewBox="(\S+) (\S+) (\S+) (\S+)"/.exec(svg)!
        expect([x, y]).toEqual(['0', '0'])
        expect([boxWidth, boxHeight]).toEqual([width, height])
      })

      test('has a group for every layer, and nothing of styles or scripts', () => {
        for (const id of ['cut', 'centre', 'pencil', 'punch', 'bar', 'figure'])
          expect(svg).toContain(`id="${id}"`)
        expect(svg).not.toMatch(/style|script|NaN|undefined/i)
      })

      test('has both bars at their lengths', () => {
        const bars = /<g class="ink-bar"[^>]*><path d="([^"]*)"/.exec(svg)![1]!
        const lengths = [...bars.matchAll(/M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)/g)].map(
          ([, x1, , x2]) => Number(x2) - Number(x1),
        )
        expect(lengths.some((mm) => Math.abs(mm - 100) < 1e-3)).toBe(true)
        expect(lengths.some((mm) => Math.abs(mm - 101.6) < 1e-3)).toBe(true)
      })
    })
  })
