/** Name the n-th offcut of a piece, from 0: `a` to `z`, then `aa`, `ab` … */
export function offcutName(n: number): string {
  const last = String.fromCharCode(97 + (n % 26))
  return n < 26 ? last : offcutName(Math.floor(n / 26) - 1) + last
}
