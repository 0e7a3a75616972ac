import {mkdtempSync, readdirSync, rmSync, writeFileSync} from 'node:fs'
import {tmpdir} from 'node:os'
import {join} from 'node:path'
import {afterAll, describe, expect, test} from 'vitest'
import {readBuild} from '../../plugins/build-file/read.ts'
import type {Surroundings} from '../../plugins/build-file/schema/build.ts'
import {readBody} from '../../plugins/syntax/body.ts'
import {relevant} from '../../site/journal/surroundings.ts'
import {keyOf, openCache} from '../../site/kit/cache.ts'
import {cachedSteps} from '../../site/steps/cached-steps.ts'
import {uncachedSteps} from '../../site/steps/run-steps.ts'
import type {Steps} from '../../site/steps/steps.ts'
import {fourLines} from '../support/temp-journal.ts'

import '../support/slow.ts'

/** Do all steps of a build. */
async function whole(steps: Steps, text: string, slug = 'needle-box') {
  const read = await steps.read({slug, text, journal: {}})
  const surroundings = {files: [], builds: [{slug}]}
  const planned = await steps.plan({read, text, surroundings, context: {journal: {}, pieces: []}})
  const relatives = {copies: []}
  const page = {
    path: `${slug}.md`,
    relatives,
    pictures: new Map(),
    published: [],
    pathPrefix: '/',
    isForVisitors: false,
  }
  const made = await steps.make({planned, readKey: read.key, text, ...page})
  const given = await steps.give({
    build: planned.build,
    plan: planned.plan,
    text,
    journal: {},
  })
  const drawn = await steps.draw({build: planned.build, plan: planned.plan, isPictured: false})
  return {read, planned, made, given, drawn}
}

describe('steps', () => {
  test('a file that this program fails on is a problem of that file', async () => {
    const steps = uncachedSteps()
    const read = await steps.read({slug: 'a', text: fourLines('A'), journal: {}})
    const broken = {
      ...read,
      build: {...read.build, values: {...read.build.values, strings: 'broken' as never}},
    }
    const planned = await steps.plan({
      read: broken,
      text: fourLines('A'),
      surroundings: {files: [], builds: []},
      context: {journal: {}, pieces: []},
    })
    expect(planned.problems.map(({rule, severity}) => [rule, severity])).toContainEqual([
      'program-fails',
      'fault',
    ])
    expect(planned.plan.slug).toBe('a')
  })
})

describe('a page that this program fails on', () => {
  const steps = uncachedSteps()

  /** Make the page of a build whose plan is broken. */
  async function made(text: string, broken: object) {
    const read = await steps.read({slug: 'a', text, journal: {}})
    const around = {surroundings: {files: [], builds: []}, context: {journal: {}, pieces: []}}
    const {plan, ...settled} = await steps.plan({read, text, ...around})
    const planned = {...settled, plan: {...plan, ...broken}}
    const where = {published: [], pathPrefix: '/', isForVisitors: false}
    const page = {path: 'a.md', relatives: {copies: []}, pictures: new Map(), ...where}
    return steps.make({planned, readKey: read.key, text, ...page})
  }

  test('says so, and keeps its prose, its drawing and its other sections', async () => {
    const {html, drawing, faults, words} = await made(`${fourLines('A')}\nPlaned by lamplight.\n`, {
      strings: 'broken',
    })
    expect(faults.map(({rule, severity}) => [rule, severity])).toContainEqual(['program-fails', 'fault'])
    expect(html).toContain('Planed by lamplight.')
    expect(html).toContain('This program fails to show this')
    expect(drawing).toMatch(/<svg[^>]*drawing-/)
    expect(html).toContain('id="cut-list"')
    expect(words).toContain('lamplight')
  })

  test('keeps its prose as it was written where it cannot be set', async () => {
    const {html, faults} = await made(
      `${fourLines('A')}\nPlaned by <b>lamplight</b>, :value[scale.lengthMm].\n`,
      {
        scale: Object.defineProperty({}, 'lengthMm', {
          enumerable: true,
          get() {
            throw new Error('broken')
          },
        }),
      },
    )
    expect(faults.length).toBeGreaterThan(0)
    expect(html).toContain('Planed by &#x3C;b>lamplight&#x3C;/b>')
  })
})

describe('what is kept', () => {
  const folder = mkdtempSync(join(tmpdir(), 'kept-'))
  afterAll(() => rmSync(folder, {recursive: true}))

  /** Steps that count how often each step is done. */
  function counted() {
    const done = {look: 0, read: 0, plan: 0, make: 0, draw: 0, compare: 0, give: 0}
    const own = uncachedSteps()
    const count =
      <I, R>(step: keyof typeof done, work: (input: I) => Promise<R>) =>
      (input: I) => {
        done[step]++
        return work(input)
      }
    const steps: Steps = {
      look: count('look', own.look),
      lookedAt: own.lookedAt,
      read: count('read', own.read),
      plan: count('plan', own.plan),
      make: count('make', own.make),
      draw: count('draw', own.draw),
      compare: count('compare', own.compare),
      give: count('give', own.give),
    }
    return {done, steps}
  }

  test('is taken again for the same input, also by another process, and done anew for another', async () => {
    const first = counted()
    const made = await whole(
      cachedSteps(openCache(folder, 'v1'), async () => first.steps),
      fourLines('Needle box'),
    )
    const again = counted()
    const kept = cachedSteps(openCache(folder, 'v1'), async () => again.steps)
    expect(await whole(kept, fourLines('Needle box'))).toEqual(JSON.parse(JSON.stringify(made)))
    expect(again.done).toEqual({look: 0, read: 0, plan: 0, make: 0, draw: 0, compare: 0, give: 0})
    await whole(kept, fourLines('Needle box', 'status: on the bench\n'))
    expect(again.done).toEqual({look: 0, read: 1, plan: 1, make: 1, draw: 1, compare: 0, give: 1})
    await whole(kept, `${fourLines('Needle box')}\nPlaned by lamplight.\n`)
    expect(again.done).toEqual({look: 0, read: 2, plan: 2, make: 2, draw: 1, compare: 0, give: 1})
  })

  test('is not taken where it has another shape, or names that would become paths', async () => {
    const right = Object.keys((await whole(uncachedSteps(), fourLines('Needle box'))).given)
    const wrong = [
      '{}',
      'null',
      '[]',
      '{"key": "another", "build": {}, "plan": {}, "problems": []}',
      '{"../../../climbed.md": {"text": "taken"}}',
      '{"start.md": 5}',
    ]
    for (const content of wrong) {
      // Written as the cache writes, so that only its shape is wrong.
      for (const name of readdirSync(join(folder, 'v1')))
        writeFileSync(join(folder, 'v1', name), keyOf(name, content) + content)
      const again = counted()
      const kept = cachedSteps(openCache(folder, 'v1'), async () => again.steps)
      const {given, planned} = await whole(kept, fourLines('Needle box'))
      expect(Object.keys(given)).toEqual(right)
      expect(planned.plan.slug).toBe('needle-box')
    }
  })

  test('is kept under keys alone', async () => {
    const cache = openCache(folder, 'v1')
    await expect(cache.bytes('../climbed', async () => Buffer.from('x'))).rejects.toThrow('no key')
  })

  test('is made once for all who ask at once, and leaves nothing half written', async () => {
    let times = 0
    const cache = openCache(folder, 'v3')
    const ask = () =>
      cache.bytes('abc123', async () => {
        times++
        return Buffer.from('x'.repeat(100_000))
      })
    const all = await Promise.all(Array.from({length: 20}, ask))
    expect([times, new Set(all.map(String)).size]).toEqual([1, 1])
    expect(readdirSync(join(folder, 'v3'))).toEqual(['abc123.bytes'])
    rmSync(join(folder, 'v3'), {recursive: true})
  })

  test('is not taken by another version, and a torn file is as if it were not there', async () => {
    for (const name of readdirSync(join(folder, 'v1'))) writeFileSync(join(folder, 'v1', name), '{"torn')
    const torn = counted()
    const keeps = openCache(folder, 'v1')
    await whole(
      cachedSteps(keeps, async () => torn.steps),
      fourLines('Needle box'),
    )
    expect(torn.done).toEqual({look: 0, read: 1, plan: 1, make: 1, draw: 1, compare: 0, give: 1})
    const newer = counted()
    const newest = openCache(folder, 'v2')
    await whole(
      cachedSteps(newest, async () => newer.steps),
      fourLines('Needle box'),
    )
    expect(newer.done.read).toBe(1)
    await newest.tidy()
    expect(readdirSync(folder)).toEqual(['v2'])
  })
})

describe('what a build depends on around it', () => {
  const around: Surroundings = {
    files: ['front.jpg', 'back.jpg', 'other.txt'],
    builds: [
      {slug: 'a'},
      {slug: 'b', basedOn: 'c'},
      {slug: 'c', basedOn: 'd'},
      {slug: 'd'},
      {slug: 'needle-box'},
    ],
  }
  const of = (front: string, body = '') =>
    relevant(
      readBuild(`---\ntitle: A\n${front}---\n${body}`, {slug: 'a', journal: {}, body: readBody}).build,
      around,
    )

  test('is what it names and what its original descends from', () => {
    expect(of('based-on: b\n', '![x](front.jpg) [d](d.md)')).toEqual({
      files: ['front.jpg'],
      builds: [{slug: 'a'}, {slug: 'b', basedOn: 'c'}, {slug: 'c', basedOn: 'd'}, {slug: 'd'}],
    })
    expect(of('')).toEqual({files: [], builds: [{slug: 'a'}]})
  })

  test('and for what is not there, the nearest that is', () => {
    expect(of('based-on: nedle-box\n', '![x](frnt.jpg)')).toEqual({
      files: ['front.jpg'],
      builds: [{slug: 'a'}, {slug: 'needle-box'}],
    })
  })

  test('goes round a circle of copies once', () => {
    const circle = {
      files: [],
      builds: [
        {slug: 'a', basedOn: 'b'},
        {slug: 'b', basedOn: 'a'},
      ],
    }
    const {build} = readBuild('---\ntitle: A\nbased-on: b\n---\n', {slug: 'a', journal: {}, body: readBody})
    expect(relevant(build, circle)).toEqual(circle)
  })
})
