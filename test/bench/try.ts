import type {Measure} from '../bench.ts'
import {openBrowser} from '../support/browser.ts'
import {demoJournal, serveSite} from '../support/demo-site.ts'

const goalMs = {asItIs: 16, slowed: 50}
const scales = ['24 1/2', '25', '25 1/2', '24', '24 1/4']

/**
 * A scale typed on the page that tries a change, until the drawing of it stands in the page: the median of 60 changes of
 * the largest build of the demo journal, against what it may take; and on a processor four times as slow, where four
 * times the whole is taken, since a browser slows a page down but not its workers.
 */
export async function bench(): Promise<Measure[]> {
  const {home, close} = await serveSite(demoJournal().site, 8700)
  const browser = await openBrowser()
  try {
    const page = await browser.newPage({viewport: {width: 390, height: 844}})
    await page.goto(`${home}try/?from=lantern-pier`)
    await page.waitForSelector('#Try[data-checked]')
    await page.waitForSelector('#Try[data-made]')
    const {ms, leastMs, allMs} = await page.evaluate(async (scales) => {
      const sheet = document.querySelector<HTMLElement>('#Try')!
      const input = document.querySelector<HTMLInputElement>('#field-scale-length')!
      const [took, all]: [number[], number[]] = [[], []]
      for (let at = 0; at < 80; at += 1) {
        const from = performance.now()
        const isDrawn = new Promise<void>((resolve) => {
          new MutationObserver((_, seen) => {
            seen.disconnect()
            resolve()
          }).observe(sheet, {attributeFilter: ['data-drawn']})
        })
        const isAll = new Promise<void>((resolve) => {
          new MutationObserver((_, seen) => {
            seen.disconnect()
            resolve()
          }).observe(sheet, {attributeFilter: ['data-shown']})
        })
        input.value = scales[at % scales.length]!
        input.dispatchEvent(new Event('input', {bubbles: true}))
        await isDrawn
        // Layout belongs to what is drawn.
        document.querySelector('.picture')!.getBoundingClientRect()
        took.push(performance.now() - from)
        await isAll
        all.push(performance.now() - from)
        await new Promise((resolve) => setTimeout(resolve, 30))
      }
      const [drawn, whole] = [took, all].map((each) => each.slice(20).sort((a, b) => a - b))
      return {ms: drawn![30]!, leastMs: drawn![0]!, allMs: whole![30]!}
    }, scales)
    const detail = `${ms.toFixed(1)} ms, median of 60 changes; the quickest ${leastMs.toFixed(1)} ms; fields and tables too ${allMs.toFixed(1)} ms`
    return [
      {name: 'a change to its drawing, against 16 ms', ratio: ms / goalMs.asItIs, detail},
      {
        name: 'the same four times slower, against 50 ms',
        ratio: (4 * ms) / goalMs.slowed,
        detail: `${(4 * ms).toFixed(1)} ms`,
      },
    ]
  } finally {
    await browser.close()
    close()
  }
}
