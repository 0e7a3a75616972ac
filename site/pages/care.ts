import type {ElementContent} from 'hast'
import {h} from 'hastscript'
import {facts, type Inline, toElements} from '../../plugins/sections/kit.ts'
import {table} from '../../plugins/sections/kit-table.ts'
import {length} from '../../plugins/sections/measures.ts'
import {keyOf} from '../kit/cache.ts'
import {markup, withPrefix} from '../kit/markup.ts'
import type {Page} from '../kit/page.ts'
import type {SiteBuild, SiteData} from '../kit/site-data.ts'
import {said} from './build-facts.ts'

/** Write the sheet that goes with each instrument to whoever plays it. */
export function carePages({builds, around}: SiteData): Page[] {
  return builds.map((one) => ({
    address: `/builds/${one.slug}/care/`,
    layout: 'sheet',
    key: keyOf('care', one.key),
    data: {
      title: `${one.title}: strings and care`,
      describes: `What ${one.title} is strung with, how it is set up, and how to keep it.`,
      within: `/builds/${one.slug}/`,
      unlisted: one.isDraft,
    },
    content: () => markup(withPrefix(care(one, around.maker), around.prefix)),
  }))
}

function care(one: SiteBuild, maker: string | undefined) {
  return h('article.care', [
    h('header.page-head', [
      h('h1', one.title),
      one.build.values.summary ? h('p', one.build.values.summary.value) : undefined,
    ]),
    h('div.prose', [...careStrings(one), ...careFacts(one, maker), ...changingStrings(one)]),
  ])
}

/** Say what to tune to, and exactly which strings to buy. */
function careStrings({plan}: SiteBuild): ElementContent[] {
  const strings = plan.strings ?? []
  if (strings.length === 0) return []
  const strung = table({
    caption: 'From the player’s bass side; buy single strings of these gauges',
    columns: [
      {head: 'Tune to'},
      {head: 'Gauge'},
      {head: 'Made of'},
      {head: 'End'},
      {head: 'At least this long'},
    ],
    rows: strings.map(({name, gauge, wound, material, wrap, ends, lengthNeededMm}) => [
      name,
      gauge ?? '',
      wound ? `wound, ${wrap ?? 'any wrap'}` : material ? `plain ${material}` : '',
      ends ? `${ends} end` : '',
      // Rounded up: a string that is a little long is cut, one that is short is lost.
      lengthNeededMm === undefined ? '' : length(lengthNeededMm, plan, 'up'),
    ]),
  })
  return [h('h2', 'Strings'), ...toElements([strung])]
}

type Row = readonly [string, ...Inline[]]

/** Say how the instrument is set up, what it is made of, and who made it. */
function careFacts(one: SiteBuild, maker: string | undefined): ElementContent[] {
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

/** Say how strings are changed on this instrument; common practice, no source. */
function changingStrings({build, plan}: SiteBuild): ElementContent[] {
  if (!plan.strings?.length) return []
  const isLoose = plan.bridge?.on === 'top'
  const through =
    build.values.anchors?.kind?.value === 'ferrule' ? 'through its hole at the tail' : 'on at the tail'
  return [
    h('h2', 'Changing strings'),
    h('ol', [
      h('li', 'Wear something over your eyes: a string under pull whips when it breaks or is cut.'),
      h(
        'li',
        `Change one string at a time${isLoose ? '; the pull of the others keeps the bridge in its place' : ', so that the neck keeps its pull'}.`,
      ),
      h('li', 'Turn the tuner until the string hangs loose before you cut or unwind it.'),
      h(
        'li',
        `Put the new one ${through}, over bridge and nut, leave slack for two or three turns, and wind them downwards on the post.`,
      ),
      h('li', 'Tune it up slowly to its note, stretch it gently by hand, and tune it again until it stays.'),
    ]),
    h('p.source', 'Source: common practice, no source.'),
  ]
}
