import {type Point, path, type Shape} from '../kit/shape.ts'

/** Draw a bar to check a printer by: its ends, and a short mark at each step, in mm. Its words stand at its right. */
export function bar([x, y]: Point, lengthMm: number, stepMm: number, words: string): Shape[] {
  const inner = Array.from({length: Math.round(lengthMm / stepMm) - 1}, (_, i) => x + (i + 1) * stepMm)
  return [
    path('bar', [x, y], [x + lengthMm, y]),
    path('bar', [x, y - 2], [x, y + 2]),
    path('bar', [x + lengthMm, y - 2], [x + lengthMm, y + 2]),
    ...inner.map((at) => path('bar', [at, y], [at, y + 1])),
    {is: 'text', ink: 'figure', at: [x + lengthMm + 2, y], text: words, sizeMm: 3, anchor: 'start'},
  ]
}

/** Draw both bars, 100 mm and 4 in, one above the other. */
export const bothBars = ([x, y]: Point): Shape[] => [
  ...bar([x, y], 100, 10, '100 mm'),
  ...bar([x, y + 6.5], 4 * 25.4, 25.4, '4 in'),
]
