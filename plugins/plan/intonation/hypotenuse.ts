/** Give the length of a slope from its run and rise. (`Math.hypot` guards against overflow and is many times slower.) */
export function hypotenuse(run: number, rise: number): number {
  return Math.sqrt(run * run + rise * rise)
}
