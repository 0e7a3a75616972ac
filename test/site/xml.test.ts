import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {openCache} from '../../site/kit/cache.ts'
import {makeSite} from '../../site/make/make-site.ts'
import {planSite} from '../../site/make/plan-site.ts'
import {soundBuilds} from '../support/sound-builds.ts'
import {tempJournal} from '../support/temp-journal.ts'
import {wholePages} from '../support/whole-pages.ts'
import {xmlFault} from '../support/xml-fault.ts'

import '../support/slow.ts'

// Outside check: saxes 6, a parser that holds to XML 1.0 (fifth edition) and Namespaces, over all that leaves as XML:
// templates, drawings, feed, site map, whatever makers call their things.

const hostile: Readonly<Record<string, string>> = {
  markup: '<b>&amp;</b> "\' & < > </text></svg>',
  'the end of a section': ']]> <![CDATA[ --> <!--',
  'an entity': '&nbsp; &#0; &#x1F; &undefined;',
  'a declaration': '<?xml version="1.0"?><!DOCTYPE a [<!ENTITY b "c">]>',
  controls: 'A\u0001\u0008\u000b\u000c\u001f\u007f\u0085\u009fB',
  'what is no character': 'A\ufffe\uffffB\ud800C\udc00D',
  directions: 'A\u202eB\u2066C\u200fD\u2028E',
  'letters of four bytes': '😀𝄞\u{10ffff}',
  'names of objects': '__proto__ constructor',
}

const builds = Object.values(soundBuilds)
const named = (text: string, at: number) => {
  const name = JSON.stringify(text)
  const front = builds[at % builds.length]!.replace(/^title: .*$/m, `title: ${name}`).replace(
    /^(\s*wood: )(?:basswood|eastern white pine|sugar maple)$/m,
    `$1${name}`,
  )
  return `---\n${front.trim()}\nsummary: ${name}\nfinished: 2026-03-07\ntags: [${name}]\nparts:\n  - {name: ${name}, wood: ${name}, length: 4, width: 1, thickness: 1/4}\ncautions: [${name}]\n---\n## 2026-03-07 Milling\n`
}

const journal = tempJournal({
  'builds/journal.yaml': `title: ${JSON.stringify(Object.values(hostile).slice(0, 4).join(' '))}\nmaker: ${JSON.stringify(hostile.controls)}\nsite: https://journal.example/a&b\n`,
  ...Object.fromEntries(Object.values(hostile).map((text, at) => [`builds/build-${at}.md`, named(text, at)])),
})
const xml: Record<string, string> = {}
const asWritten = (content: string | Uint8Array): string => Buffer.from(content).toString()

/** In a page, which is HTML, some signs may stand that XML does not know, and the end of a section means nothing. */
const sparedInHtml = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff\ud800-\udfff]|(?<=\]\])>/gu

beforeAll(async () => {
  const cache = openCache(`${journal.root}/.cache`, 'a')
  const options = {prefix: '/x/', isWriting: false, assets: {}}
  const made = await makeSite(await planSite(journal.root, options, cache))
  const {pages, files} = await wholePages(made)
  for (const {address, content} of pages) {
    const text = content()
    if (address.endsWith('.xml')) xml[address] = asWritten(text)
    for (const [at, [svg]] of [...text.matchAll(/<svg[\s\S]*?<\/svg>/g)].entries())
      xml[`${address} ${at}`] = svg.replaceAll(sparedInHtml, '')
  }
  for (const {address, bytes} of files) if (address.endsWith('.svg')) xml[address] = asWritten(await bytes())
})
afterAll(() => journal.remove())

describe('what leaves as XML', () => {
  test('is well formed', () => {
    expect(
      Object.entries(xml).flatMap(([name, text]) => xmlFault(text)?.replace(/^/, `${name}: `) ?? []),
    ).toEqual([])
  })
  test('is all there', () => {
    const names = Object.keys(xml)
    expect(names).toContain('/feed.xml')
    expect(names).toContain('/sitemap.xml')
    for (const at of Object.keys(Object.values(hostile))) {
      expect(names).toContain(`/builds/build-${at}/template.svg`)
      // One drawing in the page, the folded ones as files beside it.
      expect(names.filter((name) => name.startsWith(`/builds/build-${at}/ `)).length).toBeGreaterThan(0)
      expect(names.filter((name) => name.startsWith(`/builds/build-${at}/drawings/`)).length).toBeGreaterThan(
        1,
      )
    }
  })
  test('keeps what can be kept of a name', () => {
    expect(xml['/builds/build-0/template.svg']).toContain('<title>&#x3C;b>&#x26;amp;')
    expect(xml['/feed.xml']).toContain('<title>A\u007f\u0085\u009fB</title>')
    expect(xml['/feed.xml']).toContain('<title>😀𝄞\u{10ffff}</title>')
  })
})

// The judge itself.
test.each(['<a>&nbsp;</a>', '<a>\u0001</a>', '<a><b></a>', '<a b=c/>', '<a>]]></a>', '<x:a/>'])(
  '%s is no XML',
  (text) => expect(xmlFault(text)).toBeDefined(),
)
