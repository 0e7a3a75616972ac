import type {PlanPart} from '../part.ts'
import {stationOf} from '../station-of.ts'
import {cornerHz} from './corner.ts'
import {jackPlace} from './jack-place.ts'
import {pickupRoom} from './pickup-room.ts'

/**
 * Place the pickup and its jack (mm), with the room there is for both, and say below which frequency (Hz) a piezo
 * fades into a load of 1 MΩ, and of 50 kΩ. One under the bridge lies at the bridge line, on the centre line.
 */
export const pickup: PlanPart = ({values}, soFar) => {
  const given = values.pickup
  if (!given) return {}
  const {box, bridge} = soFar
  const isUnderBridge = given.under?.value === 'bridge'
  const stationMm = stationOf(given, box) ?? (isUnderBridge ? bridge?.stationMm : undefined)
  const offMm = given.off?.mm ?? 0
  const spot = stationMm === undefined ? undefined : {stationMm, offMm}
  const room = given.diameter && box && pickupRoom(spot, given.thickness?.mm, box)
  const hasStrapButtons = values.extras?.some(({value}) => /strap/i.test(value)) ?? false
  const jack = given.jack && jackPlace(given.jack, box ?? {}, hasStrapButtons)
  const nf = given.kind?.value === 'piezo' ? given.capacitance?.nf : undefined
  return {
    pickup: {
      ...(given.kind && {kind: given.kind.value}),
      ...(given.under && {under: given.under.value}),
      ...spot,
      ...(given.diameter && {diameterMm: given.diameter.mm}),
      ...(given.thickness && {thicknessMm: given.thickness.mm}),
      ...room,
      ...(nf !== undefined && {
        capacitanceNf: nf,
        cornerHz: cornerHz(nf, 1e6),
        cornerLowHz: cornerHz(nf, 5e4),
      }),
      ...(jack && {jack}),
    },
  }
}
