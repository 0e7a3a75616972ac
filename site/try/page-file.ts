/** More bytes than these are no build file, whatever its script. */
const mostBytes = 4e6

/**
 * Let a build file be dropped onto the page: its text takes the place of the one that stands there, which undoing
 * brings back. What is no build file is told, and changes nothing; without this a browser would leave the page for it.
 */
export function takeDropped(whole: HTMLTextAreaElement, told: HTMLElement): void {
  addEventListener('dragover', isOfFiles)
  addEventListener('drop', async (event) => {
    if (!isOfFiles(event)) return
    const [file, other] = event.dataTransfer!.files
    // A folder cannot be read.
    const text = other || file!.size > mostBytes ? '' : await file!.text().catch(() => '')
    const isBuild = /^\uFEFF?---\s/.test(text) && !/[\0\uFFFD]/.test(text)
    if (isBuild) {
      whole.closest('details')!.open = true
      whole.select()
      // As if it were typed, so that the browser can undo it.
      document.execCommand('insertText', false, text)
    }
    told.textContent = isBuild
      ? 'Undoing in the text below brings back what was open.'
      : `${other ? 'This' : `“${file!.name}”`} is not one build file, whose first line is ---. What was open stays.`
  })
}

/** Tell whether files are dragged; if so, the browser does not open them itself. */
function isOfFiles(event: DragEvent): boolean {
  const isIt = event.dataTransfer!.types.includes('Files')
  if (isIt) event.preventDefault()
  return isIt
}
