/** A measured value before anything is said of it; `unit` is mm, deg, N, cents or Hz. */
export interface Measure {
  /** Below `measured`: a path of the front matter, `lines.12`, `cents.12`, `resonance`, `strings.D4.tension`. */
  path: string
  measured: number
  unit: 'mm' | 'deg' | 'N' | 'cents' | 'Hz'
  planned?: number
}
