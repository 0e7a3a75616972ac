import {readdirSync, readFileSync} from 'node:fs'
import {dirname, join} from 'node:path'
import {describe, expect, test} from 'vitest'

// The rooms of the house, as the contributor guide draws them: each reads those before it, and nothing runs back up.

const rooms = [
  'plugins/tables',
  'plugins/build-file',
  'plugins/cut-stock',
  'plugins/plan',
  'plugins/words',
  'plugins/checks',
  'plugins/drawings',
  'plugins/sections',
  'plugins/syntax',
  'plugins',
  'plugins/rehype',
  'site',
]

/** The folders of the rooms that have many, in the order that the contributor guide says; the room's top reads them. */
const foldersOf = {
  'plugins/build-file': ['schema', 'usual', 'rules', 'yaml', 'quantities', 'reading', 'heal', 'writing'],
  'plugins/plan': [
    ...['kit', 'neck-shape', 'strings', 'scale', 'action', 'neck', 'joint', 'box', 'fasteners', 'layout'],
    ...['proposals', 'stock', 'as-built', 'cautions', 'work'],
  ],
  site: [
    ...[
      'kit',
      'try',
      'browser',
      'pictures',
      'pages',
      'layouts',
      'steps',
      'journal',
      'editor',
      'publish',
      'make',
    ],
    ...['package', 'serve', 'commands'],
  ],
}

/** The plugin itself stands between the rooms that it plugs together and those that plug it in. */
const roomOf = (file: string) =>
  rooms.find((room) => room !== 'plugins' && file.startsWith(`${room}/`)) ?? 'plugins'

/** Every file of the program, with the files of it that it imports or takes types from, and all else it imports. */
const files = new Map(
  ['plugins', 'site'].flatMap((folder) =>
    readdirSync(folder, {recursive: true, encoding: 'utf8'})
      .filter((name) => name.endsWith('.ts'))
      .map((name) => [join(folder, name), importsOf(join(folder, name))] as const),
  ),
)

function importsOf(file: string): {own: string[]; others: string[]} {
  const named = [
    ...readFileSync(file, 'utf8').matchAll(
      /^(?:import|export|\}).*? from '([^']+)'$|\bimport\('([^']+)'\)/gm,
    ),
  ]
  const paths = named.map(([, path, later]) => (path ?? later)!)
  const isOwn = (path: string) => path.startsWith('.')
  return {
    own: paths.filter(isOwn).map((path) => join(dirname(file), path)),
    others: paths.filter((path) => !isOwn(path)),
  }
}

/** List all that imports itself by way of others. */
function circular(graph: ReadonlyMap<string, readonly string[]>): string[] {
  const reach = (from: string) => {
    const met = new Set<string>()
    const open = [...(graph.get(from) ?? [])]
    for (let one = open.pop(); one !== undefined; one = open.pop()) {
      if (met.has(one)) continue
      met.add(one)
      open.push(...(graph.get(one) ?? []))
    }
    return met
  }
  const reached = new Map([...graph.keys()].map((one) => [one, reach(one)]))
  return [...graph.keys()].filter((one) => reached.get(one)!.has(one))
}

describe('the house', () => {
  test('no room reads a room after it', () => {
    const backUp = [...files].flatMap(([file, {own}]) =>
      own
        .filter((path) => rooms.indexOf(roomOf(path)) > rooms.indexOf(roomOf(file)))
        .map((path) => [file, path]),
    )
    expect(backUp).toEqual([])
  })

  test.each(rooms)('there is no circle between the files of %s, by types neither', (room) => {
    const own = [...files].filter(([file]) => roomOf(file) === room)
    expect(circular(new Map(own.map(([file, imports]) => [file, imports.own])))).toEqual([])
  })

  test('there is no circle between folders, by types neither', () => {
    const folders = new Map<string, string[]>()
    for (const [file, {own}] of files) {
      const others = own.map((path) => dirname(path)).filter((folder) => folder !== dirname(file))
      folders.set(dirname(file), [...(folders.get(dirname(file)) ?? []), ...others])
    }
    expect(circular(folders)).toEqual([])
  })

  test.each(Object.entries(foldersOf))('in %s each folder reads those before it alone', (room, order) => {
    const own = [...files].filter(([file]) => file.startsWith(`${room}/`))
    // The room's top is its last: it reads its folders, and none of them reads it.
    const folderOf = (file: string) =>
      file
        .slice(room.length + 1)
        .split('/')
        .slice(0, -1)
        .join('/')
    const rank = (file: string) => (folderOf(file) === '' ? order.length : order.indexOf(folderOf(file)))
    expect([...new Set(own.map(([file]) => folderOf(file)))].sort()).toEqual(['', ...order].sort())
    const backUp = own.flatMap(([file, {own: read}]) =>
      read
        .filter((path) => path.startsWith(`${room}/`) && rank(path) > rank(file))
        .map((path) => [file, path]),
    )
    expect(backUp).toEqual([])
  })

  test('what is pure imports nothing of Node', () => {
    const pure = [...files].filter(([file]) => roomOf(file).startsWith('plugins'))
    expect(
      pure.flatMap(([file, {others}]) => others.filter((name) => name.startsWith('node:')).map(() => file)),
    ).toEqual([])
  })
})
