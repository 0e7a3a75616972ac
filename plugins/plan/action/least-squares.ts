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
  const first = slopesOf(errorsOf, at, 0)
  const a = dot(first, first) * (1 + damping)
  const down = -dot(first, errors)
  if (at.length === 1) return [down / a]
  const second = slopesOf(errorsOf, at, 1)
  const b = dot(first, second)
  const d = dot(second, second) * (1 + damping)
  const across = -dot(second, errors)
  const determinant = a * d - b * b
  return [(d * down - b * across) / determinant, (a * across - b * down) / determinant]
}

/** Give how fast each error grows with one of the numbers, from a step to both sides of it. */
function slopesOf(
  errorsOf: (at: readonly number[]) => readonly number[],
  at: readonly number[],
  which: number,
): number[] {
  const [up, down] = [stepMm, -stepMm].map((step) => errorsOf(at.with(which, at[which]! + step)))
  const slopes: number[] = []
  for (let row = 0; row < up!.length; row++) slopes.push((up![row]! - down![row]!) / (2 * stepMm))
  return slopes
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
