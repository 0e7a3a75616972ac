import {execFileSync} from 'node:child_process'
import {
  chmodSync,
  lstatSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  readlinkSync,
  renameSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs'
import {dirname, join} from 'node:path'

/** Draw from a list, or a whole number below another: the same seed, the same draws (mulberry32). */
export interface Draw {
  below: (most: number) => number
  of: <T>(list: readonly T[]) => T
}

export function drawFrom(seed: number): Draw {
  let state = seed >>> 0
  const next = () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), 1 | state)
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32
  }
  const below = (most: number) => Math.floor(next() * most)
  return {below, of: (list) => list[below(list.length)]!}
}

const names = [
  '__proto__.md',
  'constructor.md',
  'toString',
  'index.md',
  'INDEX.MD',
  'README.md',
  'rack.yaml',
  'journal.yaml',
  '.hidden.md',
  '..md',
  '-.md',
  '%2e%2e.md',
  'a b.md',
  'a\nb.md',
  'a\u202eb.md',
  '\u001b[2J.md',
  '<b>.md',
  `'"&.md`,
  'a\\b.md',
  'plan.json',
  'care',
  'bench.md',
  'photos',
  'front.jpg',
  'front#1.jpg',
  'what?.png',
  '\u00fc.md',
  'u\u0308.md',
  `${'x'.repeat(250)}.md`,
  `${'x'.repeat(240)}.jpg`,
]

const words = [
  '__proto__',
  'constructor',
  'hasOwnProperty: 3',
  '0',
  '-1',
  '1/0',
  '1e999',
  '24 inn',
  '400 mm',
  'none',
  'true',
  '~',
  '[]',
  '{}',
  '[[[[',
  '{a: {a: {a: ',
  '"',
  '#',
  '- a',
  '*x',
  '&x',
  '<<: *x',
  '!!js/function "f"',
  '\t',
  '---',
  '...',
  '\u0000',
  '\u001b[31m',
  '\u009b',
  '\u202e',
  '\ud800',
  '\ufeff',
  '::lines',
  '::drawing{view=top}',
  ':value[scale.lengthMm]',
  ':value[__proto__.a]',
  '![a](front.jpg)',
  '![a](__proto__)',
  '[a](../secret.txt)',
  '[a](slipway.md)',
  '<img src=front.jpg>',
  '<script>a()</script>',
  '<!--',
  ']]>',
  '|a|b|\n|-|-|\n',
  '```',
  '[^a]: b',
  'publish: false',
  'based-on: slipway',
  'cover: front.jpg',
  'take: [A1]',
  'started: 2026-03-07',
]

type Mutation = (path: string, all: readonly string[], draw: Draw) => void

/** Change the text of a file at places between its words. */
const slip: Mutation = (path, _, draw) => {
  const parts = readFileSync(path, 'utf8').split(/(?<=[\s,:[\]{}])/)
  for (let left = 1 + draw.below(4); left > 0; left--) {
    const at = draw.below(parts.length)
    parts[at] = draw.of(words) + draw.of([' ', '\n', ''])
  }
  writeFileSync(path, parts.join(''))
}

const repeat: Mutation = (path, _, draw) => {
  const lines = readFileSync(path, 'utf8').split('\n')
  const at = draw.below(lines.length)
  lines[at] = `${lines[at]}\n`.repeat(Math.min(10 ** (1 + draw.below(4)), 1e6 / (lines[at]!.length + 1)))
  writeFileSync(path, lines.join('\n'))
}

const truncate: Mutation = (path, _, draw) => {
  const bytes = readFileSync(path)
  writeFileSync(path, bytes.subarray(0, draw.below(bytes.length + 1)))
}

const scatter: Mutation = (path, _, draw) => {
  const bytes = readFileSync(path)
  for (let left = 1 + draw.below(20); left > 0 && bytes.length > 0; left--)
    bytes[draw.below(bytes.length)] = draw.below(256)
  writeFileSync(path, bytes)
}

const noise: Mutation = (path, _, draw) =>
  writeFileSync(path, Buffer.from(Array.from({length: draw.below(3000)}, () => draw.below(256))))

/** Put one file's middle into another. */
const splice: Mutation = (path, all, draw) => {
  const other = readFileSync(draw.of(all))
  const own = readFileSync(path)
  const [at, from] = [draw.below(own.length + 1), draw.below(other.length + 1)]
  writeFileSync(
    path,
    Buffer.concat([own.subarray(0, at), other.subarray(from, from + 400), own.subarray(at)]),
  )
}

const swap: Mutation = (path, all, draw) => {
  const other = draw.of(all)
  const [own, theirs] = [readFileSync(path), readFileSync(other)]
  writeFileSync(path, theirs)
  writeFileSync(other, own)
}

const asFolder: Mutation = (path, all, draw) => {
  const own = readFileSync(path)
  rmSync(path)
  mkdirSync(path)
  if (draw.below(2))
    writeFileSync(join(path, draw.of(names)), draw.below(2) ? own : readFileSync(draw.of(all)))
}

const asLink: Mutation = (path, all, draw) => {
  const to = [
    draw.of(all),
    'nowhere',
    path,
    '..',
    '.',
    '../secret.txt',
    '/dev/zero',
    '/dev/stdin',
    '/proc/self/mem',
  ]
  rmSync(path)
  symlinkSync(draw.of(to), path)
}

const asPipe: Mutation = (path) => {
  rmSync(path)
  execFileSync('mkfifo', [path])
}

const renamed: Mutation = (path, _, draw) => {
  const folder = draw.below(3)
    ? dirname(path)
    : join(dirname(path), draw.of(['photos', '__proto__', 'plan.json']))
  mkdirSync(folder, {recursive: true})
  renameSync(path, join(folder, draw.of(names)))
}

const renamedFolder: Mutation = (path, _, draw) =>
  renameSync(dirname(path), join(dirname(dirname(path)), draw.of(names)))

const mutations: readonly Mutation[] = [
  ...Array<Mutation>(8).fill(slip),
  repeat,
  truncate,
  truncate,
  scatter,
  scatter,
  noise,
  splice,
  splice,
  swap,
  asFolder,
  asLink,
  asLink,
  asPipe,
  renamed,
  renamed,
  renamedFolder,
  (path) => rmSync(path),
  (path, _, draw) => chmodSync(path, draw.of([0, 0o200, 0o400])),
  (path, _, draw) => chmodSync(dirname(path), draw.of([0, 0o200, 0o400, 0o500])),
]

/** Harm the files below a folder in one to six ways; what cannot be done to a file is not done. */
export function mutateJournal(folder: string, draw: Draw): void {
  for (let left = 1 + draw.below(6); left > 0; left--) {
    const files = plainFiles(folder)
    if (files.length === 0) return
    const [mutation, path] = [draw.of(mutations), draw.of(files)]
    try {
      mutation(path, files, draw)
    } catch {
      // Somebody else's rights, a name that is too long, a folder in the way.
    }
  }
}

/** List the plain files below a folder, sorted, so that a seed always means the same one. */
function plainFiles(folder: string): string[] {
  const inside = (at: string): string[] => {
    try {
      return readdirSync(at)
        .sort()
        .flatMap((name) => {
          const path = join(at, name)
          const kind = lstatSync(path)
          return kind.isDirectory() ? inside(path) : kind.isFile() ? [path] : []
        })
    } catch {
      return []
    }
  }
  return inside(folder)
}

/** Say what lies in a folder, for a report. */
export function listing(folder: string, at = ''): string[] {
  try {
    return readdirSync(join(folder, at)).flatMap((name) => {
      const path = join(at, name)
      const kind = lstatSync(join(folder, path))
      if (kind.isDirectory()) return [`${path}/`, ...listing(folder, path)]
      return kind.isSymbolicLink() ? [`${path} -> ${readlinkSync(join(folder, path))}`] : [path]
    })
  } catch {
    return [`${at}/ (closed)`]
  }
}
