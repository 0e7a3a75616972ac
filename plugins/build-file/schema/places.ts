import {length} from './kinds.ts'

export const at = length('Distance from the nut line, towards the bridge.', {
  signed: true,
  max: 3000,
  min: -1000,
})

export const along = length("Distance from the box's head-side edge towards its tail.", {
  signed: true,
  max: 2000,
  min: -1000,
})

export const off = length('Distance off the centre line, towards the last string.', {
  signed: true,
  max: 500,
  min: -500,
})
