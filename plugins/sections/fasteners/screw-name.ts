import type {Fastener} from '../../plan/shape/holes.ts'

/** Name a screw by its gauge. */
export const screwName = ({size}: Fastener): string => `number ${size}`
