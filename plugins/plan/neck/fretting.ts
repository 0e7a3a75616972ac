import type {BuildValues} from '../../build-file/schema/schema.ts'
import {inch} from '../../tables/units.ts'
import type {NeckModel} from '../neck-shape/model.ts'
import {neckWidthAt} from '../neck-shape/taper.ts'
import type {Line} from '../scale/lines.ts'
import type {Scale} from '../scale/scale.ts'

export interface Fretting {
  slotWidthMm?: number | undefined
  slotDepthMm?: number | undefined
  /** Slot less tang. */
  fitMm?: number | undefined
  /** How thick the layer is that the slots are sawn in. */
  inMm?: number | undefined
  pieces?:
    | {
        label: string
        lengthMm: number
      }[]
    | undefined
  /** The wire to buy. */
  wireMm?: number | undefined
  overhangMm: number
  /**
   * The last fret does not lie on the fingerboard: how far that would have to reach; or where it can reach no further,
   * how many lines it holds.
   */
  offBoard?: {label: string; endMm: number; neededMm: number; holds?: number | undefined} | undefined
  /** What the crowns of the wire leave between them; absent while the wire's width is not known. */
  crowns?: Crowns | undefined
}

export interface Crowns {
  widthMm: number
  /** The wood that stays bare between the two nearest crowns. */
  leastBareMm: number
  /** The labels of those two. */
  between: string[]
}

/** How far a piece of wire is cut over the neck's edge at each side (mm): common practice, no source. */
const overhangMm = inch(1 / 8)
/** A slot is this much deeper than the tang (mm), so that the wire seats: common practice, no source. */
const slotClearsMm = 0.5

/**
 * Say how to fret the neck (mm): slot width and depth from the wire, a piece of wire for each line and one for a zero
 * fret, cut over both edges, and the wire to buy. A saw's own kerf, where given, is the slot's width. On a crowned face the slot follows
 * the crown, so its depth is the same along the line. The crowns' own width tells what they leave of the face.
 */
export function planFretting(
  {frets, nut, fingerboard}: BuildValues,
  {layup, taper, inside}: NeckModel,
  scale: Scale | undefined,
): Fretting | undefined {
  const lines = (scale?.fretted && scale.lines) || []
  const hasZero = nut?.kind?.value === 'zero-fret'
  if (lines.length === 0 && !hasZero) return undefined
  const zero = hasZero ? [{label: '0', widthMm: neckWidthAt(0, taper)}] : []
  const wanted = [...zero, ...lines]
  const cut = wanted.flatMap(({label, widthMm}) =>
    widthMm === undefined
      ? []
      : [{label, lengthMm: acrossMm(widthMm, fingerboard?.radius?.mm) + 2 * overhangMm}],
  )
  const pieces = cut.length === wanted.length ? cut : undefined
  const {tang, 'saw-kerf': kerf, 'tang-depth': tangDepth} = frets ?? {}
  return {
    slotWidthMm: (kerf ?? tang)?.mm,
    slotDepthMm: tangDepth && tangDepth.mm + slotClearsMm,
    fitMm: tang && kerf && kerf.mm - tang.mm,
    inMm: layup.layers[0]?.thicknessMm,
    pieces,
    wireMm: pieces?.reduce((sum, {lengthMm}) => sum + lengthMm, 0),
    overhangMm,
    offBoard: offBoard(lines, (frets?.['wire-width']?.mm ?? 0) / 2, {
      endMm: fingerboard?.to?.mm,
      mostMm: inside?.box[0],
    }),
    crowns: crownsOf(lines, frets?.['wire-width']?.mm),
  }
}

/** The way across the face (mm), along its curve where it is round: 2R·asin(w/2R). */
function acrossMm(widthMm: number, radiusMm: number | undefined): number {
  return radiusMm !== undefined && radiusMm > widthMm / 2
    ? 2 * radiusMm * Math.asin(widthMm / (2 * radiusMm))
    : widthMm
}

/** `mostMm` is how far a board can reach at most. */
function offBoard(
  lines: readonly Line[],
  halfMm: number,
  {endMm, mostMm = Infinity}: {endMm: number | undefined; mostMm: number | undefined},
): Fretting['offBoard'] {
  const last = lines.at(-1)
  if (!last || endMm === undefined) return undefined
  const neededMm = last.fromNutMm + halfMm
  if (neededMm <= endMm + 1e-6) return undefined
  const holds = lines.filter(({fromNutMm}) => fromNutMm + halfMm <= mostMm).length
  return {label: last.label, endMm, neededMm, ...(holds < lines.length ? {holds} : {})}
}

function crownsOf(lines: readonly Line[], widthMm: number | undefined): Crowns | undefined {
  const last = lines.reduce(
    (least, line, i) => (i > 0 && line.fromPreviousMm < lines[least]!.fromPreviousMm ? i : least),
    1,
  )
  const [before, after] = [lines[last - 1], lines[last]]
  if (widthMm === undefined || !before || !after) return undefined
  return {widthMm, leastBareMm: after.fromPreviousMm - widthMm, between: [before.label, after.label]}
}
