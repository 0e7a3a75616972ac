/** Write an angle in degrees to a tenth, without idle zeros: `6.9`. */
export function degrees(deg: number): string {
  return String(Number(deg.toFixed(1)))
}
