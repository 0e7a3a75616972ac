import {spawnSync} from 'node:child_process'
import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import {afterAll, describe, expect, test} from 'vitest'
import {x} from 'xastscript'
import {xmlDocument} from '../../site/kit/markup.ts'
import {plain, soughtIn, wordsOf} from '../../site/kit/search-words.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const journal = tempJournal({
  'builds/journal.yaml': 'title: Loft & <quay>\nmaker: the loft\nsite: https://journal.example/\n',
  'builds/tea-tin.md': fourLines('Tea "tin" & co', 'summary: "a < b"\nfinished: 2026-02-03\n'),
  'builds/undated.md': fourLines('Undated'),
  'builds/bench/index.md': `${fourLines('Bench')}\n## 2026-03-01 Milling & more (1 h)\n\n![A <strip>](a.png)\n\n## 2026-03-02\n\nNone.\n`,
  'builds/bench/a.png': readFileSync('site/readme/four-lines.png'),
})
afterAll(() => journal.remove())

// Source: RFC 4287, sections 4.1.1 and 4.1.2: what a feed and an entry must contain.
describe('the feed', () => {
  test('holds what the standard asks for, with whole addresses and the files’ own dates', () => {
    expect(journal.run('build', '--path-prefix=/x/').status).toBe(0)
    const feed = readFileSync(join(journal.root, '_site/feed.xml'), 'utf8')
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
        ['-c', 'import sys, xml.dom.minidom as m; m.parse(sys.argv[1])', join(journal.root, '_site', name)],
        {encoding: 'utf8'},
      )
      if (!error) expect([status, stderr]).toEqual([0, ''])
    }
    const sitemap = readFileSync(join(journal.root, '_site/sitemap.xml'), 'utf8')
    expect(sitemap).toContain('<loc>https://journal.example/x/builds/undated/</loc>')
    expect(sitemap).not.toContain('404')
  })

  test('has names of its own where the journal has no address', () => {
    journal.write('builds/journal.yaml', 'title: Loft\n')
    expect(journal.run('build').status).toBe(0)
    const feed = readFileSync(join(journal.root, '_site/feed.xml'), 'utf8')
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
