const settledMm = 1e-6
const mostSteps = 1000

/** Errors, and how fast each grows with each of the numbers (mm) that they hang on. */
export interface Fit {
  errors: readonly number[]
  /** By number, then by error. */
  slopes: readonly (readonly number[])[]
}

/**
 * Find the one or two numbers (mm) near `start` that make the sum of the squares of the errors least, by Levenberg's
 * and Marquardt's damped steps. Undefined where the errors at the start are no numbers.
 */
export function leastSquares(
  fitOf: (at: readonly number[]) => Fit,
  start: readonly number[],
): number[] | undefined {
  let at = [...start]
  let fit = fitOf(at)
  let least = sumOfSquares(fit.errors)
  if (!Number.isFinite(least)) return undefined
  let damping = 1e-6
  for (let step = 0; step < mostSteps; step++) {
    const move = dampedStep(fit, damping)
    if (Math.max(...move.map(Math.abs)) < settledMm) break
    const next = at.map((value, i) => value + move[i]!)
    const tried = fitOf(next)
    const sum = sumOfSquares(tried.errors)
    if (sum < least) {
      ;[at, fit, least] = [next, tried, sum]
      damping /= 10
    } else {
      damping *= 10
      if (damping > 1e12) break
    }
  }
  return at
}

/** Solve (JᵀJ + damping·diagonal)·step = −Jᵀ·errors. */
function dampedStep({errors, slopes: [first, second]}: Fit, damping: number): number[] {
  const a = dot(first!, first!) * (1 + damping)
  const down = -dot(first!, errors)
  if (!second) return [down / a]
  const b = dot(first!, second)
  const d = dot(second, second) * (1 + damping)
  const across = -dot(second, errors)
  const determinant = a * d - b * b
  return [(d * down - b * across) / determinant, (a * across - b * down) / determinant]
}

function dot(a: readonly number[], b: readonly number[]): number {
  let sum = 0
  for (let row = 0; row < a.length; row++) sum += a[row]! * b[row]!
  return sum
}

function sumOfSquares(values: readonly number[]): number {
  let sum = 0
  for (const one of values) sum += one * one
  return sum
}

/** Give the root of the mean of the squares; 0 of nothing. */
export function rootMeanSquare(values: readonly number[]): number {
  return Math.sqrt(sumOfSquares(values) / Math.max(1, values.length))
}
