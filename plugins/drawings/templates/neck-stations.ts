import type {Plan} from '../../plan/shape/plan.ts'
import {placedBox} from '../instrument/placed-box.ts'

/** A line square across the neck, in mm from the nut line. */
export interface NeckStation {
  stationMm: number
  name: string
  ink: 'pencil' | 'slot'
  isLine?: true
}

/** List everything that is drawn square across the neck; frets are sawn, all else is pencilled. */
export function neckStations(plan: Plan): NeckStation[] {
  const {scale, bridge, outline} = plan
  const neck = outline!.neck!
  const box = placedBox(plan)
  const list: NeckStation[] = [{stationMm: 0, name: 'nut line', ink: 'slot'}]
  const pencil = (name: string, stationMm: number | undefined) => {
    if (stationMm !== undefined && stationMm <= neck.tailMm) list.push({stationMm, name, ink: 'pencil'})
  }
  for (const {label, fromNutMm} of scale?.lines ?? [])
    if (fromNutMm <= neck.tailMm)
      list.push({
        stationMm: fromNutMm,
        name: `${scale?.fretted ? 'fret' : 'line'} ${label}`,
        ink: scale?.fretted ? 'slot' : 'pencil',
        isLine: true,
      })
  pencil('bridge line', bridge?.stationMm)
  pencil('box, head side', box?.atMm)
  pencil('box, tail side', box?.tailMm)
  pencil('round-over starts', neck.roundOver?.fromMm)
  pencil('round-over stops', neck.roundOver?.toMm)
  pencil('fingerboard ends', neck.fingerboard?.toMm)
  if (outline?.head && outline.head.ledgeMm > 0) pencil('slope starts', -outline.head.ledgeMm)
  return list
}
