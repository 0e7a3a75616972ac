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
