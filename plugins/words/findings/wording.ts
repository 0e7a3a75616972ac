/** A finding in a maker's words. */
export interface Wording {
  /** What was found and what would do. */
  message: string
  /** Values that would do, as a maker writes them; putting the first one where it was found mends it. */
  expected?: string[] | undefined
  note?: string | undefined
}

/** A value as the file has it; undefined where it has none. */
export type Written = string | undefined

/** The path of a value to change, and what would do, in mm. */
export interface WouldDo {
  path: string
  mm: number
}

/** List the one value that would do, where there is one. */
export const only = (text: string | undefined): string[] | undefined => (text ? [text] : undefined)

/** Name a value to change by the last key of its path. */
export const keyOf = ({path}: WouldDo): string => path.slice(path.lastIndexOf('.') + 1)
