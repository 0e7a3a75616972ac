/** Take the sign that a plain text starts with; it covers the whole quantity. */
export function takeSign(text: string): {sign: 1 | -1; body: string} {
  return {sign: text.startsWith('-') ? -1 : 1, body: text.replace(/^[+-] ?/, '')}
}
