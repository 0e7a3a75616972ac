import type {Build} from '../../plugins/build-file/build.ts'

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
    'Action',
    [
      ['action.nut', 'String over the nut line'],
      ['action.octave', 'String over the octave'],
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

/** List the fields of a build: what matters most, and each of its strings. */
export function fieldsOf({values}: Build): Field[] {
  const strings = (values.strings ?? []).flatMap((_, at): Field[] => [
    {path: `strings.${at + 1}.note`, label: `Note of string ${at + 1}`, group: 'Strings'},
    {path: `strings.${at + 1}.gauge`, label: `Gauge of string ${at + 1}`, group: 'Strings'},
  ])
  const [first, ...others] = groups.map(([group, fields]) =>
    fields.map(([path, label]): Field => ({path, label, group})),
  )
  return [...(first ?? []), ...strings, ...others.flat()]
}
