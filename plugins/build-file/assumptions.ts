import type {BuildValues} from './schema/schema.ts'
import {boxRows} from './usual/box.ts'
import {neckRows} from './usual/neck.ts'
import {type AssumptionRow, hasNeck, inches, practice} from './usual/row.ts'
import {scaleRows} from './usual/scale.ts'
import {stringRows} from './usual/strings.ts'

/** What a build takes over from the settings of its journal, and why. */
export const inherited = {
  paths: ['units', 'ruler', 'saw.kerf', 'saw.trim', 'saw.plane'],
  why: 'set for the whole journal',
} as const

/** What the air and the wood are taken to be; the file has no key for them. */
export const surroundingRows: readonly {
  path: string
  value: string
  why: string
  applies: (values: BuildValues) => boolean
}[] = [
  {path: 'air', value: '20 °C', why: practice, applies: (v) => Boolean(v.box)},
  {
    path: 'wood',
    value: '12 % moisture',
    why: 'the moisture that published properties of wood are given at (Wood Handbook)',
    applies: hasNeck,
  },
]

/** What is left out and follows from the design: the plan computes it, after the usual values. */
export const followingRows = [
  {
    path: 'fingerboard.to',
    why: 'it stops at the box, or 1/4 in past the last line where that is further and the neck does not run through the box; common practice, no source',
    says: 'at the box, or 1/4 in past the last line where that is further and the neck does not run through the box',
  },
  {
    path: 'nut.groove',
    why: 'the diameter less the height of the strings at the nut',
    says: 'the diameter less the height at the nut',
  },
] as const satisfies readonly Omit<AssumptionRow, 'value'>[]

/** What screws and saws usually are. */
const shopRows: readonly AssumptionRow[] = [
  {
    path: 'screws.*.thread',
    value: (v, i) => {
      const length = v.screws?.[i]?.length
      return length && {mm: (length.mm * 2) / 3}
    },
    why: 'two thirds of the screw; common practice, no source',
    says: 'two thirds of its length',
  },
  {
    path: 'saw.kerf',
    value: (v) => (hasNeck(v) || v.parts || v.stock ? inches(1 / 8) : undefined),
    why: practice,
    says: '1/8',
  },
  {
    path: 'saw.trim',
    value: (v) => (hasNeck(v) || v.parts || v.stock ? inches(1 / 2) : undefined),
    why: practice,
    says: '1/2',
  },
  {
    path: 'saw.plane',
    value: (v) => (hasNeck(v) || v.parts || v.stock ? inches(1 / 16) : undefined),
    why: practice,
    says: '1/16 a face',
  },
]

/** Each usual value, after those that it depends on. Lengths keep their exact inches in a millimetre build. */
export const assumptionRows: readonly AssumptionRow[] = [
  ...scaleRows,
  ...neckRows,
  ...boxRows,
  ...stringRows,
  ...shopRows,
]
