import type {Page} from 'playwright-core'

/** Show a page in the site's own face: where it comes too late for one, it is there for the next. */
export async function showInOwnFace(page: Page, address: string): Promise<void> {
  const hasFace = () =>
    page.evaluate(async () => {
      await document.fonts.ready
      const span = document.body.appendChild(document.createElement('span'))
      span.textContent = 'Sphinx of black quartz'
      span.style.position = 'absolute'
      const [own, other] = ['"Brygada 1918 Variable", monospace', 'monospace'].map((family) => {
        span.style.fontFamily = family
        return span.getBoundingClientRect().width
      })
      span.remove()
      return own !== other
    })
  await page.goto(address)
  while (!(await hasFace())) await page.reload()
}
