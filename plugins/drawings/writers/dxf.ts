import {capitalHeight} from '../kit/extent.ts'
import {type Ink, inks} from '../kit/inks.ts'
import {type Point, type Shape, type Sheet, shapesOn, type Text} from '../kit/shapes.ts'
import {plainLatin} from './plain-latin.ts'

/**
 * Write a sheet as the text of a DXF file, release 12 (AC1009), in mm, y up from the sheet's lower edge; each kind of
 * line on a layer of its own. Source of codes and order: Autodesk, DXF Reference, release 12.
 */
export function dxf(sheet: Sheet): string {
  const {widthMm, heightMm} = sheet
  const shapes = shapesOn(sheet)
  const groups: Group[] = [
    [999, 'Units: millimetres'],
    ...section('HEADER', [
      [9, '$ACADVER'],
      [1, 'AC1009'],
      [9, '$INSUNITS'],
      [70, 4],
      [9, '$EXTMIN'],
      [10, 0],
      [20, 0],
      [9, '$EXTMAX'],
      [10, widthMm],
      [20, heightMm],
    ]),
    ...section('TABLES', [...lineTypes(), ...layers(shapes)]),
    ...section(
      'ENTITIES',
      shapes.flatMap((shape) => entity(shape, heightMm)),
    ),
    [0, 'EOF'],
  ]
  return groups
    .map(([code, value]) => `${code}\n${typeof value === 'number' ? number(code, value) : value}\n`)
    .join('')
}

const number = (code: number, value: number) =>
  code >= 60 && code < 80 ? String(value) : String(Number(value.toFixed(6)))

const section = (name: string, groups: readonly Group[]): Group[] => [
  [0, 'SECTION'],
  [2, name],
  ...groups,
  [0, 'ENDSEC'],
]

function entity(shape: Shape, heightMm: number): Group[] {
  const layer: Group = [8, inks[shape.ink].layer]
  const at = ([x, y]: Point, code = 10): Group[] => [
    [code, x],
    [code + 10, heightMm - y],
  ]
  if (shape.is === 'text') return textEntity(shape, layer, at)
  if (shape.is === 'circle') return [[0, 'CIRCLE'], layer, ...at(shape.centre), [40, shape.radiusMm]]
  if (shape.is === 'arc') {
    const {centre, radiusMm, fromDeg, toDeg} = shape
    // Angles turn the other way where y points up.
    const [start, end] = [-Math.max(fromDeg, toDeg), -Math.min(fromDeg, toDeg)]
    return [[0, 'ARC'], layer, ...at(centre), [40, radiusMm], [50, round(start)], [51, round(end)]]
  }
  const {points, closed} = shape
  if (points.length === 2 && !closed) return [[0, 'LINE'], layer, ...at(points[0]!), ...at(points[1]!, 11)]
  return [
    [0, 'POLYLINE'],
    layer,
    [66, 1],
    [10, 0],
    [20, 0],
    [30, 0],
    [70, closed ? 1 : 0],
    ...points.flatMap((point): Group[] => [[0, 'VERTEX'], layer, ...at(point)]),
    [0, 'SEQEND'],
    layer,
  ]
}

const round = (deg: number) => ((deg % 360) + 360) % 360

/** Height counts capitals alone; 72 and 73 say how the text lies about its place. */
function textEntity(
  {at, text, sizeMm, anchor, turned}: Text,
  layer: Group,
  place: (point: Point, code?: number) => Group[],
): Group[] {
  return [
    [0, 'TEXT'],
    layer,
    ...place(at),
    [40, capitalHeight * sizeMm],
    [1, ascii(text)],
    ...(turned ? ([[50, 90]] satisfies Group[]) : []),
    [72, {start: 0, middle: 1, end: 2}[anchor]],
    ...place(at, 11),
    [73, 2],
  ]
}

/** Spell a text in ASCII, with the codes that the format has for a diameter and a degree. */
const ascii = (text: string) =>
  plainLatin(text)
    .replaceAll('Ø', '%%c')
    .replaceAll('°', '%%d')
    .replace(/[‘’]/g, "'")
    .replaceAll('×', 'x')
    .normalize('NFD')
    .replace(/[^\x20-\x7e]/g, '')

/** A group code of a DXF file and its value. */
type Group = readonly [number, string | number]

const table = (name: string, entries: readonly Group[][]): Group[] => [
  [0, 'TABLE'],
  [2, name],
  [70, entries.length],
  ...entries.flat(),
  [0, 'ENDTAB'],
]

const typeName = ({dashMm, layer}: Ink) => (dashMm ? `${layer}_LINE` : 'CONTINUOUS')

/** One line type for each broken ink, and the unbroken one. */
function lineTypes(): Group[] {
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
function layers(shapes: readonly Shape[]): Group[] {
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
