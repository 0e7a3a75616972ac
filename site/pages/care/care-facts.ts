import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import type {Inline} from '../../../plugins/sections/kit/inline.ts'
import {toElements} from '../../../plugins/sections/kit/to-elements.ts'
import {facts, length} from '../../../plugins/sections/kit.ts'
import {said} from '../../html/said.ts'
import type {SiteBuild} from '../../site-data.ts'

type Row = readonly [string, ...Inline[]]

/** Say how the instrument is set up, what it is made of, and who made it. */
export function careFacts(one: SiteBuild, maker: string | undefined): ElementContent[] {
  return [
    ...listed('Set up', setUp(one)),
    ...listed('Made of', madeOf(one)),
    ...listed('Made', [
      ...(maker ? [['By', maker] as const] : []),
      ...(one.build.values.finished ? [['Finished', one.build.values.finished.iso] as const] : []),
    ]),
  ]
}

function listed(title: string, rows: readonly Row[]): ElementContent[] {
  return rows.length > 0 ? [h('h2', title), ...toElements([facts(rows)])] : []
}

function setUp({plan, build: {values}}: SiteBuild): Row[] {
  const {scale, action} = plan
  const humidity = values.humidity?.map((each) => each.text)
  return [
    ...(scale?.lengthMm ? [['Scale length', length(scale.lengthMm, plan)] as const] : []),
    ...(action ? [['String height at the nut', length(action.nutMm, plan)] as const] : []),
    ...(action ? [['String height at the octave', length(action.octaveMm, plan)] as const] : []),
    [
      'Keep it at',
      humidity?.length === 2
        ? `${humidity[0]} to ${humidity[1]} % relative humidity`
        : '40 to 60 % relative humidity (common practice, no source)',
    ],
  ]
}

function madeOf(one: SiteBuild): Row[] {
  const {values} = one.build
  const neck = values.neck?.laminations?.flatMap(({wood}) => (wood ? [wood.text] : [])) ?? []
  const single = said(one, 'neck.wood')
  const box = said(one, 'box.wood')
  const finish = values.finish?.flatMap(({kind, coats}) =>
    kind ? [coats ? `${kind.value}, ${coats.text} ${coats.value === 1 ? 'coat' : 'coats'}` : kind.value] : [],
  )
  return [
    ...(box ? [['Box', box] as const] : []),
    ...(neck.length > 0
      ? [['Neck', [...new Set(neck)].join(', ')] as const]
      : single
        ? [['Neck', single] as const]
        : []),
    ...(finish?.length ? [['Finish', finish.join('; ')] as const] : []),
  ]
}
