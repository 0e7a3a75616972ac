/** A value of the build file that would do, in mm (or as its path has it). */
export interface WouldDo {
  path: string
  mm: number
}

const slack = 1e-6

/** Go to the next mark of the ruler on one side (mm); a length that stands on a mark stays. */
export function toMark(mm: number, rulerMm: number, side: 'down' | 'up'): number {
  const marks = mm / rulerMm
  const near = Math.round(marks)
  if (Math.abs(marks - near) < slack) return near * rulerMm
  return (side === 'down' ? Math.floor(marks) : Math.ceil(marks)) * rulerMm
}
