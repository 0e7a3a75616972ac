import {readFileSync} from 'node:fs'
import rehypeStringify from 'rehype-stringify'
import remarkFrontmatter from 'remark-frontmatter'
import remarkGfm from 'remark-gfm'
import remarkParse from 'remark-parse'
import remarkRehype from 'remark-rehype'
import {unified} from 'unified'
import {VFile} from 'vfile'
import {describe, expect, it} from 'vitest'
import {readBuild} from '../plugins/build-file/read.ts'
import {planBuild} from '../plugins/plan/plan.ts'
import {settle} from '../plugins/plan/settle.ts'
import {renderPageBody} from '../plugins/rehype/render-page-body.ts'
import {type BuildOptions, remarkBuild} from '../plugins/remark-build.ts'
import {readBody} from '../plugins/syntax/body.ts'
import {sectionNames} from '../plugins/tables/section-names.ts'

const text = `---
title: Needle box
scale: 24 1/4
scal: 3
---

The bridge sits :value[bridge.station] from the nut at 7:30.

::layout
`

function run(value: string, options: BuildOptions = {}, path = 'builds/needle-box/index.md') {
  const file = new VFile({path, value})
  const html = unified()
    .use(remarkParse)
    .use(remarkFrontmatter)
    .use(remarkGfm)
    .use(remarkBuild, options)
    .use(remarkRehype)
    .use(rehypeStringify)
    .processSync(file)
  return {file, html: String(html)}
}

describe('the plugin', () => {
  it('fills a build file in any unified pipeline', () => {
    const {html, file} = run(text)
    expect(html).toContain(
      '<section class="computed computed-layout" aria-labelledby="layout"><h2 id="layout">Layout</h2>',
    )
    expect(html).toContain('<th scope="row"><a href="#on-bridge">bridge line</a></th>')
    expect(html).toContain('(616 mm)</small></span></span> from the nut at 7:30.</p>')
    expect(file.data.build?.plan.slug).toBe('needle-box')
  })

  it('reports a problem with its place, rule, source, page and what would do', () => {
    const [message] = run(text).file.messages
    expect(message).toMatchObject({
      ruleId: 'unknown-key',
      source: 'nut-to-bridge',
      fatal: false,
      url: '/rules/#unknown-key',
      place: {start: {line: 4, column: 1}, end: {line: 4, column: 5}},
      expected: ['scale'],
    })
  })

  it('counts an error as fatal, a remark as information, and throws for neither', () => {
    const {file} = run('---\ntitle: [\n---\n\nWords.\n')
    expect(file.messages[0]?.fatal).toBe(true)
    expect(run(text.replace('scal: 3', 'accept: {unknown-key: my own}')).file.messages).toEqual([])
  })

  it('takes a build that is known already, and does not read it again', () => {
    const {build: read, problems} = readBuild(text, {slug: 'needle-box', body: readBody})
    const build = settle(read)
    const known = {build, plan: planBuild(build, {journal: {}, pieces: []}), problems}
    const {file, html} = run(text, {known})
    expect(file.data.build).toEqual(known)
    expect(html).toBe(run(text).html)
  })

  it('gives any pipeline the sections that a page of the site has, but for breaks between blocks', () => {
    const whole = readFileSync('test/journals/long-example/builds/lantern-pier/index.md', 'utf8')
    const {file, html} = run(whole, {}, 'builds/lantern-pier/index.md')
    const known = file.data.build!
    const site = {text: whole, path: 'lantern-pier/index.md', published: [], pathPrefix: '/'}
    const page = renderPageBody({...known, ...site})
    const sections = (of: string) =>
      of.replaceAll('>\n<', '><').match(/<section class="computed[\s\S]*?<\/section>/g)
    expect(sections(page.state + page.drawing + page.html)).toEqual(sections(html))
    expect(sections(html)?.length).toBeGreaterThan(15)
  })

  it('puts what the file does not place around the prose, in one order', () => {
    const {html} = run(text.replace('::layout', '## 2026-03-07 Words (1 h)'))
    const headings = [...html.matchAll(/<h2(?: id="([^"]*)")?>/g)].map(([, id]) => id ?? 'prose')
    const order = [
      'before-you-cut',
      'drawing',
      'prose',
      ...sectionNames.filter((name) => name !== 'drawing' && name !== 'before-you-cut'),
      'still-open',
    ]
    expect(headings.slice(0, 3)).toEqual(['before-you-cut', 'drawing', 'prose'])
    expect(headings).toEqual(order.filter((name) => headings.includes(name)))
    expect(headings.at(-1)).toBe('still-open')
  })

  it('leaves out what the file says, but never the cautions', () => {
    const {html} = run(`${text}\n::leave-out{drawing lines cautions}\n`)
    expect(html).not.toMatch(/id="(drawing|lines)"/)
    const isCautionary = run(text).html.includes('id="cautions"')
    expect(html.includes('id="cautions"')).toBe(isCautionary)
  })

  it('takes the slug from its options or from the path', () => {
    const slug = (options: BuildOptions, path: string) => run(text, options, path).file.data.build?.build.slug
    expect(slug({}, 'builds/lantern-pier.md')).toBe('lantern-pier')
    expect(slug({}, 'builds/lantern-pier/index.md')).toBe('lantern-pier')
    expect(slug({slug: 'mine'}, 'x.md')).toBe('mine')
  })

  it('lets a build inherit the journal’s settings', () => {
    const journal = {
      units: {value: 'mm' as const, text: 'mm', place: {line: 1, column: 1, endLine: 1, endColumn: 1}},
    }
    expect(run(text.replace('24 1/4', '616'), {journal}).html).toContain('616 mm <small>')
  })
})
