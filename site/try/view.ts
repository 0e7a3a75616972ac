import {toHtml} from 'hast-util-to-html'
import {h} from 'hastscript'
import {heroDrawing} from '../../plugins/drawings/hero/hero.ts'
import {type HeardString, heardStrings} from '../../plugins/sound/notes.ts'
import {differencesInWords} from '../../plugins/words/differences.ts'
import {bareLength} from '../../plugins/words/lengths.ts'
import {cents, forceWords, number} from '../../plugins/words/quantities.ts'
import {type Field, fieldsOf} from './fields.ts'
import {type Handle, handlesOf, type Scale} from './handles.ts'
import {linkOf} from './link.ts'
import {changedValues, pathAt, type Reading, type Session, shownText} from './session.ts'

/** All that the page shows of a session, as texts: what shows it computes nothing. */
export interface View {
  text: string
  isStart: boolean
  title: string
  fields: (Field & {value: string; usual: string; isChanged: boolean})[]
  problems: Told[]
  /** The drawing as SVG; empty where there is none. */
  drawing: string
  handles: Handle[]
  scale: Scale | undefined
  /** What is otherwise than at the start, in words. */
  says: string[]
  /** Lines and strings as tables, as HTML. */
  tables: string
  /** What can be heard. */
  heard: HeardString[]
  isFretted: boolean
  link: string
}

/** A problem as it is told: at its field, with what would do. */
interface Told {
  severity: string
  rule: string
  message: string
  line: number
  path: string | undefined
  ways: readonly string[]
}

/** Word a session for the page. */
export function viewOf(session: Session): View {
  const {start, now} = session
  const found = handlesOf(now.plan)
  const {values} = now.build
  const svg = heroDrawing(now.plan, {
    boxWood: values.box?.wood?.value,
    plateWood: values.head?.plate?.wood?.value,
  })
  return {
    text: now.text,
    isStart: now.text === start.text,
    title: now.plan.title ?? '',
    fields: fieldsOf(now.build).map((field) => ({
      ...field,
      value: session.changes.get(field.path) ?? shownText(now, field.path),
      usual: usualOf(now, field.path),
      isChanged: shownText(now, field.path) !== shownText(start, field.path),
    })),
    problems: now.problems.map(({severity, rule, message, line, expected, ...place}) => ({
      severity,
      rule,
      message,
      line,
      path: pathAt(now.build, {line, ...place}),
      ways: (expected ?? []).slice(0, 3),
    })),
    drawing: svg ? toHtml(svg, {space: 'svg'}) : '',
    handles: found?.handles ?? [],
    scale: found?.scale,
    says: says(start, now),
    tables: toHtml(
      [linesTable(start, now), stringsTable(start, now)].filter((one) => one !== undefined) as never,
    ),
    heard: heardStrings(now.plan),
    isFretted: now.plan.intonation !== undefined,
    link: linkOf(session.slug, changedValues(session)),
  }
}

/** What an empty field comes to: what is assumed, or else what follows from the others. */
function usualOf({settled, plan}: Reading, path: string): string {
  const {box, action, neck} = plan
  const following: Readonly<Record<string, number | undefined>> = {
    'box.at': box?.atMm,
    'bridge.height': action?.bridgeHeightMm,
    'action.nut': action?.nutMm,
    'action.octave': action?.octaveMm,
    'neck.length': neck?.budget?.lengthMm,
  }
  const mm = following[path]
  const assumed = settled.assumptions.find((one) => one.path === path)?.value
  return assumed ?? (mm === undefined ? '' : bareLength(mm, plan))
}

function says(start: Reading, now: Reading): string[] {
  if (now.text === start.text) return []
  const grave = ({problems}: Reading) =>
    problems.filter(({severity}) => severity === 'error' || severity === 'fault').map(({rule}) => rule)
  const [was, is] = [grave(start), grave(now)]
  const fresh = is.filter((rule) => !was.includes(rule)).length
  const gone = was.filter((rule) => !is.includes(rule)).length
  const count = (many: number) => (many === 1 ? 'one thing' : `${many} things`)
  return [
    ...differencesInWords(start.plan, now.plan),
    ...(fresh > 0 ? [`${count(fresh)} more would not work`] : []),
    ...(gone > 0 ? [`${count(gone)} that would not work ${gone === 1 ? 'is' : 'are'} mended`] : []),
  ]
}

type Row = (string | undefined)[]

function linesTable({plan: before}: Reading, {plan}: Reading) {
  const was = new Map(before.scale?.lines?.map(({label, markMm}) => [label, markMm]))
  const rows = (plan.scale?.lines ?? []).map(({label, markMm, markErrorCents, overBox}): Row => {
    const old = was.get(label)
    const isOther = old !== undefined && Math.abs(old - markMm) > 1e-6
    return [
      label,
      bareLength(markMm, plan),
      isOther ? bareLength(old, before) : was.size > 0 && old === undefined ? 'new' : '',
      cents(markErrorCents, 1),
      overBox ? 'over the box' : '',
    ]
  })
  return table('Lines', ['Line', `From the nut, ${plan.units}`, 'Was', 'As marked', ''], rows)
}

function stringsTable({plan: before}: Reading, {plan}: Reading) {
  const rows = (plan.strings ?? []).map(({name, gauge, tensionN, pull}, i): Row => {
    const old = before.strings?.[i]?.tensionN
    const isOther = old !== undefined && tensionN !== undefined && Math.abs(tensionN / old - 1) > 0.005
    const part = isOther ? (tensionN / old - 1) * 100 : 0
    return [
      name,
      gauge ?? '',
      tensionN === undefined ? '' : forceWords(tensionN, plan),
      isOther ? `${part > 0 ? '+' : '−'}${number(Math.abs(part), 0)} %` : '',
      pull ?? '',
    ]
  })
  return table('Strings', ['String', 'Gauge', 'Pull', 'Against the start', 'Feels'], rows)
}

function table(caption: string, heads: string[], rows: Row[]) {
  if (rows.length === 0) return undefined
  return h('div.scrolling', [
    h('table', [
      h('caption', caption),
      h('thead', [
        h(
          'tr',
          heads.map((head) => (head ? h('th', {scope: 'col'}, head) : h('td'))),
        ),
      ]),
      h(
        'tbody',
        rows.map(([first, ...cells]) =>
          h('tr', {dataChanged: cells[1] || cells[2] ? '' : undefined}, [
            h('th', {scope: 'row'}, first),
            ...cells.map((cell) => h('td', cell)),
          ]),
        ),
      ),
    ]),
  ])
}
