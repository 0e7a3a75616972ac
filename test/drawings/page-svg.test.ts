import {toHtml} from 'hast-util-to-html'
import {describe, expect, test} from 'vitest'
import {draw, viewNames} from '../../plugins/drawings/draw.ts'
import {cardDrawing} from '../../plugins/drawings/views/card.ts'
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

describe('a card', () => {
  const card = cardDrawing(plan)!

  test('hangs from the nut line at full scale', () => {
    const [x, y, width, height] = String(card.svg.properties.viewBox).split(' ').map(Number)
    expect(width).toBeCloseTo(card.widthMm, 1)
    expect(height).toBeCloseTo(card.heightMm, 1)
    expect(-y!).toBeCloseTo(card.nutYMm, 1)
    expect(-x!).toBeCloseTo(card.centreXMm, 1)
    // 6 1/4 in of head above the nut line, 27 1/4 in of neck below it.
    expect(card.nutYMm).toBeGreaterThan(6.25 * 25.4)
    expect(card.heightMm - card.nutYMm).toBeGreaterThan(27.25 * 25.4)
  })

  test('is drawn with less than the large drawing, and without words', () => {
    const html = toHtml(card.svg)
    expect(html).not.toContain('<text')
    expect(html.length).toBeLessThan(toHtml(pageSvg(draw(plan, ['top'])[0]!, 'top')).length / 3)
  })
})
