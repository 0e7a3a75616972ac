import type {UnitRow} from '../../tables/units.ts'
import {nearest} from '../schema/nearest.ts'

const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
}

/**
 * Spell a quantity with the signs of a keyboard: `1½″` becomes `1 1/2"`, `−2` becomes `-2`, `kg/m³` `kg/m3`.
 * White space is trimmed and made single.
 */
export function plainText(text: string): string {
  return text
    .replace(/\s+/g, ' ')
    .replace(/(\d)? ?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]) ?/g, (_, digit: string | undefined, sign: string) =>
      digit === undefined ? `${fractions[sign]} ` : `${digit} ${fractions[sign]} `,
    )
    .replace(/[−–‐‑‒]/g, '-')
    .replace(/[⁄∕]/g, '/')
    .replace(/[″“”]|''|’’|′′/g, '"')
    .replace(/[′‘’]/g, "'")
    .replace(/³/g, '3')
    .trim()
}

/** Take the sign that a plain text starts with; it covers the whole quantity. */
export function takeSign(text: string): {sign: 1 | -1; body: string} {
  return {sign: text.startsWith('-') ? -1 : 1, body: text.replace(/^[+-] ?/, '')}
}

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

/** Say why a text starts with no figure, as the end of a sentence; nothing where there is no more to say. */
export function explainFigure(text: string): string {
  if (/\/ ?0+(?!\d)/.test(text)) return ': nothing can be divided by 0'
  if (/^(\d+e|infinity)/i.test(text)) return ': the number is too large'
  if (/\d/.test(text)) return ''
  return ': it has no number'
}

/** Find the unit that a word names, whatever its case. */
export function findUnit(word: string, rows: readonly UnitRow[]): UnitRow | undefined {
  const wanted = word.toLowerCase()
  return rows.find((row) => row.words.some((spelling) => spelling.toLowerCase() === wanted))
}

/** Name the unit that a misspelt word most likely means; nothing for one letter, which may mean any. */
export function likelyUnit(word: string, rows: readonly UnitRow[]): string | undefined {
  if (word.length < 2 || word.length > 20) return undefined
  const close = nearest(
    word,
    rows.flatMap((row) => row.words),
  )
  return close && findUnit(close, rows)?.words[0]
}
