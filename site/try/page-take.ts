import type {View} from './view.ts'

/** Let the changed build be taken away: copied, saved as a file, or as a link that carries the changes alone. */
export function offerToTake(page: HTMLElement, current: () => View | undefined): void {
  const told = page.querySelector('[data-part=taken]')!
  const on = (name: string, take: (view: View) => Promise<string> | string) =>
    page.querySelector(`[data-part=${name}]`)?.addEventListener('click', async () => {
      const view = current()
      if (!view) return
      try {
        told.textContent = await take(view)
      } catch {
        told.textContent =
          'This browser does not let a page copy; the whole text stands below, to be copied by hand.'
      }
    })
  on('copy', async ({text}) => {
    await navigator.clipboard.writeText(text)
    return 'The build file is copied.'
  })
  on('copy-link', async ({link}) => {
    await navigator.clipboard.writeText(`${location.origin}${location.pathname}#${link}`)
    return 'The link is copied; it carries the changes alone.'
  })
  on('save', ({text, title, isStart}) => {
    // Beside the file that it started from, not in its place.
    const name = fileName(isStart ? title : `${title} changed`, 'md')
    saveFile(name, text)
    return `Saved as ${name}; lay it into builds/.`
  })
}

/** Have the browser save a text as a file. */
export function saveFile(name: string, text: string): void {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([text], {type: 'text/plain;charset=utf-8'}))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000)
}

/** Name a file by the build's title. */
export const fileName = (title: string, ending: string): string => `${slugOf(title)}.${ending}`

/** Make a title what a file and an address are called by. */
export function slugOf(title: string): string {
  const slug = title
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 100)
    .replace(/^-+|-+$/g, '')
  return slug || 'new-build'
}
