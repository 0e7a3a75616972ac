const stepMm = 1e-4
const settledMm = 1e-6
const mostSteps = 1000

/**
 * Find the one or two numbers (mm) near `start` that make the sum of the squares of `errorsOf` least, by Levenberg's
 * and Marquardt's damped steps with numerical slopes. Undefined where the errors at the start are no numbers.
 */
export function leastSquares(
  errorsOf: (at: readonly number[]) => readonly number[],
  start: readonly number[],
): number[] | undefined {
  let at = [...start]
  let errors = errorsOf(at)
  let least = sumOfSquares(errors)
  if (!Number.isFinite(least)) return undefined
  let damping = 1e-6
  for (let step = 0; step < mostSteps; step++) {
    const move = dampedStep(errorsOf, at, errors, damping)
    if (Math.max(...move.map(Math.abs)) < settledMm) break
    const next = at.map((value, i) => value + move[i]!)
    const left = errorsOf(next)
    const sum = sumOfSquares(left)
    if (sum < least) {
      ;[at, errors, least] = [next, left, sum]
      damping /= 10
    } else {
      damping *= 10
      if (damping > 1e12) break
    }
  }
  return at
}

/** Solve (JᵀJ + damping·diagonal)·step = −Jᵀ·errors. */
function dampedStep(
  errorsOf: (at: readonly number[]) => readonly number[],
  at: readonly number[],
  errors: readonly number[],
  damping: number,
) {
  const slopes = at.map((value, i) => {
    const [up, down] = [errorsOf(at.with(i, value + stepMm)), errorsOf(at.with(i, value - stepMm))]
    return up.map((error, row) => (error - down[row]!) / (2 * stepMm))
  })
  const down = slopes.map((slope) => -dot(slope, errors))
  const [first, second] = slopes
  const a = dot(first!, first!) * (1 + damping)
  if (!second) return [down[0]! / a]
  const b = dot(first!, second)
  const d = dot(second, second) * (1 + damping)
  const determinant = a * d - b * b
  return [(d * down[0]! - b * down[1]!) / determinant, (a * down[1]! - b * down[0]!) / determinant]
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
