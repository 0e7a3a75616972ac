/**
 * Write a number with at most so many digits after the point, without idle zeros, and with a true minus sign.
 * `number(-0.04, 1)` is `0`.
 */
export function number(value: number, digits: number): string {
  const written = String(Number(value.toFixed(digits)))
  return written === '-0' ? '0' : written.replace('-', '−')
}
