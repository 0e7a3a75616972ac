import type {Element} from 'hast'
import {toHtml} from 'hast-util-to-html'
import {h} from 'hastscript'
import type {Problem} from '../../plugins/build-file/schema/problem.ts'
import {heroDrawing} from '../../plugins/drawings/hero/hero.ts'
import {type HeardString, heardStrings} from '../../plugins/sound/notes.ts'
import {differencesInWords} from '../../plugins/words/differences.ts'
import {bareLength} from '../../plugins/words/lengths.ts'
import {cents, forceWords, number} from '../../plugins/words/quantities.ts'
import {type Field, fieldsOf} from './fields.ts'
import {type Handle, handlesOf, type Scale} from './handles.ts'
import {linkOf} from './link.ts'
import {changedValues, pathAt, type Reading, type Session, shownText} from './session.ts'

/** What the page draws at once, before it is asked what would not work. */
export interface Drawn {
  /** The drawing as SVG; empty where there is none. */
  drawing: string
  handles: Handle[]
  scale: Scale | undefined
  /** What is otherwise than at the start, in words. */
  says: string[]
  /** The paths of what cannot be read. */
  unread: string[]
}

/** All that the page shows of a session, as texts: what shows it computes nothing. */
export interface View extends Drawn {
  text: string
  isStart: boolean
  startText: string
  title: string
  /** `was`: what it is at the start, where it is otherwise now. */
  fields: (Field & {value: string; usual: string; was: string | undefined})[]
  problems: Told[]
  /** How many things more would not work than at the start, in words, and how many are mended. */
  breaks: string[]
  /** Lines and strings as tables, as HTML, and how many there are. */
  tables: string
  counts: string
  /** What can be heard. */
  heard: HeardString[]
  isFretted: boolean
  link: string
}

/** A problem, and the path of the value that it is about. */
export type Told = Problem & {path: string | undefined}

/** Say which values the problems of a text are about. */
export const toldOf = ({build, problems}: Pick<Reading, 'build' | 'problems'>): Told[] =>
  problems.map((problem) => ({...problem, path: pathAt(build, problem)}))

/** Draw a session for the page. */
export function drawnOf({start, now}: Pick<Session, 'start' | 'now'>): Drawn {
  const found = handlesOf(now.plan)
  const {values} = now.build
  const svg = heroDrawing(now.plan, {
    boxWood: values.box?.wood?.value,
    plateWood: values.head?.plate?.wood?.value,
  })
  const errors = now.unread.filter(({severity}) => severity === 'error')
  return {
    drawing: svg ? toHtml(svg, {space: 'svg'}) : '',
    handles: found?.handles ?? [],
    scale: found?.scale,
    says: now.text === start.text ? [] : differencesInWords(start.plan, now.plan),
    unread: errors.flatMap((one) => pathAt(now.build, one) ?? []),
  }
}

/** Word a session for the page. */
export function viewOf(session: Session, drawn = drawnOf(session)): View {
  const {start, now} = session
  const problems = toldOf(now)
  const told = problems.flatMap(({severity, path}) => (severity === 'remark' || !path ? [] : [path]))
  const others = [...session.asked, ...session.changes.keys(), ...told]
  return {
    ...drawn,
    text: now.text,
    isStart: now.text === start.text,
    startText: start.text,
    title: now.plan.title ?? '',
    fields: fieldsOf(now.build, others).map(({path, ...field}) => {
      const [value, was] = [session.changes.get(path) ?? shownText(now, path), shownText(start, path)]
      return {path, ...field, value, usual: usualOf(now, path), was: value === was ? undefined : was}
    }),
    problems,
    breaks: breaks(start, now),
    tables: toHtml(
      [linesTable(start, now), stringsTable(start, now)].filter((one) => one !== undefined) as never,
    ),
    counts: counts(now),
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

function breaks(start: Reading, now: Reading): string[] {
  if (now.text === start.text) return []
  const grave = ({problems}: Reading) =>
    problems.filter(({severity}) => severity === 'error' || severity === 'fault').map(({rule}) => rule)
  const [was, is] = [grave(start), grave(now)]
  const fresh = is.filter((rule) => !was.includes(rule)).length
  const gone = was.filter((rule) => !is.includes(rule)).length
  const count = (many: number) => (many === 1 ? 'one thing' : `${many} things`)
  return [
    ...(fresh > 0 ? [`${count(fresh)} more would not work`] : []),
    ...(gone > 0 ? [`${count(gone)} that would not work ${gone === 1 ? 'is' : 'are'} mended`] : []),
  ]
}

/** Say what the tables hold. */
function counts({plan: {scale, strings}}: Reading): string {
  const count = (many = 0, what: string) => (many > 0 ? [`${many} ${what}${many === 1 ? '' : 's'}`] : [])
  return [...count(scale?.lines?.length, 'line'), ...count(strings?.length, 'string')].join(' and ')
}

interface Row {
  cells: (string | undefined)[]
  isChanged: boolean
}

function linesTable({plan: before}: Reading, {plan}: Reading) {
  const was = new Map(before.scale?.lines?.map(({label, markMm}) => [label, markMm]))
  const rows = (plan.scale?.lines ?? []).map(({label, markMm, markErrorCents, overBox}): Row => {
    const old = was.get(label)
    const isOther = old !== undefined && Math.abs(old - markMm) > 1e-6
    const now = isOther ? bareLength(old, before) : was.size > 0 && old === undefined ? 'new' : ''
    const off = cents(markErrorCents, 1).replace(/ cents?$/, '')
    return {
      cells: [label, bareLength(markMm, plan), now, off, overBox ? 'over the box' : ''],
      isChanged: now !== '',
    }
  })
  return table('Lines', ['Line', `From the nut, ${plan.units}`, 'Was', 'Off, cents', ''], rows)
}

function stringsTable({plan: before}: Reading, {plan}: Reading) {
  const rows = (plan.strings ?? []).map(({name, gauge, tensionN, pull}, i): Row => {
    const old = before.strings?.[i]?.tensionN
    const isOther = old !== undefined && tensionN !== undefined && Math.abs(tensionN / old - 1) > 0.005
    const part = isOther ? (tensionN / old - 1) * 100 : 0
    const change = isOther ? `${part > 0 ? 'up' : 'down'} ${number(Math.abs(part), 0)} %` : ''
    const force = tensionN === undefined ? '' : forceWords(tensionN, plan)
    return {cells: [name, gauge, force, change, pull], isChanged: isOther}
  })
  return table('Strings', ['String', 'Gauge', 'Pull', 'Change', 'Feels'], rows)
}

/** Lay out a table; rows that are otherwise than at the start are marked. */
export function table(caption: string, heads: string[], rows: readonly Row[]): Element | undefined {
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
        rows.map(({cells: [first, ...cells], isChanged}) =>
          h('tr', {dataChanged: isChanged ? '' : undefined}, [
            h('th', {scope: 'row'}, first),
            ...cells.map((cell) => h('td', cell ?? '')),
          ]),
        ),
      ),
    ]),
  ])
}
