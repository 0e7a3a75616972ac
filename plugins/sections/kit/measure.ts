import {fractions} from './fraction.ts'
import {inline, text} from './inline.ts'
import type {Measure} from './nodes.ts'

/**
 * Write a quantity in the build's own unit, and in the other one, smaller, in brackets: `11 1/2 in (292.1 mm)`.
 * Both texts carry their units.
 */
export function measure(first: string, second?: string): Measure {
  return {
    type: 'measure',
    data: {hName: 'span', hProperties: {className: ['measure']}},
    children: [
      ...inline(fractions(first)),
      ...(second === undefined
        ? []
        : [
            text(' '),
            {type: 'small' as const, data: {hName: 'small'}, children: inline(fractions(`(${second})`))},
          ]),
    ],
  }
}
