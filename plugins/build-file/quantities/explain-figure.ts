/** Say why a text starts with no figure, as the end of a sentence; nothing where there is no more to say. */
export function explainFigure(text: string): string {
  if (/\/ ?0+(?!\d)/.test(text)) return ': nothing can be divided by 0'
  if (/^(\d+e|infinity)/i.test(text)) return ': the number is too large'
  if (/\d/.test(text)) return ''
  return ': it has no number'
}
