import {readFileSync} from 'node:fs'
import {join} from 'node:path'
import sharp from 'sharp'
import {afterAll, beforeAll, describe, expect, test} from 'vitest'
import {publishedWidths} from '../../site/kit/picture.ts'
import {filesOf} from '../support/site-files.ts'
import {fourLines, tempJournal} from '../support/temp-journal.ts'

import '../support/slow.ts'

const journal = tempJournal({
  'builds/tea-tin/index.md': `${fourLines('Tea tin', 'cover: photos/Front.JPG\nrecordings: [{file: sounds/a.mp3, says: Slow}, {file: sounds/b.mp3, says: Quick}]\n')}
![The front, strung](photos/Front.JPG "In the evening")

![A sketch](sketch.svg) ![Torn](torn.jpg)

[The notes](notes.pdf) [a page](page.html)

## 2026-03-15 First evening

With a slide: [quick](sounds/b.mp3), [again](./sounds/b.mp3), and [gone](sounds/c.mp3).
`,
  'builds/tea-tin/sketch.svg':
    '<svg xmlns="http://www.w3.org/2000/svg" width="300" height="200"><script>taken()</script><rect width="300" height="200" fill="#888"/></svg>',
  'builds/tea-tin/torn.jpg': 'no picture',
  'builds/tea-tin/sounds/a.mp3': 'sound',
  'builds/tea-tin/sounds/b.mp3': 'sound',
  'builds/tea-tin/notes.pdf': '%PDF-1.4',
  'builds/tea-tin/page.html': '<script>taken()</script>',
})
const site = join(journal.root, '_site')
let page = ''
let files: Record<string, string> = {}
let said = ''

beforeAll(async () => {
  const photo = sharp({create: {width: 1200, height: 2000, channels: 3, background: '#987'}})
    .composite([
      {input: {create: {width: 1200, height: 200, channels: 3, background: '#012'}}, top: 0, left: 0},
    ])
    .withExif({IFD0: {Make: 'a camera'}, IFD3: {GPSLatitudeRef: 'N', GPSLatitude: '51/1 30/1 0/1'}})
    .withMetadata({orientation: 6})
    .jpeg()
  journal.write('builds/tea-tin/photos/Front.JPG', await photo.toBuffer())
  const {status, stderr} = journal.run('build')
  expect(status).toBe(0)
  said = stderr
  files = filesOf(site)
  page = readFileSync(join(site, 'builds/tea-tin/index.html'), 'utf8')
})
afterAll(() => journal.remove())

const photos = () =>
  Object.keys(files).filter((name) => /photos\/front-[0-9a-f]{8}-\d+\.(webp|jpeg)$/.test(name))

describe('photographs', () => {
  test('are published in a few widths, in two formats, and not as they were', () => {
    expect(photos().map((name) => name.split('-').at(-1))).toEqual(
      expect.arrayContaining(['480.webp', '960.webp', '1600.webp', '480.jpeg', '960.jpeg', '1600.jpeg']),
    )
    expect(Object.keys(files).filter((name) => /front/i.test(name))).toEqual(photos())
  })

  test('stand the right way up, and tell neither place nor camera', async () => {
    for (const name of photos()) {
      const bytes = readFileSync(join(site, name))
      const {width, height, exif, orientation} = await sharp(bytes).metadata()
      // EXIF 2.3, orientation 6: the picture is to be turned a quarter clockwise, so its top lies to the right.
      expect(width! / height!).toBeCloseTo(2000 / 1200, 1)
      expect([exif, orientation]).toEqual([undefined, undefined])
      expect(bytes.includes('a camera')).toBe(false)
      const right = await sharp(bytes)
        .extract({left: width! - 10, top: 5, width: 5, height: 5})
        .raw()
        .toBuffer()
      expect(right[0]).toBeLessThan(60)
    }
  })

  test('the photograph itself lies on its side and tells where it was taken', async () => {
    const bytes = readFileSync(join(journal.root, 'builds/tea-tin/photos/Front.JPG'))
    expect(await sharp(bytes).metadata()).toMatchObject({width: 1200, height: 2000, orientation: 6})
    expect(bytes.includes('a camera')).toBe(true)
  })

  test('have their size, words and caption on the page, and load late', () => {
    const image = /<img [^>]*alt="The front, strung"[^>]*>/.exec(page)?.[0]
    for (const part of ['width="2000"', 'height="1200"', 'loading="lazy"', ' 480w, ', 'sizes='])
      expect(image).toContain(part)
    expect(page).toContain('In the evening')
    expect(files['index.html']).toMatch(
      /<picture><source type="image\/webp" srcset="\/builds\/tea-tin\/photos\/front-/,
    )
  })

  test('drawn as SVG become pictures that cannot run', () => {
    expect(Object.keys(files).some((name) => /photos\/sketch-[0-9a-f]{8}-300\.webp$/.test(name))).toBe(true)
    expect(Object.keys(files).some((name) => name.endsWith('sketch.svg'))).toBe(false)
  })

  test('that cannot be opened are named, and the page stands', () => {
    expect(said).toMatch(/\d+:\d+ warning the photograph torn\.jpg cannot be opened.* picture-unreadable/)
    expect(page).toContain('Torn')
  })

  test.each([
    [300, [300]],
    [480, [480]],
    [1000, [480, 960, 1000]],
    [1600, [480, 960, 1600]],
    [4000, [480, 960, 1600]],
  ])('%i pixels wide are published in %j', (width, widths) => {
    expect(publishedWidths(width)).toEqual(widths)
  })
})

describe('other files of the build’s folder', () => {
  test('are published where a browser only shows or plays them', () => {
    expect(files['builds/tea-tin/notes.pdf']).toBe('%PDF-1.4')
    expect(files['builds/tea-tin/sounds/a.mp3']).toBe('sound')
    expect(Object.keys(files)).not.toContain('builds/tea-tin/page.html')
  })

  test('recordings never play or load by themselves', () => {
    const audio = /<audio [^>]*>/.exec(page)?.[0]
    expect(audio).toContain('preload="none"')
    expect(audio).toContain('controls')
    expect(audio).not.toContain('autoplay')
  })
  test('a recording that a day names is heard with that day, and led to from the top', () => {
    const day = /<details class="day".*?<\/details>/s.exec(page)![0]
    const heard = (anchor: string, href: string, says: string) =>
      `<span class="recording"${anchor}><a href="${href}">${says}</a> <audio controls preload="none" src="${href}" aria-label="${says}"></audio></span>`
    expect(day).toContain(heard(' id="Recording-2"', 'sounds/b.mp3', 'quick'))
    expect(day).toContain(heard('', './sounds/b.mp3', 'again'))
    expect(day).toContain('and <a href="sounds/c.mp3">gone</a>.')
    expect(page).toContain('<p><a href="#Recording-2">Quick</a>, with its day</p>')
    // Each of the three is heard where it belongs, and nowhere else.
    expect(page.match(/<audio /g)).toHaveLength(3)
    expect(said).toContain('sounds/c.mp3 is not there')
  })
})
