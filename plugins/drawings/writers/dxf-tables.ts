import {type Ink, inks} from '../kit/inks.ts'
import type {Shape} from '../kit/shape.ts'

/** A group code of a DXF file and its value. */
export type Group = readonly [number, string | number]

const table = (name: string, entries: readonly Group[][]): Group[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flat(),
  [0, 'ENDTAB'],
]

const typeName = ({dashMm, layer}: Ink) => (dashMm ? `${layer}_LINE` : 'CONTINUOUS')

/** One line type for each broken ink, and the unbroken one. */
export function lineTypes(): Group[] {
  const type = (name: string, dashMm: readonly number[]): Group[] => [
    [0, 'LTYPE'],
    [2, name],
    [70, 64],
    [3, ''],
    [72, 65],
    [73, dashMm.length],
    [40, dashMm.reduce((sum, mm) => sum + mm, 0)],
    ...dashMm.map((mm, i): Group => [49, i % 2 ? -mm : mm]),
  ]
  const broken = Object.values(inks as Record<string, Ink>).filter(({dashMm}) => dashMm)
  return table('LTYPE', [type('CONTINUOUS', []), ...broken.map((ink) => type(typeName(ink), ink.dashMm!))])
}

/** The layers that are used, each with its line type; colours count up, so that machines tell them apart. */
export function layers(shapes: readonly Shape[]): Group[] {
  const used = new Map<string, Ink>(shapes.map(({ink}) => [inks[ink].layer, inks[ink]]))
  return table(
    'LAYER',
    [...used].sort().map(([name, ink], i): Group[] => [
      [0, 'LAYER'],
      [2, name],
      [70, 64],
      [62, (i % 7) + 1],
      [6, typeName(ink)],
    ]),
  )
}
