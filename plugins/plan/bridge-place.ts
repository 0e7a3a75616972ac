import type {PlanPart} from './part.ts'

/**
 * Place the bridge: its line lies at the scale length (mm from the nut line, and along the box where that lies
 * somewhere); what it stands on, where the file or the way the neck joins says so.
 */
export const bridgePlace: PlanPart = ({values}, soFar) => {
  const stationMm = values.scale?.length?.mm
  if (stationMm === undefined) return {}
  const atMm = soFar.box?.atMm
  const on = values.bridge?.on?.value
  return {
    bridge: {
      ...soFar.bridge,
      stationMm,
      ...(atMm !== undefined && {alongMm: stationMm - atMm}),
      ...(on && {on}),
    },
  }
}
