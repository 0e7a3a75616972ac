/** A column of a linear program: its cost and its entries by row. */
export interface Column {
  cost: number
  rows: readonly number[]
  values: readonly number[]
}

/**
 * Keep a feasible basis of the program: minimise cost·x where the columns sum to `rhs` and x is not negative.
 * Revised simplex with the inverse held whole; columns are brought in one at a time by the caller, who prices them.
 */
export class Simplex<C extends Column> {
  readonly size: number
  readonly basis: C[]
  /** How much of each basic column is taken. */
  readonly takes: Float64Array
  private readonly rhs: readonly number[]
  private readonly inverse: Float64Array
  private sinceInverted = 0

  /** `basis` must be regular, and feasible for `rhs`. */
  constructor(rhs: readonly number[], basis: C[]) {
    this.size = rhs.length
    this.rhs = rhs
    this.basis = basis
    this.inverse = new Float64Array(this.size * this.size)
    this.takes = new Float64Array(this.size)
    this.invert()
  }

  /** The price of each row: cost of the basis times its inverse. */
  duals(): Float64Array {
    const {size, inverse} = this
    const duals = new Float64Array(size)
    for (let i = 0; i < size; i++) {
      const cost = this.basis[i]!.cost
      if (cost !== 0) for (let j = 0; j < size; j++) duals[j]! += cost * inverse[i * size + j]!
    }
    return duals
  }

  /** The cost of what is taken. */
  cost(): number {
    return this.basis.reduce((sum, column, i) => sum + column.cost * this.takes[i]!, 0)
  }

  /** Bring a column into the basis; false where nothing bounds it or the step would be unsound. */
  enter(column: C): boolean {
    const {size, inverse, takes} = this
    const step = new Float64Array(size)
    for (let i = 0; i < size; i++) {
      let sum = 0
      for (let e = 0; e < column.rows.length; e++)
        sum += inverse[i * size + column.rows[e]!]! * column.values[e]!
      step[i] = sum
    }
    let ratio = Infinity
    for (let i = 0; i < size; i++)
      if (step[i]! > 1e-9) ratio = Math.min(ratio, (Math.max(takes[i]!, 0) + 1e-10) / step[i]!)
    let leaves = -1
    for (let i = 0; i < size; i++)
      if (step[i]! > 1e-9 && Math.max(takes[i]!, 0) / step[i]! <= ratio)
        if (leaves < 0 || step[i]! > step[leaves]!) leaves = i
    if (leaves < 0) return false
    const pivot = step[leaves]!
    const amount = Math.max(takes[leaves]!, 0) / pivot
    for (let i = 0; i < size; i++) takes[i]! -= amount * step[i]!
    takes[leaves] = amount
    this.basis[leaves] = column
    for (let j = 0; j < size; j++) inverse[leaves * size + j]! /= pivot
    for (let i = 0; i < size; i++) {
      const factor = step[i]!
      if (i === leaves || factor === 0) continue
      for (let j = 0; j < size; j++) inverse[i * size + j]! -= factor * inverse[leaves * size + j]!
    }
    if (++this.sinceInverted >= 60) this.invert()
    return true
  }

  /** Compute the inverse and what is taken afresh (Gauss and Jordan, with row exchange). */
  private invert(): void {
    const {size, inverse} = this
    const wide = 2 * size
    const rows = Array.from({length: size}, (_, i) => {
      const row = new Float64Array(wide)
      row[size + i] = 1
      return row
    })
    this.basis.forEach((column, j) => {
      column.rows.forEach((i, e) => {
        rows[i]![j] = column.values[e]!
      })
    })
    for (let j = 0; j < size; j++) {
      let best = j
      for (let i = j + 1; i < size; i++) if (Math.abs(rows[i]![j]!) > Math.abs(rows[best]![j]!)) best = i
      ;[rows[j], rows[best]] = [rows[best]!, rows[j]!]
      const row = rows[j]!
      const pivot = row[j]!
      for (let c = j; c < wide; c++) row[c]! /= pivot
      for (let i = 0; i < size; i++) {
        const factor = rows[i]![j]!
        if (i !== j && factor !== 0) for (let c = j; c < wide; c++) rows[i]![c]! -= factor * row[c]!
      }
    }
    for (let i = 0; i < size; i++) {
      inverse.set(rows[i]!.subarray(size), i * size)
      this.takes[i] = this.rhs.reduce((sum, value, j) => sum + inverse[i * size + j]! * value, 0)
    }
    this.sinceInverted = 0
  }
}

/** The column whose price most exceeds its cost; none where no column's does. */
export function mostWanted<C extends Column>(columns: readonly C[], duals: Float64Array): C | undefined {
  let least = -1e-9
  let found: C | undefined
  for (const column of columns) {
    const {rows, values} = column
    let reduced = column.cost
    for (let e = 0; e < rows.length; e++) reduced -= duals[rows[e]!]! * values[e]!
    if (reduced < least) {
      least = reduced
      found = column
    }
  }
  return found
}
