import {existsSync, readdirSync, readFileSync, symlinkSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

// What a build file or the folder around it may carry for Eleventy to run, read or obey. None of it may change
// anything outside the build's own page. Found by trying each on Eleventy 3.1.8.

const mark = "require('node:fs').writeFileSync('ran', 'x')"
const esMark = "import {writeFileSync} from 'node:fs'\nwriteFileSync('ran', 'x')\n"
/** Done with, so that no pictures of its steps are drawn. */
const sold = 'status: sold\n'
const friendly = {'builds/needle-box.md': fourLines('Needle box', sold)}
const alone = tempJournal(friendly)
const beset = tempJournal({
  ...friendly,
  'builds/needle-box.11tydata.js': esMark,
  'builds/needle-box.11tydata.cjs': mark,
  'builds/needle-box.11tydata.json': '{"permalink": "/taken/", "title": "Taken"}',
  'builds/needle-box.json': '{"permalink": "/taken/", "layout": "taken"}',
  'builds/builds.11tydata.js': esMark,
  'builds/builds.json': '{"permalink": "/taken/"}',
  'builds/_data/site.js': esMark,
  'builds/_data/eleventyComputed.js': esMark,
  'builds/_data/permalink.json': '"/taken/"',
  'builds/_includes/frame.11ty.js': `${esMark}export default () => 'taken'`,
  'builds/page.11ty.js': `${esMark}export default () => 'taken'`,
  'builds/page.11ty.ts': `${esMark}export default () => 'taken'`,
  'builds/page.njk': '{{ "taken" }}',
  'builds/page.liquid': 'taken',
  'builds/page.html': '<script>taken</script>',
  'builds/eleventy.config.js': esMark,
  'builds/.eleventy.js': mark,
  'builds/.eleventyignore': '*',
  'builds/.gitignore': '*',
  'builds/package.json': '{"11ty": {"eleventyDataSchema": "x"}, "type": "commonjs"}',
  'builds/notes/other.md': fourLines('Taken'),
  'builds/notes/index.11ty.js': esMark,
  'eleventy.config.js': esMark,
  '.eleventy.js': mark,
  '.eleventyignore': '**',
  '.gitignore': 'builds',
  '.env': 'ELEVENTY_PRODUCTION=taken',
})

afterAll(() => {
  alone.remove()
  beset.remove()
})

describe('what lies around the builds', () => {
  test('runs nothing and changes not a byte of the site', () => {
    expect(alone.run('build').status).toBe(0)
    expect(beset.run('build').status).toBe(0)
    expect(filesOf(join(beset.root, '_site'))).toEqual(filesOf(join(alone.root, '_site')))
    expect(readdirSync(beset.root)).not.toContain('ran')
  })
})

const front = (lines: string) => `---\ntitle: Pin box\n${lines}\n---\nProse.\n`

const keys: Record<string, string> = {
  'a permalink that climbs': front('permalink: ../../climbed.html'),
  'a permalink to another page': front('permalink: /index.html'),
  'a permalink as a function of data': front(
    'permalink: "{{ title }}"\neleventyComputed:\n  permalink: /taken/',
  ),
  'another template language':
    front('templateEngineOverride: liquid,njk') + '{{ "ta" | append: "ken" }} {% include "x" %}',
  'a layout of its own': front('layout: ../../../../etc/passwd'),
  'pagination over everything': front('pagination: {data: collections.all, size: 1}'),
  'tags for collections': front('tags: [all, builds]'),
  'reserved names': front('page: {url: /taken/}\ncontent: taken\ncollections: {}\neleventy: {}\npkg: {}'),
  'a prototype': front('__proto__: {publish: false}\nconstructor: {prototype: {publish: false}}'),
  'a tag that makes an object': front('note: !!js/function "function(){ taken }"'),
}

const fences: Record<string, string> = {
  'front matter in JavaScript': `---js\n{title: ${mark}}\n---\n`,
  'front matter in JavaScript, long': `---javascript\n${mark}\n---\n`,
  'front matter in JSON': '---json\n{"title": "Taken", "permalink": "/taken/"}\n---\n',
  'front matter in TOML': '---toml\ntitle = "Taken"\n---\n',
  'front matter in CoffeeScript': '---coffee\ntitle: "Taken"\n---\n',
  'a remark on the fence': '--- # remark\ntitle: Taken\n---\n',
  'a fence that never closes': '---\ntitle: Taken\npermalink: /taken/\n',
}

describe('keys that steer Eleventy', () => {
  const slugs = Object.keys(keys).map((what) => what.replaceAll(/[^a-z]+/g, '-'))
  const other = tempJournal(friendly)
  beforeAll(() => {
    const isBad = (text: string) =>
      readBuild(text, {slug: 'a', body: readBody}).problems.some(({severity}) => severity === 'error')
    for (const [at, text] of Object.values(keys).entries())
      if (!isBad(text)) other.write(`builds/${slugs[at]}.md`, text)
    const {status, stderr} = other.run('build')
    expect([status, stderr]).toEqual([0, stderr])
    expect(stderr).not.toMatch(/\n {4}at /)
  })
  afterAll(() => other.remove())

  test('stay inside the builds’ own pages', () => {
    const site = filesOf(join(other.root, '_site'))
    const before = filesOf(join(alone.root, '_site'))
    const own = Object.keys(site).filter((name) => slugs.some((slug) => name.startsWith(`builds/${slug}/`)))
    expect(own.length).toBeGreaterThan(8)
    expect(Object.keys(site).filter((name) => !own.includes(name))).toEqual(Object.keys(before))
    for (const name of Object.keys(before).filter((each) => each.startsWith('builds/needle-box/')))
      expect(site[name]).toBe(before[name])
    expect(readdirSync(other.root).sort()).toEqual(['.cache', '.site', '_site', 'builds'])
    expect(Object.values(site).join('')).not.toContain('root:x:0')
  })

  test('run no template language', () => {
    const file = join(other.root, '_site/builds/another-template-language/index.html')
    expect(readFileSync(file, 'utf8')).toContain('{{ "ta" | append: "ken" }}')
  })
})

describe('fences that are not plain', () => {
  const other = tempJournal(friendly)
  beforeAll(() => {
    Object.values(fences).forEach((text, at) => {
      other.write(`builds/fence-${at}.md`, text)
    })
  })
  afterAll(() => other.remove())

  test('are errors at their line, and nothing in them runs', () => {
    const {status, stderr} = other.run('build')
    expect(status).toBe(1)
    for (const at of Object.values(fences).keys())
      expect(stderr).toMatch(new RegExp(`fence-${at}\\.md\\n {2}1:\\d+ error`))
    expect(stderr).not.toMatch(/\n {4}at /)
    expect(existsSync(join(other.root, 'ran'))).toBe(false)
  })
})

describe('what reaches outside', () => {
  const prose = `
<script>taken()</script>
<img src="x" onerror="taken()"> <img src="https://elsewhere.example/track.gif" alt="t">
<iframe src="https://elsewhere.example/"></iframe> <base href="https://elsewhere.example/">
<link rel="stylesheet" href="https://elsewhere.example/a.css"> <style>body{display:none}</style>
<form action="https://elsewhere.example/"><input name="a"></form>
<svg><script>taken()</script><a xlink:href="javascript:taken()">t</a></svg>
[a](javascript:taken()) [b](data:text/html,<script>taken()</script>) [c](vbscript:taken())
<a href="&#106;avascript:taken()">d</a> <div style="position:fixed" class="site" id="Page">e</div>
{{ constructor.constructor("taken()")() }} {% raw %}{% endraw %} <%= taken %>
`
  const other = tempJournal({
    'builds/pin-box.md':
      fourLines('Pin <b>box</b>"\'&', `summary: "<script>taken()</script>"\n${sold}`) + prose,
  })
  beforeAll(() => {
    other.write('secret/diary.md', fourLines('Diary'))
    other.write('secret/front.jpg', 'not for others')
    other.write(
      'builds/tea-tin/index.md',
      `${fourLines('Tea tin', `cover: front.jpg\n${sold}`)}![front](front.jpg) [up](../../secret/diary.md)\n`,
    )
    symlinkSync(join(other.root, 'secret/diary.md'), join(other.root, 'builds/diary.md'))
    symlinkSync(join(other.root, 'secret'), join(other.root, 'builds/more'))
    symlinkSync(join(other.root, 'secret/front.jpg'), join(other.root, 'builds/tea-tin/front.jpg'))
    expect(other.run('build').status).toBe(0)
  })
  afterAll(() => other.remove())

  test('by links leads to nothing of the site', () => {
    const site = filesOf(join(other.root, '_site'))
    expect(Object.keys(site)).toContain('builds/tea-tin/index.html')
    for (const [name, content] of Object.entries(site)) {
      expect(name).not.toMatch(/diary|front/)
      expect(content).not.toContain('not for others')
    }
  })

  test('by prose is harmless on the page', () => {
    const html = readFileSync(join(other.root, '_site/builds/pin-box/index.html'), 'utf8')
    const body = html.slice(html.indexOf('<main'))
    const tags = (body.match(/<[^>]*>/g) ?? []).join('\n')
    expect(body).not.toMatch(/<(script|iframe|base|link|style|form|object|embed)\b/i)
    expect(tags).not.toMatch(/\son\w+=|javascript:|vbscript:|data:text|\sstyle=/i)
    expect(tags).not.toMatch(/\ssrc="(?:https?:)?\/\//)
    expect(html.match(/id="Page"/g)).toHaveLength(1)
    expect(html).toContain('Pin &#x3C;b>box&#x3C;/b>')
    expect(body).toContain('{{ constructor.constructor("taken()")() }}')
  })
})
