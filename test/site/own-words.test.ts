import {readFileSync} from 'node:fs'
import {describe, expect, test} from 'vitest'
import {isMap, isScalar, isSeq, type Node, parseDocument, type Scalar} from 'yaml'
import {valueAt} from '../../plugins/build-file/schema/path.ts'
import {downloadNames, isOwnName} from '../../site/kit/own-names.ts'
import {uncachedSteps} from '../../site/steps/run-steps.ts'
import fc from '../support/properties.ts'

// Words that every object of JavaScript knows (ECMAScript, Object.prototype), and the names of what a value has here:
// in a build file they are words like any other.

const words = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'place',
  'text',
  'wood',
  'length',
]
const sources = [
  'test/journals/long-example/builds/lantern-pier/index.md',
  'builds/needle-box-one.md',
  'builds/ice-house.md',
].map((file) => {
  const [, front = '', ...body] = readFileSync(file, 'utf8').split(/^---\n/m)
  return {front, body: body.join('---\n')}
})
const owned = `
accept: {bow: it plays, __proto__: it plays, constructor: it plays, wood: it plays}
tolerances: {__proto__: 1/4, constructor: 1/4}
measured: {__proto__: 3, constructor.prototype: 3, lines: {12: 12, __proto__: 3}}
played:
  - {on: 2026-03-16, scores: {__proto__: 3, constructor: 4, wood: 2, place: 1, text: 5, value: 3}}
  - {on: 2026-03-17, scores: {hasOwnProperty: 3, toString: 2}}
`
const prose = words
  .map(
    (word) => `
# ${word}

::${word}{${word}=${word}}

:value[${word}] :value[scale.${word}] [a](${word}) ![b](${word}.jpg) [c][${word}] [${word}] [^${word}] <${word}>d</${word}>

[${word}]: ${word}.md
[^${word}]: A note.

<p id="${word}" class="${word}" ${word}="${word}">e</p>
`,
  )
  .join('')

const steps = uncachedSteps()

/** Read, plan, draw and word a build, and list what this program fails at. */
async function faultsOf(text: string, isMade = true) {
  const read = await steps.read({slug: 'constructor', text, journal: {}})
  const surroundings = {files: ['constructor'], builds: [{slug: 'toString', basedOn: '__proto__'}]}
  const planned = await steps.plan({read, text, surroundings, context: {journal: {}, pieces: []}})
  const page = {
    path: 'a.md',
    relatives: {copies: []},
    pictures: new Map(),
    published: [],
    pathPrefix: '/',
    isForVisitors: false,
  }
  const made = isMade ? await steps.make({planned, readKey: read.key, text, ...page}) : undefined
  const given = isMade
    ? await steps.give({build: planned.build, plan: planned.plan, text, journal: {}})
    : undefined
  const faults = [...planned.problems, ...(made?.faults ?? [])]
    .filter(({rule}) => rule === 'program-fails')
    .map(({message}) => message)
  return {...planned, html: made?.html ?? '', faults: [...faults, ...(given?.failed ?? [])]}
}

/** Every key and every value of a YAML text. */
function nodesOf(node: Node | null): {keys: Scalar[]; values: Scalar[]} {
  if (isScalar(node)) return {keys: [], values: [node]}
  if (isSeq(node)) return join(node.items.map((item) => nodesOf(item as Node)))
  if (!isMap(node)) return {keys: [], values: []}
  return join(
    node.items.map(({key, value}) => {
      const inside = nodesOf(value as Node)
      return {keys: [key as Scalar, ...inside.keys], values: inside.values}
    }),
  )
}

const join = (all: {keys: Scalar[]; values: Scalar[]}[]) => ({
  keys: all.flatMap(({keys}) => keys),
  values: all.flatMap(({values}) => values),
})

/** Put a word at one place or at every place of a front matter, as key or as value. */
function withWord(front: string, word: string, of: 'keys' | 'values', at?: number): string {
  const doc = parseDocument(front, {uniqueKeys: false})
  const all = nodesOf(doc.contents)[of]
  for (const node of at === undefined ? all : [all[at % all.length]!]) node.value = word
  return doc.toString()
}

describe('words that every object knows', () => {
  test.each(words)('%s as every value', async (word) => {
    for (const {front, body} of sources) {
      const {faults} = await faultsOf(`---\n${withWord(front, word, 'values')}---\n${body}`)
      expect(faults).toEqual([])
    }
  })

  test('as a key or a value anywhere', async () => {
    const changes = fc.array(
      fc.tuple(
        fc.constantFrom('keys' as const, 'values' as const),
        fc.constantFrom(...words),
        fc.nat(10_000),
      ),
      {minLength: 1, maxLength: 4},
    )
    await fc.assert(
      fc.asyncProperty(fc.constantFrom(...sources), changes, async ({front}, all) => {
        const changed = all.reduce((text, [of, word, at]) => withWord(text, word, of, at), front)
        const {faults} = await faultsOf(`---\n${changed}---\n`, all.length === 1)
        expect(faults).toEqual([])
      }),
      {numRuns: 150},
    )
  })

  test('as keys of the maker’s own are kept, told and shown', async () => {
    const {build, problems, html, faults} = await faultsOf(
      `---\n${sources[1]!.front.replace(/^(accept|tolerances|measured|played):.*\n( .*\n)*/gm, '')}${owned}---\n`,
    )
    expect(faults).toEqual([])
    expect(valueAt(build.values, 'played.1.scores.__proto__')).toMatchObject({text: '3'})
    expect(Object.keys(build.values.accept ?? {})).toEqual(['bow', '__proto__', 'constructor', 'wood'])
    for (const word of ['__proto__', 'constructor', 'wood']) {
      expect(problems.filter(({message}) => message.includes(word)).map(({rule}) => rule)).toContain(
        'unknown-rule',
      )
      expect(html).toMatch(new RegExp(`<th[^>]*>${word}</th>`))
    }
    expect(problems.filter(({rule}) => rule === 'unknown-wood')).toEqual([])
  })

  test('in the prose', async () => {
    const {html, faults} = await faultsOf(`---\n${sources[1]!.front}---\n${prose}`)
    expect(faults).toEqual([])
    expect(html).not.toMatch(/native code|\[object Object\]|undefined/)
  })
})

// What a build gives away is written beside its page, so a file of its folder must not lie there.
test.each([
  'index.html',
  'Index.HTML/a.mp3',
  'build.md',
  'plan.json',
  'care/a.pdf',
  'bench/index.html',
  'photos/a.mp3',
  ...downloadNames,
])('%s is a name of the page’s own', (name) => expect(isOwnName(name)).toBe(true))
test.each(['constructor', '__proto__', 'care.mp3', 'a/care', 'songs/index.html'])('%s is not', (name) =>
  expect(isOwnName(name)).toBe(false),
)
