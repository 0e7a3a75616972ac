/**
 * Split the one line that stands for a record into its parts, each with where it starts in the text.
 * `between` is what parts them: ` x ` as in a box, a blank as in a string's note and gauge, or nothing.
 */
export function shortParts(
  text: string,
  between: ' x ' | ' ' | '',
  count: number,
): {text: string; index: number}[] {
  if (between === '' || count === 1) return [{text, index: 0}]
  if (between === ' ') {
    // A slip such as "F #3 .017" keeps its sharp with the note, so that the message is about the note.
    const [, first = text, gap = '', rest = ''] =
      /^(\S+(?:\s+[#b♯♭]-?\d*(?=\s|$))?)(\s*)(.*)$/s.exec(text) ?? []
    const note = {text: first, index: 0}
    return rest ? [note, {text: rest, index: first.length + gap.length}] : [note]
  }
  const parts: {text: string; index: number}[] = []
  let index = 0
  for (const part of text.split(/(\s*[x×]\s*)/i)) {
    if (!/^\s*[x×]\s*$/i.test(part)) parts.push({text: part.trim(), index})
    index += part.length
  }
  return parts
}
