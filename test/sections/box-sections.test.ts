import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {describe, expect, test} from 'vitest'
import {box} from '../../plugins/sections/box.ts'
import {drilling} from '../../plugins/sections/drilling.ts'
import {fasteners} from '../../plugins/sections/fasteners.ts'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import type {Section} from '../../plugins/sections/section.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'

function read(section: Section, frontMatter: string): string {
  const children: RootContent[] = section.content({...planOf(frontMatter), attributes: {}})
  const options = {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-' as const}
  return toMarkdown({type: 'root', children}, options).replaceAll(/\u00a0|&nbsp;|&#xA0;/g, ' ')
}
const needs = (section: Section, frontMatter: string) =>
  section.needs({...planOf(frontMatter), attributes: {}})

describe('box', () => {
  test('says where the bridge lies, what the strings push, and what note the air answers to', () => {
    const text = read(box, soundBuilds['on top'])
    expect(text).toContain('81 % of the way along it; on the neck')
    expect(text).toContain('go down 7° to the anchors')
    expect(text).toContain('**The air in the box answers near G#3**, which is line 6 of D3')
  })

  test('says what each join asks of box and neck', () => {
    expect(read(box, soundBuilds['on top'])).toContain('its screws carry almost none of it')
    expect(read(box, soundBuilds.through)).toContain('It must not touch the top under the bridge')
    expect(read(box, soundBuilds.through)).toContain('1 5/8 in (41.3 mm) wide and 1 in (25.4 mm) deep')
    expect(read(box, soundBuilds.end)).toContain('about the upper edge of the box’s end')
  })

  test('draws the wiring, grounds the strings of a coil alone, and says what to test', () => {
    const piezo = read(box, soundBuilds['on top'])
    expect(piezo).toContain('The strings need no ground wire with a piezo disc.')
    expect(piezo).toContain('reads open, not shorted')
    const coil = read(box, changed(soundBuilds['on top'], {'pickup.kind': 'magnetic'}))
    expect(coil).toContain('a wire from the strings to the jack’s sleeve')
  })

  test('names the measures that would bring it', () => {
    expect(needs(box, 'title: x')).toEqual(['box'])
    expect(needs(box, 'title: x\nbox: {length: 10}')).toEqual(['box.width', 'box.depth'])
    expect(needs(box, 'title: x\nbox: 10 x 7 x 2')).toEqual([])
    expect(read(box, 'title: x\nbox: 10 x 7 x 2')).toContain('Inside: 9 5/8 in')
  })
})

describe('drilling', () => {
  test('lists each face once, with bit, place, depth and backing', () => {
    const text = read(drilling, soundBuilds['on top'])
    expect(text.match(/\*\*Holes: face of the head\*\*/g)).toHaveLength(1)
    expect(text).toMatch(
      /\| sound hole 1 3\/8 in Forstner bit +\| +20 in 4 in along \| +2 1\/4 in to the treble side \| through scrap clamped/,
    )
    expect(text).toMatch(/\| screw, pilot into neck 5\/64 in \(or 2 mm\)/)
  })

  // Tuners 1/4 in, pilots and buttons 5/64 in, strings 3/32 in, ferrules 5/16 in, jack 3/8 in, screws 9/64 in, sound hole 1 3/8 in.
  test('counts a bit once, however many holes it bores', () => {
    const text = read(drilling, changed(soundBuilds['on top'], {'box.top.held': 'hinged'}))
    expect(text).toContain('**17 holes, 7 bits, 6 faces**')
  })

  test('tells a proposed place from one that the file gives', () => {
    expect(read(drilling, soundBuilds['on top'])).toContain('| jack (proposed)')
    const placed = changed(soundBuilds['on top'], {
      'pickup.jack.along': '8',
      extras: '',
      'box.top.held': 'hinged',
    })
    expect(read(drilling, placed)).not.toContain('proposed')
  })

  test('names the keys that would bring it', () => {
    expect(needs(drilling, 'title: x')).toEqual(['tuners'])
  })
})

describe('fasteners', () => {
  test('names both roots, the bits in inches and millimetres, and what the strings ask', () => {
    const text = read(fasteners, soundBuilds['on top'])
    expect(text).toContain('2 screws, number 6, 1 in (25.4 mm) long, through block and top into the neck.')
    expect(text).toContain('9/64 in (or 4 mm)')
    expect(text).toContain('Root, tapered screw')
    expect(text).toContain('Root, design tables')
    expect(text).toContain('The strings ask almost nothing of them')
    expect(read(fasteners, soundBuilds.end)).toContain('The strings draw the most loaded one by')
  })

  test('writes the metric bit first in a millimetre build', () => {
    const metric = changed(soundBuilds['on top'], {units: 'in', ruler: '1/32'})
    expect(read(fasteners, metric)).toContain('5/64 in (or 2 mm)')
    const millimetres =
      'title: x\nunits: mm\nscale: 600\nneck: 40 x 20\nbox: 250 x 180 x 50\n' +
      'screws: [{size: 6, length: 16, along: [60], through: [washer, top], into: neck}]'
    expect(read(fasteners, millimetres)).toContain('1.5 mm (or 1/16 in)')
  })

  test('names the keys that would bring it', () => {
    expect(needs(fasteners, 'title: x')).toEqual(['screws'])
    expect(needs(fasteners, 'title: x\nscrews: [{size: 6, length: 1, at: [17]}]')).toEqual([
      'screws.1.through',
      'screws.1.into',
    ])
  })
})
