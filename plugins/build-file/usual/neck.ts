import {inch} from '../../tables/units.ts'
import type {BuildValues} from '../schema/schema.ts'
import type {Words} from '../schema/values.ts'
import {type AssumptionRow, hasNeck, inches, known, practice} from './row.ts'

const laminationsMm = (v: BuildValues) =>
  v.neck?.laminations?.reduce((sum, layer) => sum + (layer.thickness?.mm ?? Number.NaN), 0)

/** What laminations that come to the neck's thickness by themselves carry on top of it: fingerboard and cap, in mm. */
function carriedMm(v: BuildValues): number {
  const sheetsMm = (v.fingerboard?.thickness?.mm ?? 0) + (v.neck?.cap?.thickness?.mm ?? 0)
  const [sumMm = Number.NaN, wantedMm = 0] = [laminationsMm(v), v.neck?.thickness?.mm]
  return sumMm >= wantedMm - 1e-6 && sumMm + sheetsMm > wantedMm + inch(1 / 8) ? sheetsMm : 0
}

const ofStock = ({stock}: BuildValues, wood: string | undefined, key: 'density' | 'stiffness') =>
  stock?.find((piece) => piece[key] && piece.wood?.value === wood)?.[key]?.text

/** A wood that is described where its piece stands need not be described again where it is used. */
const woodRows = (
  [
    ['neck', (v) => v.neck],
    ['neck.laminations.*', (v, i) => v.neck?.laminations?.[i]],
    ['neck.cap', (v) => v.neck?.cap],
    ['head.plate', (v) => v.head?.plate],
    ['fingerboard', (v) => v.fingerboard],
  ] satisfies [string, (v: BuildValues, i: number) => {wood?: Words} | undefined][]
).flatMap(([path, part]) =>
  (['density', 'stiffness'] as const)
    .filter((key) => path !== 'head.plate' || key === 'density')
    .map(
      (key): AssumptionRow => ({
        path: `${path}.${key}`,
        value: (v, i) => ofStock(v, part(v, i)?.wood?.value, key),
        why: 'as the piece of that wood under stock has it',
        says: 'as a piece of that wood under stock has it',
      }),
    ),
)

/** What a neck, its head and its fingerboard usually are. */
export const neckRows: readonly AssumptionRow[] = [
  ...woodRows,
  {path: 'neck.joins', value: (v) => (hasNeck(v) ? 'on top' : undefined), why: practice, says: 'on top'},
  {
    path: 'neck.width.nut',
    listed: 'neck.width',
    value: (v) => (hasNeck(v) ? inches((v.strings?.length ?? 3) > 4 ? 2 : 1.5) : undefined),
    why: practice,
    says: '1 1/2 for up to four strings, 2 for more',
  },
  {
    path: 'neck.thickness',
    value: (v) => (v.neck?.laminations ? known(laminationsMm(v)) : hasNeck(v) ? inches(0.75) : undefined),
    why: 'the laminations’ sum, or 3/4 in by common practice, no source',
    says: "3/4, or the laminations' sum",
  },
  {
    path: 'neck.above-top',
    value: (v) => {
      if (!v.box) return undefined
      if (v.neck?.joins?.value === 'on top')
        return known((v.neck.thickness?.mm ?? Number.NaN) + carriedMm(v) - (v.box.notch?.depth?.mm ?? 0))
      return {mm: v.fingerboard?.thickness?.mm ?? 0}
    },
    why: 'on top: the neck’s thickness, with what laminations of that thickness carry, less what a notch lets in; through or at the end: the fingerboard’s',
    says: 'on top: the thickness, less what a notch lets in; through: the fingerboard',
  },
  {path: 'head.joint', value: (v) => (hasNeck(v) ? 'scarf' : undefined), why: practice, says: 'scarf'},
  {
    path: 'head.angle',
    value: (v) => (v.head?.joint?.value === 'scarf' ? '13' : undefined),
    why: practice,
    says: '13',
  },
  {
    path: 'head.length',
    value: (v) => (hasNeck(v) ? inches(3 + 1.25 * Math.ceil((v.strings?.length ?? 3) / 2)) : undefined),
    why: practice,
    says: '3 in and 1 1/4 in for every two strings begun',
  },
  {
    path: 'head.ledge',
    value: (v) => (v.head?.joint?.value === 'scarf' ? inches(0.25) : undefined),
    why: practice,
    says: '1/4',
  },

  {
    path: 'fingerboard.from',
    value: (v) => {
      if (!v.fingerboard) return undefined
      return v.nut?.kind?.value === 'zero-fret' ? {mm: -Math.max(v.head?.ledge?.mm ?? 0, inch(1 / 8))} : '0'
    },
    why: 'the nut line; under a zero fret it goes on to the ledge; common practice, no source',
    says: 'the nut line; under a zero fret the ledge',
  },
]
