import type {Plan} from '../../plan/shape/plan.ts'
import {neckWidth} from '../instrument/neck-width.ts'
import {placedBox} from '../instrument/placed-box.ts'

/** A place that makers measure to: its name, mm from the nut line, and how far out of the centre it begins. */
export interface Station {
  name: string
  stationMm: number
  halfWidthMm: number
}

/** List the places along an instrument that the drawing names, from head end to tail, as far as they are known. */
export function stations(plan: Plan): Station[] {
  const {outline, scale, anchors} = plan
  const box = placedBox(plan)
  const {neck, head, bridge} = outline ?? {}
  const half = (stationMm: number) => (neck ? neckWidth(neck, stationMm) / 2 : 0)
  const list: Station[] = []
  const add = (name: string, stationMm: number | undefined, halfWidthMm: number) => {
    if (stationMm !== undefined) list.push({name, stationMm, halfWidthMm})
  }
  add('head end', head && -head.lengthMm, (head?.widthMm ?? 0) / 2)
  add('nut line', neck && 0, half(0))
  const octave = scale?.lines?.find(({semitones}) => Math.abs(semitones - 12) < 0.01)
  add(`line ${octave?.label}`, octave?.fromNutMm, half(octave?.fromNutMm ?? 0))
  add('box edge', box?.atMm, (box?.widthMm ?? 0) / 2)
  add('bridge line', scale?.lengthMm, (bridge?.lengthMm ?? 2 * half(scale?.lengthMm ?? 0)) / 2)
  add('anchors', anchors?.[0]?.stationMm, Math.max(0, ...(anchors ?? []).map(({offMm}) => Math.abs(offMm))))
  add('box tail', box?.tailMm, (box?.widthMm ?? 0) / 2)
  add('neck end', neck && !neck.isOpen ? neck.tailMm : undefined, half(neck?.tailMm ?? 0))
  return list.sort((a, b) => a.stationMm - b.stationMm)
}
