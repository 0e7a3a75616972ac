import {HtmlValidate} from 'html-validate'
import {describe, expect, it} from 'vitest'
import {inOrder, readBuild} from '../../plugins/build-file/read.ts'
import {checks} from '../../plugins/checks/checks.ts'
import {planBuild} from '../../plugins/plan/plan.ts'
import {settle} from '../../plugins/plan/settle.ts'
import {renderPageBody} from '../../plugins/rehype/render-page-body.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {parseBuildFile} from '../../plugins/syntax/parse-build-file.ts'
import {sectionNames} from '../../plugins/tables/section-names.ts'
import {planOf} from '../support/plan-of.ts'

const frontMatter = `---
title: Needle box
box: 10 1/8 x 7 x 2
scale: {length: 24 1/4, lines: 12, dots: [5, 12]}
strings: [D3 .030w, A3 .020w, D4 .013]
bridge: {from-tail: 1 7/8}
neck: {length: 33 1/2}
---

`

function render(body: string, more: Partial<Parameters<typeof renderPageBody>[0]> = {}) {
  const text = frontMatter + body
  const {problems, ...read} = readBuild(text, {slug: 'needle-box', body: readBody})
  const build = settle(read.build)
  const plan = planBuild(build, {journal: {}, pieces: []})
  return renderPageBody({
    text,
    build,
    plan,
    problems: inOrder([...problems, ...checks(build, plan)]),
    path: 'needle-box/index.md',
    published: ['needle-box', 'lantern-pier'],
    pathPrefix: '/',
    ...more,
  })
}

const leaveOut = `\n\n::leave-out{${sectionNames.filter((name) => name !== 'cautions').join(' ')}}\n`

/** The page without what stands on it of itself. */
const prose = (body: string, more = {}) =>
  render(body + leaveOut, more)
    .html.replace(/<section class="computed[\s\S]*$/, '')
    .trim()

const page = (html: string) =>
  `<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8"><title>Needle box</title></head><body><h1>Needle box</h1>\n${html}</body></html>\n`

describe('what an author writes', () => {
  // Ways to run a script or to reach another site: OWASP, Cross Site Scripting Prevention and Filter Evasion Cheat Sheets.
  it.each([
    '<script>alert(1)</script>',
    '<img src=x onerror=alert(1)>',
    '<svg onload=alert(1)><script>alert(1)</script></svg>',
    '<math><mtext><table><mglyph><style><img src=x onerror=alert(1)></style></mglyph></table></mtext></math>',
    '<iframe src="https://example.org"></iframe>',
    '<object data="x"></object><embed src="x">',
    '<a href="javascript:alert(1)">x</a> [x](javascript:alert(1)) [x](data:text/html,x) <a href="&#106;avascript:alert(1)">x</a>',
    '<form action="https://example.org"><input name=q><button formaction="javascript:alert(1)">x</button></form>',
    '<p style="background:url(https://example.org/x)">x</p><link rel=stylesheet href=https://example.org/x><style>*{display:none}</style>',
    '<base href="https://example.org"><meta http-equiv=refresh content="0;url=https://example.org">',
    '<video src="https://example.org/x" autoplay></video><audio src=x></audio><source srcset="https://example.org/x">',
    '<div class="computed" id="cautions" data-x="y" hidden>x</div>',
    '<details open ontoggle=alert(1)>x</details>',
    '<template><script>alert(1)</script></template>',
    '![x](https://example.org/x.png) <img src="//example.org/x.png"> <img srcset="https://example.org/x 2x">',
  ])('%s can neither run nor reach out', (html) => {
    const made = prose(`Before ${html} after.\n\n${html}\n`)
    expect(made).not.toMatch(
      /<(script|style|svg|math|iframe|object|embed|form|button|link|base|meta|video|audio|source|template)\b/i,
    )
    expect(made).not.toMatch(
      /<[^>]*\s(on\w+|style|class="computed|id="cautions|hidden|data-x|srcset|action)\b/i,
    )
    expect(made).not.toMatch(/<[^>]*="\s*(javascript|data):/i)
    expect(made).not.toMatch(/\ssrc="(https?:)?\/\//i)
    expect(made).toContain('Before')
  })

  it.each([
    '<details>',
    '<table><tr><td>',
    '<!--',
    '<textarea>',
    '<title>',
    '<select>',
    '<plaintext>',
    '<svg>',
    '<xmp>',
    '<p',
    '<a href="',
    '</section></body></html>',
    '<noscript>',
    '<frameset>',
    '<style>',
    '<script>',
  ])('left open (%s) swallows no computed section', (html) => {
    const ids = (text: string) =>
      [...text.matchAll(/<section class="computed[^"]*" aria-labelledby="([^"]*)">/g)].map(([, id]) => id)
    const whole = ids(render('Words.\n').html)
    expect(ids(render(`Words.\n\n${html}\n`).html)).toEqual(whole)
    expect(ids(render(`Words ${html}.\n`).html)).toEqual(whole)
  })

  it('keeps the harmless HTML that people write', () => {
    const html = '<details><summary>More</summary>x <kbd>b</kbd> H<sub>2</sub>O<br>1<sup>st</sup></details>'
    expect(prose(html)).toBe(html)
  })

  it('cannot put its own ids where the page has one, and finds its own', () => {
    expect(prose('<a id="layout">x</a> [there](#layout) [up](#other)')).toBe(
      '<p><a id="own-layout">x</a> <a href="#own-layout">there</a> <a href="#other">up</a></p>',
    )
  })

  it('may mix a computed value and HTML of its own in one line', () => {
    expect(prose('<b>The bridge</b> at :value[bridge.station]')).toBe(
      '<p><b>The bridge</b> at <span class="value"><span class="measure">24 <span class="frac">1/4</span> in <small>(616 mm)</small></span></span></p>',
    )
  })
})

describe('footnotes', () => {
  it('end the prose, and are not below what is computed', () => {
    const {html} = render('Words[^1].\n\n[^1]: A note.\n')
    expect(html).toMatch(/Words<sup>[\s\S]*A note\.[\s\S]*id="layout"/)
    expect(html).toContain('<a href="#own-fn-1" id="own-fnref-1"')
  })
})

describe('links and pictures', () => {
  it.each([
    ['needle-box/index.md', '../lantern-pier/index.md', '/x/builds/lantern-pier/'],
    ['needle-box/index.md', '../lantern-pier.md#layout', '/x/builds/lantern-pier/#layout'],
    ['needle-box.md', 'lantern-pier.md', '/x/builds/lantern-pier/'],
    ['needle-box.md', 'lantern-pier/index.md', '/x/builds/lantern-pier/'],
    ['needle-box/index.md', 'notes.md', 'notes.md'],
    ['needle-box/index.md', 'sketch.pdf', 'sketch.pdf'],
    ['needle-box/index.md', '/rules/', '/x/rules/'],
    ['needle-box/index.md', 'https://example.org/lantern-pier.md', 'https://example.org/lantern-pier.md'],
    ['needle-box/index.md', 'mailto:a@b.c', 'mailto:a@b.c'],
  ])('in %s to %s lead to %s', (path, href, address) => {
    expect(prose(`[x](${href})`, {path, pathPrefix: '/x/'})).toBe(`<p><a href="${address}">x</a></p>`)
  })

  it('to a build that is not published are plain text', () => {
    expect(prose('[x](../secret-gift/index.md)')).toBe('<p><span>x</span></p>')
  })

  it('are handed to the site by what they point to', () => {
    const asked: unknown[] = []
    const picture = (one: unknown) => {
      asked.push(one)
      return [{type: 'text' as const, value: 'HERE'}]
    }
    expect(prose('![The head](photos/front%20side.jpg "By lamplight")', {picture})).toBe('<p>HERE</p>')
    expect(asked).toEqual([{target: 'photos/front side.jpg', alt: 'The head', title: 'By lamplight'}])
  })
})

describe('headings', () => {
  const headings = (body: string) =>
    render(body + leaveOut).headings.filter(({id}) => !['still-open', 'cautions'].includes(id))

  it('come under the page’s title without a gap, each with an id of its own', () => {
    expect(headings('# One\n\n### Two\n\n###### Three\n\n## Two\n\n# !')).toEqual([
      {id: 'one', depth: 2, title: 'One'},
      {id: 'two', depth: 3, title: 'Two'},
      {id: 'three', depth: 4, title: 'Three'},
      {id: 'two-1', depth: 3, title: 'Two'},
      {id: 'part', depth: 2, title: '!'},
    ])
  })

  it('never take the id of a section', () => {
    const {html, headings} = render('## Layout\n')
    const ids = [...html.matchAll(/\sid="([^"]*)"/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(ids.length)
    expect(headings).toContainEqual({id: 'layout-1', depth: 2, title: 'Layout'})
  })

  it('set the date of a day as a time', () => {
    expect(prose('## 2026-03-07 Milling (1 h)\n\nPlaned.')).toContain(
      '<details class="day"><summary><h3 id="2026-03-07-milling-1-h">Milling</h3> ' +
        '<span class="when"><time datetime="2026-03-07">2026-03-07</time> · 1 h</span></summary>',
    )
  })
})

describe('the whole body', () => {
  const body = `## 2026-03-07 Milling (1 h)

| a | b |
|---|--:|
| 1 | 2 |

- [x] done
- [ ] to *do*

  - below

Foot[^1] and https://example.org/ and ![](a.jpg).

[^1]: A note.

::layout

<div align=center><table border=1><tr><td width=3>x</table></div>
`

  it('is valid HTML, its tables with scopes, its boxes with labels', async () => {
    const {html} = render(body)
    const validator = new HtmlValidate({extends: ['html-validate:standard']})
    const report = await validator.validateString(page(html))
    const found = report.results.flatMap(({messages}) =>
      messages.map(({line, ruleId, message}) => `${line} ${ruleId} ${message}`),
    )
    expect(found).toEqual([])
    expect(html).toContain('<th scope="col">a</th>')
    expect(html).toContain('<label><input type="checkbox" disabled><span> to <em>do</em></span></label>')
    expect(html).toMatch(/<caption>Every station[\s\S]*<th scope="row"><a href="#on-nut">nut line<\/a><\/th>/)
  })

  it('is the same each time, and from a tree parsed before', () => {
    const tree = parseBuildFile(frontMatter + body)
    expect(render(body, {tree})).toEqual(render(body))
    expect(render(body)).toEqual(render(body))
  })
})

describe('a day', () => {
  it('has its first picture small beside its name, and at its end that it was measured on it', () => {
    const body = '## 2026-03-07 Milling (1 h)\n\n![Front](front.jpg)\n\n## 2026-03-08 Gluing\n\nGlue.\n'
    const {plan} = planOf('title: A\nscale: 24\nmeasured: {on: 2026-03-08, scale.length: 24 1/32}')
    const {html} = render(body, {plan: {...plan, settingUp: undefined}})
    const [first, second] = html.split('<details').slice(1, 3)
    expect(first).toMatch(/<summary>.*<img[^>]*class="thumb"[^>]*src="front\.jpg"[^>]*alt=""/s)
    expect(first).not.toContain('Measured')
    expect(second).toContain('<p>Measured: <a href="#as-built">one value</a>.</p>')
    expect(second).not.toContain('thumb')
  })
})
