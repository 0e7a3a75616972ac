import type {Task} from './task.ts'

/** What must be left at most for less to be left than so much (mm³): volumes differ by whole steps. */
export const lessLeft = ({step}: Task, volume: number): number => volume - Math.max(step / 2, 1e-9 * volume)
