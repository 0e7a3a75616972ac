import {execFileSync} from 'node:child_process'
import {mkdirSync, readFileSync, writeFileSync} from 'node:fs'
import {join} from 'node:path'
import sharp from 'sharp'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {pointsNowhere} from '../../site/pictures/svg-leads.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'
import '../support/slow.ts'

// What lies beside a build may be torn, empty, huge or meant to harm: it is named with file and line, its own page
// says so, and everything else of the site is written.

const longName = `${'f'.repeat(245)}.jpg`
const svg = (inside: string) =>
  `<svg xmlns="http://www.w3.org/2000/svg" xmlns:l="http://www.w3.org/1999/xlink" width="30" height="20">${inside}</svg>`

/** Each bad file by its name in the folder, and what is said of it. */
const bad: Record<string, RegExp> = {
  'half.jpg': /breaks off/,
  'empty.jpg': /cannot be opened/,
  'wide.png': /so much longer than wide/,
  'leads.svg': /leads to other files/,
  'really-svg.jpg': /leads to other files/,
  'torn.webp': /cannot be opened/,
  'pipe.jpg': /is no file but a folder, a pipe or a device/,
  'prose.jpg': /cannot be opened/,
  'vast.jpg': /larger than 50 MB/,
  'folder.jpg': /is no file but a folder, a pipe or a device/,
}

const friendly = tempJournal({'builds/needle-box.md': fourLines('Needle box')})
const journal = tempJournal({
  'builds/needle-box.md': fourLines('Needle box'),
  'builds/slipway/index.md': `${fourLines(
    'Slipway',
    'cover: good.jpg\nrecordings:\n  - {file: index.html/a.mp3, says: A}\n  - {file: plan.json/b.mp3, says: B}\n  - {file: "c#1.mp3", says: C}\n  - {file: huge.wav, says: D}\n  - {file: "C#1.MP3", says: E}\n',
  )}
${Object.keys(bad)
  .map((name) => `![A picture](${name})\n`)
  .join('\n')}
![Good](good.jpg) ![Good again](./good.jpg) ![Heavy](heavy.jpg) ![Long](${longName}) ![Hash](front#1.jpg) ![Mark](what?.jpg)

![x](constructor) ![y](__proto__) ![z](toString) [w](valueOf)
`,
  'builds/twin/index.md': `${fourLines('Twin', 'based-on: night-ferry\ncover: good.jpg\n')}![Good](good.jpg) [before](../night-ferry.md)\n`,
  'builds/night-ferry.md': fourLines('Night ferry', 'publish: false\n'),
  'builds/words.md': `${fourLines('Words', 'cover: constructor\nrecordings: [{file: hasOwnProperty, says: x}]\n')}![x](constructor)\n`,
  'builds/slipway/leads.svg': svg('<image l:href="../secret/front.png" width="30" height="20"/>'),
  'builds/slipway/really-svg.jpg': svg('<image l:href="../secret/front.png" width="30" height="20"/>'),
  'builds/slipway/empty.jpg': '',
  'builds/slipway/prose.jpg': 'The front, in words alone.\n',
  'builds/slipway/folder.jpg/within.txt': '',
  'builds/slipway/torn.webp': 'RIFF....WEBP',
  'builds/slipway/index.html/a.mp3': 'a',
  'builds/slipway/plan.json/b.mp3': 'b',
  'builds/slipway/c#1.mp3': 'c',
  'builds/slipway/C#1.MP3': 'C',
})
let checked = ''
let site: Record<string, string> = {}
let page = ''

beforeAll(async () => {
  const photo = await sharp({create: {width: 60, height: 40, channels: 3, background: '#987'}})
    .jpeg()
    .toBuffer()
  const folder = join(journal.root, 'builds/slipway')
  for (const name of ['good.jpg', 'heavy.jpg', longName, 'front#1.jpg', 'what?.jpg'])
    writeFileSync(join(folder, name), photo)
  writeFileSync(join(journal.root, 'builds/twin/good.jpg'), photo)
  const noise = Buffer.from(Array.from({length: 600 * 400 * 3}, (_, at) => (at * 7919) % 251))
  const large = await sharp(noise, {raw: {width: 600, height: 400, channels: 3}})
    .jpeg()
    .toBuffer()
  writeFileSync(join(folder, 'half.jpg'), large.subarray(0, large.length / 2))
  const wide = sharp({create: {width: 60_000, height: 1, channels: 3, background: '#987'}})
  writeFileSync(join(folder, 'wide.png'), await wide.png().toBuffer())
  execFileSync('mkfifo', [join(folder, 'pipe.jpg')])
  mkdirSync(join(journal.root, 'builds/secret'))
  writeFileSync(join(journal.root, 'builds/secret/front.png'), await sharp(photo).png().toBuffer())
  // Nothing but a length: no disk is filled.
  const {truncateSync} = await import('node:fs')
  writeFileSync(join(folder, 'huge.wav'), '')
  truncateSync(join(folder, 'huge.wav'), 120e6)
  writeFileSync(join(folder, 'vast.jpg'), photo)
  truncateSync(join(folder, 'vast.jpg'), 60e6)
  truncateSync(join(folder, 'heavy.jpg'), 30e6)
  checked = journal.run('check').stdout
  const {status, stderr} = journal.run('build')
  expect(stderr).not.toMatch(/\n {4}at |undefined/)
  expect([status, stderr]).toEqual([0, stderr])
  site = filesOf(join(journal.root, '_site'))
  page = readFileSync(join(journal.root, '_site/builds/slipway/index.html'), 'utf8')
})
afterAll(() => {
  journal.remove()
  friendly.remove()
})

describe('a picture that cannot be shown', () => {
  test.each(Object.entries(bad))('%s is named by check at its line', (name, says) => {
    const line = checked.split('\n').find((each) => each.includes(` photograph ${name} `))
    expect(line).toMatch(/^ {2}\d+:\d+ warning .* picture-unreadable$/)
    expect(line).toMatch(says)
  })
  test('is told on the page, and none of its bytes is published', () => {
    expect(page.match(/this photograph cannot be shown/g)!.length).toBeGreaterThanOrEqual(6)
    expect(
      Object.keys(site).filter((name) =>
        /half|empty|wide|leads|really|torn|pipe|folder|prose|vast/.test(name),
      ),
    ).toEqual([])
  })
  test('leaves the other builds as they are', () => {
    friendly.run('build')
    const alone = filesOf(join(friendly.root, '_site'))
    for (const name of Object.keys(alone).filter((each) => each.startsWith('builds/needle-box/')))
      expect(site[name]).toBe(alone[name])
  })
})

describe('a picture', () => {
  test('named twice, or in two builds, is there for each', () => {
    const good = Object.keys(site).filter((name) => /\/good-[0-9a-f]{8}-60\.(jpeg|webp)$/.test(name))
    expect(good.map((name) => name.split('/')[1])).toEqual(['slipway', 'slipway', 'twin', 'twin'])
  })
  test('is shown whatever length and signs its name has', () => {
    for (const alt of ['Good', 'Good again', 'Heavy', 'Long', 'Hash', 'Mark'])
      expect(page).toMatch(new RegExp(`<img [^>]*alt="${alt}"`))
  })
})

describe('words that every object knows', () => {
  test('are names like others', () => {
    expect(checked).toMatch(
      /words\.md\n {2}6:8 warning the photograph constructor is not there.* file-missing/,
    )
    expect(checked).not.toMatch(/program-fails/)
    expect(page).toContain('Before you cut')
    expect(page.length).toBeGreaterThan(20_000)
    expect(readFileSync(join(journal.root, '_site/builds/words/index.html'), 'utf8').length).toBeGreaterThan(
      20_000,
    )
  })
})

describe('a draft', () => {
  test('that others were copied from or lead to is named in nothing that leaves', () => {
    for (const content of Object.values(site)) expect(content.toLowerCase()).not.toMatch(/night[- ]ferry/)
    expect(site['builds/twin/build.md']).toContain('cover: good.jpg')
  })
})

describe('recordings', () => {
  test('that would lie where the page has files are named, and the page stands', () => {
    expect(checked).toMatch(
      /8:\d+ warning the file index\.html\/a\.mp3 is not published.*another name file-unpublished/,
    )
    expect(checked).toMatch(/9:\d+ warning the file plan\.json\/b\.mp3 is not published/)
    expect(JSON.parse(site['builds/slipway/plan.json']!)).toHaveProperty('slug', 'slipway')
  })
  test('that many disks would take for one are told, and the first of them stands', () => {
    expect(checked).toMatch(
      /the file C#1\.MP3 is not published: it has the name of another file but for capitals/,
    )
    expect(Object.keys(site)).not.toContain('builds/slipway/C#1.MP3')
    expect(Object.keys(site)).toContain('builds/slipway/c#1.mp3')
  })
  test('that are too large are named', () => {
    expect(checked).toMatch(/11:\d+ warning the file huge\.wav is not published: it is larger than 100 MB/)
    expect(Object.keys(site)).not.toContain('builds/slipway/huge.wav')
  })
  test('are led to whatever signs their names have', () => {
    expect(page).toContain('src="/builds/slipway/c%231.mp3"')
  })
})

// What leads elsewhere, as SVG 1.1 and 2, XLink, XInclude, CSS and XML 1.0 write it.
describe('an SVG leads elsewhere', () => {
  test.each([
    '<image href="a.png"/>',
    "<image l:href='../a.png'/>",
    '<image l:href="&#x2e;./a.png"/>',
    '<image href="file:///etc/hostname"/>',
    '<use href="other.svg#part"/>',
    '<rect fill="url(other.svg#p)"/>',
    '<rect style="fill:url( \'other.svg#p\' )"/>',
    '<style>@import "a.css";</style>',
    '<style>rect{fill:\\75rl(a.svg#b)}</style>',
    '<xi:include xmlns:xi="http://www.w3.org/2001/XInclude" href="a.txt" parse="text"/>',
    '<image href="data:image/svg+xml,&lt;svg/&gt;"/>',
    '<a href="https://elsewhere.example/"><rect/></a>',
  ])('%s', (inside) => {
    expect(pointsNowhere(Buffer.from(svg(inside)))).toBe(false)
  })
  test.each(['<!DOCTYPE svg [<!ENTITY a SYSTEM "a.txt">]>', '<?xml-stylesheet href="a.css"?>'])(
    '%s',
    (head) => {
      expect(pointsNowhere(Buffer.from(head + svg('')))).toBe(false)
    },
  )
  test('also where it is written otherwise than in UTF-8', () => {
    expect(pointsNowhere(Buffer.from(svg(''), 'utf16le'))).toBe(false)
    expect(pointsNowhere(Buffer.from(`<?xml version="1.0" encoding="UTF-7"?>${svg('')}`))).toBe(false)
  })
  test.each([
    '<rect fill="url(#p)"/>',
    '<use l:href="#part"/>',
    '<image href="data:image/png;base64,iVBORw0KGgo="/>',
    '<text>A source (a b)</text>',
  ])('and not by %s', (inside) => {
    expect(pointsNowhere(Buffer.from(svg(inside)))).toBe(true)
  })
})
