import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {Kind} from '../../plugins/build-file/schema/kinds.ts'
import {leafAt, valueAt} from '../../plugins/build-file/schema/path.ts'
import {buildSchema} from '../../plugins/build-file/schema/schema.ts'

/** A value that has a field of its own on the page. */
export interface Field {
  path: string
  label: string
  group: string
}

const groups: readonly (readonly [group: string, fields: readonly (readonly [string, string])[]])[] = [
  [
    'Scale and bridge',
    [
      ['scale.length', 'Scale length'],
      ['scale.lines', 'Lines'],
      ['bridge.from-tail', 'Bridge to the box’s tail'],
      ['bridge.height', 'Bridge height'],
    ],
  ],
  [
    'Strings over the face',
    [
      ['action.nut', 'Over the nut line'],
      ['action.octave', 'Over the octave'],
    ],
  ],
  [
    'Box',
    [
      ['box.length', 'Length'],
      ['box.width', 'Width'],
      ['box.depth', 'Depth'],
      ['box.at', 'Nut to box'],
      ['box.top.thickness', 'Top'],
    ],
  ],
  [
    'Neck',
    [
      ['neck.length', 'Length of the stick'],
      ['neck.width.nut', 'Width at the nut'],
      ['neck.width.tail', 'Width at the tail'],
      ['neck.thickness', 'Thickness'],
      ['head.length', 'Head'],
    ],
  ],
]

/** List the fields of a build: what matters most, each of its strings, and whatever else is asked for. */
export function fieldsOf({values}: Build, others: readonly string[]): Field[] {
  const strings = (values.strings ?? []).flatMap((_, at): Field[] => [
    {path: `strings.${at + 1}.note`, label: `Note of string ${at + 1}`, group: 'Strings'},
    {path: `strings.${at + 1}.gauge`, label: `Gauge of string ${at + 1}`, group: 'Strings'},
  ])
  const [first, ...rest] = groups.map(([group, fields]) =>
    fields.map(([path, label]): Field => ({path, label, group})),
  )
  const known = [...(first ?? []), ...strings, ...rest.flat()]
  const added = [...new Set(others)].filter(
    (path) => isField(path) && !known.some((one) => one.path === path),
  )
  return [...known, ...added.map((path) => ({path, label: labelOf(path), group: 'Others'}))]
}

/** A value of one text has a field. */
const isField = (path: string): boolean => {
  const leaf = leafAt(path)
  return leaf !== undefined || choices.has(path.replace(/\.\d+\b/g, '.1'))
}

/** Name a value by its keys: `neck.laminations.1.thickness` is `Neck laminations 1 thickness`. */
function labelOf(path: string): string {
  const words = path.replaceAll(/[.-]/g, ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}

/** List every value that a build could have, by its path: of lists those that are there, and one more. */
export const keysOf = ({values}: Build): string[] =>
  pathsOf(buildSchema as unknown as Kind, '', (list) => {
    const there = valueAt(values, list)
    return Array.isArray(there) ? there.length + 1 : 1
  })

function pathsOf(kind: Kind, path: string, count: (list: string) => number): string[] {
  const under = (key: string | number) => (path ? `${path}.${key}` : String(key))
  switch (kind.is) {
    case 'record':
      return Object.entries(kind.fields).flatMap(([key, field]) => pathsOf(field as Kind, under(key), count))
    case 'list':
      return Array.from({length: count(path)}, (_, at) =>
        pathsOf(kind.item as Kind, under(at + 1), count),
      ).flat()
    case 'either':
      return [
        ...new Set([
          ...pathsOf(kind.first as Kind, path, count),
          ...pathsOf(kind.second as Kind, path, count),
        ]),
      ]
    case 'leaf':
    case 'choice':
      return [path]
    default:
      return []
  }
}

/** Values that are one of several words, lists as `1`. */
const choices = new Set(pathsOf(buildSchema as unknown as Kind, '', () => 1))
