import {type StringMaterial, stringMaterials, usualCores, usualSoftCores} from '../tables/strings.ts'
import {inch, inchMm} from '../tables/units.ts'
import type {BuildValues} from './schema.ts'
import type {Words} from './values.ts'

/** A value that is assumed where the file leaves it out: the trade's usual one, and why. */
interface AssumptionRow {
  path: string
  /** The path that it is listed under, where that is a shorter one. */
  listed?: string
  /**
   * In words as a maker would write it, or in mm; nothing where it does not apply.
   * A path with `*` is asked once for each item of its list, counted from 0.
   */
  value: (values: BuildValues, item: number) => string | {mm: number} | undefined
  why: string
  /** For the key reference. */
  says: string
}

/** Why a usual value is taken, unless its row says more. */
export const practice = 'common practice, no source'

/** What a build takes over from the settings of its journal, and why. */
export const inherited = {
  paths: ['units', 'ruler', 'saw.kerf', 'saw.trim', 'saw.plane'],
  why: 'set for the whole journal',
} as const

const inches = (count: number) => ({mm: inch(count)})

const hasStrings = (v: BuildValues) => (v.strings?.length ?? 0) > 0
const hasNeck = (v: BuildValues) => Boolean(v.neck ?? v.box ?? v.scale)
const isFretted = (v: BuildValues) => v.scale?.fretted?.value === true
const isNylon = (v: BuildValues) =>
  hasStrings(v) && v.strings!.every((string) => string.material?.value === 'nylon')
const isSoft = (v: BuildValues, at: number) => {
  const material = v.strings?.[at]?.material?.value as StringMaterial | undefined
  return material !== undefined && stringMaterials[material].feel === 'nylon'
}
const slides = (v: BuildValues) => v.play?.value === 'slide' || (v.play?.value === 'both' && !isFretted(v))
const laminationsMm = (v: BuildValues) =>
  v.neck?.laminations?.reduce((sum, layer) => sum + (layer.thickness?.mm ?? Number.NaN), 0)

/** What laminations that come to the neck's thickness by themselves carry on top of it: fingerboard and cap, in mm. */
function carriedMm(v: BuildValues): number {
  const sheetsMm = (v.fingerboard?.thickness?.mm ?? 0) + (v.neck?.cap?.thickness?.mm ?? 0)
  const [sumMm = Number.NaN, wantedMm = 0] = [laminationsMm(v), v.neck?.thickness?.mm]
  return sumMm >= wantedMm - 1e-6 && sumMm + sheetsMm > wantedMm + inch(1 / 8) ? sheetsMm : 0
}

function repeats(pattern: {value: number}[] | undefined): string | undefined {
  if (!pattern?.length) return undefined
  return String(pattern.at(-1)!.value === 12 ? pattern.length * 2 : pattern.length)
}

/** Millimetres to a value only where everything it is made of is known. */
const known = (mm: number | undefined) => (mm !== undefined && Number.isFinite(mm) ? {mm} : undefined)

/** The file leaves the height at the nut to be assumed. */
const isNutDrawn = (v: BuildValues) =>
  hasStrings(v) && Boolean(v.scale?.length) && !(v.action?.octave && v.bridge?.height)
const usualNutMm = (v: BuildValues) => (slides(v) ? inch(1 / 8) : isFretted(v) ? inch(0.02) : inch(1 / 32))
const isRod = (v: BuildValues) => v.nut?.kind?.value === 'rod' || v.nut?.kind?.value === 'bolt'

/** What a nut comes to by itself, above the frets’ crowns where there are any (mm). */
function nutOwnMm(v: BuildValues): number | undefined {
  const {nut, frets} = v
  if (nut?.kind?.value === 'zero-fret') return isFretted(v) ? 0 : frets?.crown?.mm
  if (!isRod(v) || !nut?.diameter || !nut.groove) return undefined
  const mm = nut.diameter.mm - nut.groove.mm - (isFretted(v) ? (frets?.crown?.mm ?? Number.NaN) : 0)
  return mm > 0 ? mm : undefined
}

/** Where only a rod's thickness is known: what it comes to with a quarter of it in its groove (mm). */
function thinRodMm(v: BuildValues): number {
  const {nut, frets} = v
  const mm =
    isRod(v) && nut?.diameter ? 0.75 * nut.diameter.mm - (isFretted(v) ? (frets?.crown?.mm ?? 0) : 0) : 0
  return mm > 0 ? mm : Number.POSITIVE_INFINITY
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
    why: 'it stops at the box, or 1/4 in past the last line where that is further; common practice, no source',
    says: 'at the box, or 1/4 in past the last line where that is further',
  },
  {
    path: 'nut.groove',
    why: 'the diameter less the height of the strings at the nut',
    says: 'the diameter less the height at the nut',
  },
] as const satisfies readonly Omit<AssumptionRow, 'value'>[]

/** Each usual value, after those that it depends on. Lengths keep their exact inches in a millimetre build. */
export const assumptionRows: readonly AssumptionRow[] = [
  {path: 'handed', value: () => 'right', why: practice, says: 'right'},
  {path: 'publish', value: () => 'true', why: practice, says: 'true'},
  {
    path: 'status',
    value: (v) => (v.started ? 'on the bench' : 'idea'),
    why: 'on the bench once started, an idea until then',
    says: 'idea, or on the bench once started',
  },
  {
    path: 'scale.fretted',
    value: (v) => (v.scale || hasStrings(v) ? 'false' : undefined),
    why: practice,
    says: 'false',
  },
  {
    path: 'play',
    value: (v) => (isFretted(v) ? 'fingers' : 'slide'),
    why: practice,
    says: 'slide if not fretted, else fingers',
  },
  {
    path: 'scale.pattern',
    value: (v) => (v.scale?.length ? 'chromatic' : undefined),
    why: practice,
    says: 'chromatic',
  },
  {
    path: 'scale.lines',
    value: (v) => {
      const pattern = v.scale?.pattern
      if (!v.scale?.length) return undefined
      return Array.isArray(pattern) ? repeats(pattern) : pattern?.value === 'diatonic' ? '14' : '19'
    },
    why: practice,
    says: '19 if chromatic, 14 if diatonic',
  },
  {
    path: 'scale.temperament',
    value: (v) => (v.scale?.length ? 'equal' : undefined),
    why: practice,
    says: 'equal',
  },
  {
    path: 'reference-pitch',
    value: (v) => (hasStrings(v) ? '440' : undefined),
    why: 'ISO 16, standard tuning frequency',
    says: '440',
  },

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

  {path: 'box.sides', value: (v) => (v.box ? inches(3 / 16) : undefined), why: practice, says: '3/16'},
  {path: 'box.top.thickness', value: (v) => (v.box ? inches(1 / 8) : undefined), why: practice, says: '1/8'},
  {path: 'box.back', value: (v) => (v.box ? inches(1 / 8) : undefined), why: practice, says: '1/8'},
  {
    path: 'bridge.on',
    value: (v) => (v.box || v.bridge ? (v.neck?.joins?.value === 'on top' ? 'neck' : 'top') : undefined),
    why: practice,
    says: 'neck where it joins on top, else top',
  },
  {
    path: 'bridge.from-tail',
    value: (v) => (v.box && !v.box.at && v.box.length ? {mm: v.box.length.mm / 5} : undefined),
    why: 'a fifth of the box’s length; common practice, no source',
    says: "a fifth of the box's length, where neither it nor box.at is given",
  },
  {
    path: 'neck.length',
    value: (v) => {
      const {scale, box, bridge, head, anchors} = v
      if (!scale?.length || !box?.length || !head?.length || v.neck?.joins?.value === 'end') return undefined
      const tail = box.at
        ? box.at.mm + box.length.mm
        : bridge?.['from-tail']
          ? scale.length.mm + bridge['from-tail'].mm
          : undefined
      if (tail === undefined) return undefined
      // Anchors further out need 1/4 in of wood behind them; a tailpiece hooks over the end.
      const anchor = anchors?.at?.mm ?? (anchors?.along ? tail - box.length.mm + anchors.along.mm : tail)
      const body = anchors?.body?.mm ?? anchors?.['string-hole']?.mm ?? 0
      const behind = anchors?.kind?.value === 'tailpiece' ? 0 : body / 2 + inch(1 / 4)
      return {mm: head.length.mm + Math.max(tail + inchMm, anchor + behind)}
    },
    why: 'the neck ends 1 in past the box, or 1/4 in past anchors further out; common practice, no source',
    says: 'as long as it must be, 1 in past the box',
  },

  {
    path: 'strings.*.material',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge && !gauge.wound && gauge.mm <= inch(0.022) + 1e-9 ? 'steel' : undefined
    },
    why: 'plain strings up to .022 are steel; common practice, no source',
    says: 'steel where plain and up to .022',
  },
  {
    path: 'strings.*.wrap',
    value: (v, i) => {
      if (!v.strings?.[i]?.gauge?.wound) return undefined
      return isSoft(v, i) ? 'silver-plated copper' : 'nickel-plated steel'
    },
    why: practice,
    says: 'nickel-plated steel where wound, silver-plated copper on nylon, gut or fluorocarbon',
  },
  {
    path: 'strings.*.core',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge?.wound && !isSoft(v, i) ? {mm: usualCoreMm(gauge.mm)} : undefined
    },
    why: 'by the gauge; the pull hardly depends on it; common practice, no source',
    says: '0.60 of the gauge at .020, 0.50 at .030, 0.42 at .042; on nylon 0.65 at .029, 0.44 at .043',
  },
  {
    path: 'strings.*.core',
    value: (v, i) => {
      const gauge = v.strings?.[i]?.gauge
      return gauge?.wound && isSoft(v, i) ? {mm: usualCoreMm(gauge.mm, usualSoftCores)} : undefined
    },
    why: 'about 0.48 mm, after three published nylon strings; the pull depends on it',
    says: '0.65 of the gauge at .029, 0.44 at .043',
  },
  {
    path: 'spacing.slots',
    value: (v) => (hasStrings(v) && hasNeck(v) ? 'centres' : undefined),
    why: practice,
    says: 'centres',
  },
  {
    path: 'spacing.nut',
    value: (v) => {
      const width = v.neck?.width?.nut?.mm
      if (!hasStrings(v) || width === undefined) return undefined
      return v.strings!.length === 1 ? {mm: 0} : width > inch(3 / 8) ? {mm: width - inch(3 / 8)} : undefined
    },
    why: 'the width less 3/16 in at each side; common practice, no source',
    says: 'the width less 3/16 in at each side',
  },
  {
    path: 'spacing.bridge',
    value: (v) => known(v.spacing?.nut?.mm),
    why: 'as at the nut; common practice, no source',
    says: 'as at the nut',
  },
  {
    path: 'action.nut',
    value: (v) => (isNutDrawn(v) ? known(nutOwnMm(v)) : undefined),
    why: 'what the nut itself comes to: a rod less its groove, or a zero fret’s own crown',
    says: 'a rod or bolt less its groove; a zero fret its own crown',
  },
  {
    path: 'action.nut',
    value: (v) => (isNutDrawn(v) ? {mm: Math.min(usualNutMm(v), thinRodMm(v))} : undefined),
    why: practice,
    says: 'slide 1/8; fingers on frets 0.020; fingers without frets 1/32',
  },
  {
    path: 'action.octave',
    value: (v) => {
      if (!hasStrings(v) || !v.scale?.length || v.bridge?.height) return undefined
      if (slides(v)) return inches(7 / 32)
      return isFretted(v) ? (isNylon(v) ? inches(7 / 64) : inches(3 / 32)) : inches(1 / 8)
    },
    why: practice,
    says: 'slide 7/32; fingers on steel frets 3/32, nylon 7/64; fingers without frets 1/8',
  },
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

/** Say how thick the core of a wound string of this gauge usually is; both in mm. Between the table's rows in a straight line. */
export function usualCoreMm(gaugeMm: number, usual = usualCores): number {
  const gaugeIn = gaugeMm / inchMm
  const upper = usual.findIndex((row) => gaugeIn <= row.gaugeIn)
  const [a, b] = upper > 0 ? [usual[upper - 1]!, usual[upper]!] : []
  if (!a || !b) return gaugeMm * usual.at(upper)!.coreFraction
  const part = (gaugeIn - a.gaugeIn) / (b.gaugeIn - a.gaugeIn)
  return gaugeMm * (a.coreFraction + part * (b.coreFraction - a.coreFraction))
}
