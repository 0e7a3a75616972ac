import {spawnSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import {beforeAll, describe, expect, test} from 'vitest'
import {x} from 'xastscript'
import {xmlDocument} from '../../site/kit/markup.ts'
import {plain, soughtIn, wordsOf} from '../../site/kit/search-words.ts'
import {madePages} from '../support/made-pages.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const named = {
  'builds/journal.yaml': 'title: Loft & <quay>\nmaker: the loft\nsite: https://journal.example/\n',
  'builds/tea-tin.md': fourLines('Tea "tin" & co', 'summary: "a < b"\nfinished: 2026-02-03\n'),
  'builds/undated.md': fourLines('Undated'),
  'builds/bench/index.md': `${fourLines('Bench')}\n## 2026-03-01 Milling & more (1 h)\n\n![A <strip>](a.png)\n\n## 2026-03-02\n\nNone.\n`,
  'builds/bench/a.png': readFileSync('site/readme/four-lines.png'),
}
let files: Record<string, string> = {}
beforeAll(async () => {
  files = await made(named, '/x/')
})

/** Make the site of a journal. */
async function made(journal: typeof named, prefix?: string): Promise<Record<string, string>> {
  const there = tempJournal(journal)
  const isAsked = (name: string) => name.endsWith('.xml')
  const all = await madePages(there, {...(prefix && {prefix}), isAsked})
  there.remove()
  return all
}

// Source: RFC 4287, sections 4.1.1 and 4.1.2: what a feed and an entry must contain.
describe('the feed', () => {
  test('holds what the standard asks for, with whole addresses and the files’ own dates', () => {
    const feed = files['feed.xml']!
    for (const part of [
      '<title>Loft &#x26; &#x3C;quay></title>',
      '<id>https://journal.example/x/</id>',
      '<updated>2026-03-02T12:00:00Z</updated>',
    ])
      expect(feed).toContain(part)
    expect(feed).toContain('<author><name>the loft</name></author>')
    const entries = feed.match(/<entry>[\s\S]*?<\/entry>/g) ?? []
    expect(entries).toHaveLength(3)
    expect(entries.map((each) => /<title>(.*?)<\/title>/.exec(each)?.[1])).toEqual([
      'Bench: 2026-03-02',
      'Bench: Milling &#x26; more',
      'Tea "tin" &#x26; co',
    ])
    const day = entries[1]!
    expect(day).toContain('<id>https://journal.example/x/builds/bench/#2026-03-01-milling--more-1-h</id>')
    expect(day).toMatch(
      /<content type="html">.*src="https:\/\/journal\.example\/x\/builds\/bench\/photos\/a-[\w-]+\.jpeg" alt="A &#x3C;strip>"/,
    )
    entries.reverse()
    for (const part of [
      '<title>',
      '<id>https://journal.example/x/builds/tea-tin/</id>',
      '<updated>',
      '<summary>a &#x3C; b</summary>',
    ])
      expect(entries[0]).toContain(part)
  })

  test('and the list of pages are well formed', () => {
    for (const name of ['feed.xml', 'sitemap.xml']) {
      // Outside check: the XML parser of the Python standard library, where there is one.
      const {status, stderr, error} = spawnSync(
        'python3',
        ['-c', 'import sys, xml.dom.minidom as m; m.parse(sys.stdin.buffer)'],
        {encoding: 'utf8', input: files[name]!},
      )
      if (!error) expect([status, stderr]).toEqual([0, ''])
    }
    const sitemap = files['sitemap.xml']!
    expect(sitemap).toContain('<loc>https://journal.example/x/builds/undated/</loc>')
    expect(sitemap).not.toContain('404')
  })

  test('has names of its own where the journal has no address', async () => {
    const feed = (await made({...named, 'builds/journal.yaml': 'title: Loft\n'}))['feed.xml']!
    // RFC 9562, section 5.8: version 8, variant 10.
    const ids = [...feed.matchAll(/<id>(.*?)<\/id>/g)].map(([, id]) => id)
    expect(new Set(ids).size).toBe(4)
    for (const id of ids)
      expect(id).toMatch(/^urn:uuid:[0-9a-f]{8}-[0-9a-f]{4}-8[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
  })
})

test('an XML document escapes what XML 1.0 reserves and leaves out what it cannot hold', () => {
  const text = 'a<b>]]>&"\'\u0001\uffff'
  expect(xmlDocument(x('a', {b: text}, text))).toBe(
    '<?xml version="1.0" encoding="utf-8"?><a b="a&#x3C;b>]]&gt;&#x26;&#x22;\'">a&#x3C;b>]]&gt;&#x26;"\'</a>\n',
  )
})

test('the words of a text are gathered once, small and without accents', () => {
  expect(wordsOf('Épicéa, épicéa. 24 1/4 in; D4-2!')).toBe('1/4 24 d4-2 epicea in')
  expect(plain('ÉPI')).toBe('epi')
  expect(wordsOf('Tuned open G, .030w and 0.030w')).toBe('030w and g open open-g tuned')
  expect(soughtIn('open G, three strings .030w')).toEqual(['open-g', '3-string', '030w'])
})
