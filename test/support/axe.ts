import {readFileSync} from 'node:fs'
import {createRequire} from 'node:module'
import type axe from 'axe-core'
import type {Page} from 'playwright-core'

/**
 * The script of axe-core, a third of its size as it is written. Where many pages are looked at it is handed over once,
 * to their context, which takes half the time of handing it to each page.
 */
export const axeScript = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8')

/** List what axe-core finds in a page, or in those parts of it that a selector names: rules, each with some places. */
export async function violations(
  page: Page,
  options: axe.RunOptions = {},
  within = 'html',
): Promise<string[]> {
  if (!(await page.evaluate(() => 'axe' in globalThis))) await page.evaluate(axeScript)
  return page.evaluate(
    async ([how, place]) => {
      if (!document.querySelector(place)) return []
      const runner = (globalThis as unknown as {axe: typeof axe}).axe
      const {violations: found} = await runner.run(place, {...how, resultTypes: ['violations']})
      return found.map(({id, nodes}) => {
        const places = nodes.slice(0, 3).map(({html}) => html)
        return `${id}: ${places.join(' ')}`
      })
    },
    [options, within] as const,
  )
}
