/** A number as a fraction of whole numbers, so that nothing is lost before it is multiplied by its unit. */
export interface Figure {
  n: number
  d: number
}

const shape =
  /^(?:(?:(\d+)[ -])?(\d+) ?\/ ?(\d+)|(\d+)(?:\.(\d*))?(?:e([+-]?\d+))?|\.(\d+)(?:e([+-]?\d+))?)(?: ?)(.*)$/i

/**
 * Take the figure that a plain text starts with, without a sign: `3/4`, `1 1/2`, `1-1/2`, `24`, `.75`, `3.2e-4`.
 * Returns the figure and the rest of the text; nothing where there is none or where it cannot be a number
 * (`3/0`, `1e999`).
 */
export function takeFigure(text: string): {figure: Figure; written: string; rest: string} | undefined {
  const match = shape.exec(text)
  if (!match) return undefined
  const [, whole, over, under, units, tenths, power, loneTenths, lonePower, rest = ''] = match
  const figure =
    over !== undefined && under !== undefined
      ? {n: Number(whole ?? 0) * Number(under) + Number(over), d: Number(under)}
      : decimal(units ?? '', tenths ?? loneTenths ?? '', Number(power ?? lonePower ?? 0))
  const fits = figure.d > 0 && Number.isFinite(figure.n) && Number.isFinite(figure.d)
  return fits ? {figure, written: text.slice(0, text.length - rest.length).trim(), rest} : undefined
}

function decimal(units: string, tenths: string, power: number): Figure {
  const places = tenths.length - power
  const n = Number(units + tenths)
  return places >= 0 && places <= 22
    ? {n, d: 10 ** places}
    : {n: Number(`${units || '0'}.${tenths || '0'}e${power}`), d: 1}
}
