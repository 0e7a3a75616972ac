/** How one kind of line is drawn on paper beside text 3.5 mm high; drawings with other text scale it alike. */
export interface Ink {
  widthMm: number
  /** Drawn and left out by turns; absent: unbroken. */
  dashMm?: readonly number[]
  /** The area inside is inked too. */
  filled?: true
  /** Its layer in files for machines. */
  layer: string
}

/**
 * The lines of a drawing: two widths a step of ISO 128 apart (0.5 and 0.25 mm), finer ones for what helps,
 * and broken ones that tell hidden edges, centre lines and pencil lines apart without colour.
 */
export const inks = {
  outline: {widthMm: 0.5, layer: 'OUTLINE'},
  edge: {widthMm: 0.25, layer: 'EDGE'},
  hidden: {widthMm: 0.25, dashMm: [2.4, 1.2], layer: 'HIDDEN'},
  centre: {widthMm: 0.18, dashMm: [6, 1.2, 0.6, 1.2], layer: 'CENTRE'},
  string: {widthMm: 0.18, layer: 'STRING'},
  grain: {widthMm: 0.13, layer: 'GRAIN'},
  dimension: {widthMm: 0.18, layer: 'DIMENSION'},
  arrow: {widthMm: 0, filled: true, layer: 'DIMENSION'},
  dot: {widthMm: 0, filled: true, layer: 'DOT'},
  nut: {widthMm: 0.35, layer: 'NUT'},
  cut: {widthMm: 0.5, layer: 'CUT'},
  slot: {widthMm: 0.18, layer: 'SLOT'},
  pencil: {widthMm: 0.18, dashMm: [3, 1.2], layer: 'PENCIL'},
  hole: {widthMm: 0.18, dashMm: [0.7, 0.7], layer: 'HOLE'},
  punch: {widthMm: 0.25, layer: 'PUNCH'},
  join: {widthMm: 0.18, layer: 'JOIN'},
  bar: {widthMm: 0.25, layer: 'BAR'},
  figure: {widthMm: 0, filled: true, layer: 'FIGURE'},
  name: {widthMm: 0, filled: true, layer: 'NAME'},
} satisfies Record<string, Ink>

export type InkName = keyof typeof inks

/** The text height, in mm, that the widths above are meant for (ISO 3098: 3.5 mm). */
export const paperTextMm = 3.5
