import {toHtml} from 'hast-util-to-html'
import {describe, expect, test} from 'vitest'
import {draw, viewNames} from '../../plugins/drawings/draw.ts'
import {figureDrawing} from '../../plugins/drawings/hero/figure.ts'
import {pageSvg, screenTextPx} from '../../plugins/drawings/writers/svg.ts'
import {planOf} from '../support/plan-of.ts'
import {templateBuilds} from './support/builds.ts'

const {plan} = planOf(templateBuilds.fretless)

describe('a drawing on a page', () => {
  const svgs = draw(plan, viewNames).map((drawing) => ({
    drawing,
    html: toHtml(pageSvg(drawing, `drawing-${drawing.name}`)),
  }))

  test('stands under a policy that forbids styles and scripts', () => {
    for (const {html} of svgs) expect(html).not.toMatch(/\sstyle=|<style|<script|\son[a-z]+=/)
  })

  test('names and describes itself', () => {
    for (const {html, drawing} of svgs) {
      expect(html).toContain('role="img"')
      expect(html).toContain(`aria-labelledby="drawing-${drawing.name}-title"`)
      expect(html).toContain(
        `<title id="drawing-${drawing.name}-title">${plan.title}: ${drawing.title.split(': ')[1]}</title>`,
      )
      expect(html).toContain(`<desc id="drawing-${drawing.name}-desc">${drawing.says}</desc>`)
    }
  })

  test('has figures that stay readable at the width of a phone', () => {
    // 328 px are left of a phone 360 px wide; 11 px: common practice, no source.
    for (const {drawing} of svgs) {
      const fullPx = (drawing.frame.width * screenTextPx) / drawing.textMm
      expect(screenTextPx * Math.min(1, 328 / fullPx)).toBeGreaterThan(11)
    }
  })

  test('has the colour of the text around it', () => {
    for (const {html} of svgs) expect(html).not.toMatch(/(fill|stroke|color)="(?!none|currentColor)/)
  })
})

describe('a figure that hangs among others', () => {
  const {parts, frame, woods} = figureDrawing(plan, {boxWood: 'basswood'})!

  test('hangs from the nut line at full scale', () => {
    // 6 1/4 in of head above the nut line, 27 1/4 in of neck below it.
    expect(-frame.y).toBeGreaterThan(6.25 * 25.4)
    expect(frame.y + frame.height).toBeGreaterThan(27.25 * 25.4)
    expect(-frame.x).toBeGreaterThan((7 / 2) * 25.4)
  })

  test('is filled by its woods, and drawn with little and without words', () => {
    const html = toHtml(parts)
    expect(html).not.toContain('<text')
    expect(woods).toContain('basswood')
    expect(html).toContain('url(#wood-basswood)')
    expect(html.length).toBeLessThan(3000)
  })
})
