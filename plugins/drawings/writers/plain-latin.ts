// What the fonts that every PDF reader has can show besides ASCII and Latin-1 (the rest of Windows-1252).
const besides = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ'

const stands: Record<string, string> = {
  '−': '-',
  '♯': '#',
  '♭': 'b',
  '⁄': '/',
  ł: 'l',
  Ł: 'L',
  đ: 'd',
  Đ: 'D',
  ı: 'i',
}

/**
 * Spell a text with the letters that a PDF's own fonts have: letters with marks of other alphabets lose their marks,
 * and what is still unknown becomes a question mark.
 */
export function plainLatin(text: string): string {
  return [...text.normalize('NFC')]
    .map((letter) => {
      if (isKnown(letter)) return letter
      const bare = stands[letter] ?? letter.normalize('NFD').replace(/\p{M}/gu, '')
      return [...bare].every(isKnown) ? bare : '?'
    })
    .join('')
}

function isKnown(letter: string): boolean {
  const code = letter.codePointAt(0)!
  return (code >= 0x20 && code < 0x7f) || (code >= 0xa0 && code <= 0xff) || besides.includes(letter)
}
