/** A part to cut, sized as sawn (mm): where the build file implies or lists it, and why it has its size. */
export interface WantedPart {
  name: string
  /** As written; `any` where the file does not say. */
  wood: string
  /** Its row of the wood table: parts are cut from pieces of the same row. */
  woodRow: string
  lengthMm: number
  widthMm: number
  thicknessMm: number
  why: string
  /** Its path in the build file. */
  of: string
}
