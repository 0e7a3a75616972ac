import {inch} from './units.ts'

/** Sheets that home printers take, upright, in mm. A4: ISO 216. Letter (ANSI A, 8 1/2 × 11 in): ANSI/ASME Y14.1. */
export interface PaperRow {
  widthMm: number
  heightMm: number
  title: string
}

export const paper = {
  a4: {widthMm: 210, heightMm: 297, title: 'A4'},
  letter: {widthMm: inch(8.5), heightMm: inch(11), title: 'Letter'},
} satisfies Record<string, PaperRow>

export type PaperName = keyof typeof paper
