import {writeBare} from '../../plugins/build-file/quantities/write-length.ts'
import {leavesOf, textAt, valueAt} from '../../plugins/build-file/schema/path.ts'
import {frameOf, widthPx} from '../../plugins/drawings/hero/frame.ts'
import {instrumentOf} from '../../plugins/drawings/instrument/instrument.ts'
import type {Settled} from '../../plugins/plan/kit/settled.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {lengthWords} from '../../plugins/words/lengths.ts'
import type {Reading} from './session.ts'

/** Something on the drawing that can be moved along the instrument. */
export interface Handle {
  name: HandleName
  label: string
  /** Where it is, from the nut line (mm), and what can be reached. */
  mm: number
  leastMm: number
  mostMm: number
  /** Where it stands on the drawing. */
  xPx: number
  yPx: number
  /** Its place in words. */
  says: string
}

export type HandleName =
  | 'headEnd'
  | 'bridge'
  | 'boxHead'
  | 'boxTail'
  | 'tailEnd'
  | `post${number}`
  | `hole${number}`

/** How the drawing is scaled, and how far apart the marks of the ruler are that handles stop at (mm). */
export interface Scale {
  pxPerMm: number
  widthPx: number
  heightPx: number
  rulerMm: number
}

/** Find what can be moved on the drawing of a plan, and where it stands there; nothing where nothing is drawn. */
export function handlesOf(plan: Plan): {handles: Handle[]; scale: Scale} | undefined {
  const instrument = instrumentOf(plan)
  const frame = frameOf(instrument)
  if (!frame) return undefined
  const {neck, head, box} = instrument
  const mostMm = frame.bottomMm + 300
  const handle = (name: HandleName, label: string, mm: number | undefined, offMm = 0): Handle[] =>
    mm === undefined
      ? []
      : [
          {
            name,
            label,
            mm,
            leastMm: mm < 0 ? -400 : 25,
            mostMm: mm < 0 ? -10 : mostMm,
            xPx: frame.frontPx + offMm * frame.scale,
            yPx: frame.nutPx + mm * frame.scale,
            says: `${lengthWords(Math.abs(mm), plan)} ${mm < 0 ? 'above' : 'from'} the nut`,
          },
        ]
  const edgeMm = box ? box.widthMm / 2 : 0
  const posts = plan.tuners ?? []
  const soundHoles = plan.box?.soundHoles ?? []
  return {
    handles: apart(frame.frontPx, [
      ...handle('headEnd', 'End of the head', head && -head.lengthMm),
      ...posts.flatMap(({stationMm, offMm, name}, i) =>
        handle(`post${i + 1}`, `Post of ${name ?? `string ${i + 1}`}`, stationMm, instrument.x(offMm)),
      ),
      ...handle('boxHead', 'Head side of the box', box?.atMm, edgeMm),
      ...handle('bridge', 'Bridge line', plan.scale?.lengthMm),
      ...soundHoles.flatMap(({stationMm, offMm}, i) =>
        handle(`hole${i + 1}`, `Sound hole ${i + 1}`, stationMm, instrument.x(offMm)),
      ),
      // Half out of the box, in whose corner the side's name stands, and clear of its figure.
      ...handle('boxTail', 'Tail side of the box', box?.tailMm, -edgeMm - 6 / frame.scale),
      ...handle('tailEnd', 'End of the neck', neck?.tailMm),
    ]),
    scale: {
      pxPerMm: frame.scale,
      widthPx,
      heightPx: Math.ceil(frame.heightPx),
      rulerMm: plan.rulerMm,
    },
  }
}

/** A finger needs so much room for each (px). */
const roomPx = {x: 28, y: 26}

/** Move handles aside that would lie on another: a post's outwards, past its button and its name. */
function apart(middlePx: number, handles: readonly Handle[]): Handle[] {
  const laid: Handle[] = []
  for (const handle of handles) {
    const isFree = (xPx: number) =>
      laid.every((one) => Math.abs(one.xPx - xPx) >= roomPx.x || Math.abs(one.yPx - handle.yPx) >= roomPx.y)
    const outwards = handle.xPx < middlePx ? -1 : 1
    const steps = handle.name.startsWith('post') ? [0, 2 * outwards, -2 * outwards] : [0, 1, -1, 2, -2, 3, -3]
    const aside = steps.map((step) => handle.xPx + step * roomPx.x)
    laid.push({...handle, xPx: aside.find(isFree) ?? handle.xPx})
  }
  return laid
}

/**
 * Say which values of the file change where a handle is moved to a place (mm from the nut line). What is proposed of the
 * list that it belongs to is then written down.
 */
export function moved(
  name: HandleName,
  mm: number,
  {plan, settled}: Pick<Reading, 'plan' | 'settled'>,
): Setting[] {
  const {scale, box, outline, units, rulerMm} = plan
  const write = (path: string, value: number): Setting[] =>
    value > 0 ? [[path, writeBare(value, {units, rulerMm})]] : []
  const headMm = outline?.head?.lengthMm ?? 0
  switch (name) {
    case 'bridge':
      return write('scale.length', mm)
    case 'headEnd':
      return write('head.length', -mm)
    case 'tailEnd':
      return write('neck.length', headMm + mm)
    case 'boxHead':
      if (box?.placedBy === 'box.at') return write('box.at', mm)
      return write('bridge.from-tail', mm + (box?.outside?.lengthMm ?? 0) - (scale?.lengthMm ?? 0))
    case 'boxTail': {
      const length = write('box.length', mm - (box?.atMm ?? 0))
      // The side towards the head stays where it is.
      if (box?.placedBy !== 'box.at')
        return [...length, ...write('bridge.from-tail', mm - (scale?.lengthMm ?? 0))]
      const isGiven = textAt(settled.values, 'box.at') !== undefined
      return isGiven ? length : [...write('box.at', box.atMm ?? 0), ...length]
    }
    default:
      return name.startsWith('hole')
        ? [
            ...proposedOf(settled, 'box.holes'),
            ...holeMoved(Number(name.slice('hole'.length)), mm, {plan, settled}),
          ]
        : [
            ...['tuners.at', 'tuners.off'].flatMap((list) => proposedOf(settled, list)),
            [`tuners.at.${name.slice('post'.length)}`, writeBare(mm, {units, rulerMm})],
          ]
  }
}

type Setting = [path: string, text: string]

/** A hole is placed from the nut line, or along the box. */
function holeMoved(
  number: number,
  mm: number,
  {plan, settled}: Pick<Reading, 'plan' | 'settled'>,
): Setting[] {
  const isAlong = settled.values.box?.holes?.[number - 1]?.along !== undefined
  const place = isAlong ? mm - (plan.box?.atMm ?? 0) : mm
  return place > 0 ? [[`box.holes.${number}.${isAlong ? 'along' : 'at'}`, writeBare(place, plan)]] : []
}

/** Write what a list proposes. */
const proposedOf = ({values}: Settled, list: string): Setting[] =>
  leavesOf(valueAt(values, list), list).flatMap(([path, value]): Setting[] =>
    (value as {proposed?: true}).proposed ? [[path, value.text]] : [],
  )
