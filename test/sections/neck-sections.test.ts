import type {RootContent} from 'mdast'
import {gfmToMarkdown} from 'mdast-util-gfm'
import {toMarkdown} from 'mdast-util-to-markdown'
import {describe, expect, test} from 'vitest'
import {kitToMarkdown} from '../../plugins/sections/kit-to-markdown.ts'
import {neck} from '../../plugins/sections/neck.ts'
import {scarf} from '../../plugins/sections/scarf.ts'
import type {Section} from '../../plugins/sections/section.ts'
import {changed} from '../support/changed.ts'
import {planOf} from '../support/plan-of.ts'
import {soundBuilds} from '../support/sound-builds.ts'
import {soundNecks} from '../support/sound-necks.ts'
import '../support/slow.ts'

const read = (children: RootContent[]) =>
  toMarkdown({type: 'root', children}, {extensions: [gfmToMarkdown(), kitToMarkdown], bullet: '-'})
const words = (section: Section, base: string, changes: Record<string, string> = {}) =>
  read(section.content({...planOf(changed(base, changes)), attributes: {}}))

describe('neck', () => {
  test('says how long a stick to start from, and why', () => {
    expect(words(neck, soundNecks.laminated)).toMatch(
      /^Start from a stick 34 31\/32 in \(887\.5 mm\) long\. /,
    )
    expect(words(neck, soundNecks.laminated)).toContain(
      'That is the finished length and 1/2 in at each end to square, 17/32 in for the saw cut at 14°, less 1/16 in that the bend gives back, since the piece sawn off is turned over and glued under the neck’s end.',
    )
    expect(words(neck, soundNecks['straight head'])).toContain('Start from a stick 34 1/2 in')
    expect(words(neck, soundNecks['head out of the solid'])).toContain('the head can be sawn out of it')
  })

  test('lists its layers from the face down, and when each is glued', () => {
    const text = words(neck, soundNecks.laminated)
    expect(text).toMatch(/layer 1 black cherry .* 1\/4 in behind to tail end +\| after the scarf/)
    expect(text).toMatch(
      /layer 2 white ash, black walnut, white ash, 3 strips .* whole length +\| before the scarf/,
    )
  })

  test('says whether it is stiff enough, or what would tell', () => {
    expect(words(neck, soundNecks.plain)).toContain('Stiff enough: the strings bow it by 1/32 in')
    expect(words(neck, soundNecks.plain, {'neck.thickness': '5/16'})).toContain('Not stiff enough')
    expect(words(neck, soundNecks.plain, {'neck.wood': ''})).toContain('Add `neck.wood` to the file.')
  })

  test('says how to fret it only where it is fretted', () => {
    expect(words(neck, soundNecks['four strings on a narrow nut'])).toContain('### Fretting')
    expect(words(neck, soundNecks.plain)).not.toContain('Fretting')
  })

  test('needs a neck or a scale to say anything', () => {
    const input = {...planOf('title: x'), attributes: {}}
    expect(neck.needs(input)).toEqual(['scale.length', 'neck'])
    expect(scarf.needs(input)).toEqual(['scale.length', 'head'])
    expect(neck.content(input)).toEqual([])
    expect(scarf.content(input)).toEqual([])
  })
})

describe('head and scarf', () => {
  test('says what is sawn, and which way the head is glued', () => {
    const text = words(scarf, soundNecks.laminated)
    expect(text).toContain(
      'Saw the scarf at 14° to the stick, through 5/8 in (15.9 mm): what is glued on after',
    )
    expect(text).toContain('Turn the piece that was sawn off over and lay it under the neck’s end')
    // The stick slopes under the 3/16 in face, which ends in a step.
    expect(text).toMatch(/D3 +\| +2 in \(50.8 mm\) \| +7\/16 in to the bass side \| +12.5°/)
  })

  test('of the other kinds says how they are made', () => {
    expect(words(scarf, soundNecks['straight head'])).toContain('runs on straight behind the nut')
    expect(words(scarf, soundNecks['straight head'])).toContain('A bar across the strings behind the nut')
    expect(words(scarf, soundNecks['head out of the solid'])).toContain('Saw the head out of the solid')
  })

  test.each(Object.entries({...soundBuilds, ...soundNecks}))('reads without a gap: %s', (_, base) => {
    for (const section of [neck, scarf]) {
      const text = words(section, base)
      expect(text).not.toMatch(/undefined|NaN|Infinity/)
      expect(text.length).toBeGreaterThan(100)
    }
  })
})
