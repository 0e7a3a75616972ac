/** A stretch of a build's file. Lines and columns count from 1; the end is exclusive. */
export interface Place {
  line: number
  column: number
  endLine: number
  endColumn: number
}

/** The place of a problem that concerns the whole file. */
export const wholeFile: Place = {
  line: 1,
  column: 1,
  endLine: 1,
  endColumn: 1,
}
