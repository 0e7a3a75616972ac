import type {Plan} from '../../plan/shape/plan.ts'
import {neckWidth} from '../instrument/neck-width.ts'
import {placedBox} from '../instrument/placed-box.ts'

export type StationKey = 'head' | 'nut' | 'octave' | 'box' | 'bridge' | 'anchors' | 'boxTail' | 'tail'

/** A place that makers measure to: mm from the nut line, and how far from the centre line it reaches. */
export interface Station {
  key: StationKey
  name: string
  stationMm: number
  halfWidthMm: number
}

/** List the places along an instrument that its drawing names, head end to tail end, as far as they are known. */
export function stations(plan: Plan): Station[] {
  const {outline, scale, bridge, anchors = []} = plan
  const {neck, head} = outline ?? {}
  const box = placedBox(plan)
  const octave = scale?.lines?.find(({semitones}) => Math.abs(semitones - 12) < 0.01)
  const half = (stationMm = 0) => (neck ? neckWidth(neck, stationMm) / 2 : 0)
  const list: Station[] = []
  const add = (key: StationKey, name: string, stationMm: number | undefined, halfWidthMm: number) => {
    if (stationMm !== undefined) list.push({key, name, stationMm, halfWidthMm})
  }
  add('head', 'head end', head && -head.lengthMm, (head?.widthMm ?? 0) / 2)
  add('nut', 'nut line', neck && 0, half(0))
  add(
    'octave',
    `${scale?.fretted ? 'fret' : 'line'} ${octave?.label}`,
    octave?.fromNutMm,
    half(octave?.fromNutMm),
  )
  add('box', 'box, head side', box?.atMm, (box?.widthMm ?? 0) / 2)
  add('bridge', 'bridge line', bridge?.stationMm, (outline?.bridge?.lengthMm ?? 0) / 2)
  add(
    'anchors',
    'string anchors',
    anchors[0]?.stationMm,
    Math.max(0, ...anchors.map(({offMm}) => Math.abs(offMm))) + (outline?.anchors?.bodyMm ?? 0) / 2,
  )
  add('boxTail', 'box, tail side', box?.tailMm, (box?.widthMm ?? 0) / 2)
  add('tail', 'tail end', neck?.isOpen ? undefined : neck?.tailMm, half(neck?.tailMm))
  return list.sort((a, b) => a.stationMm - b.stationMm)
}
