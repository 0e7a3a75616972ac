// The page that tries a change: it shows what its workers answer, and asks them for what is typed, tapped and dragged.
import {readLink} from '../try/link.ts'
import type {Answers, Made, Shows} from '../try/messages.ts'
import {showAnswer, showTold} from '../try/page-answer.ts'
import {startAsking} from '../try/page-asking.ts'
import {showDrawing, tellBreaks, watchHandles} from '../try/page-drawing.ts'
import {fieldTyped, offerKeys} from '../try/page-fields.ts'
import {takeDropped} from '../try/page-file.ts'
import {offerToWrite} from '../try/page-journal.ts'
import {startMaking} from '../try/page-making.ts'
import {keepOffline} from '../try/page-offline.ts'
import {askedFor, choose, fetchBuild, type Opened} from '../try/page-open.ts'
import {watchParts} from '../try/page-parts.ts'
import {patch, patchText} from '../try/page-patch.ts'
import {offerSound, showSound} from '../try/page-sound.ts'
import {fileName, offerToTake, saveFile} from '../try/page-take.ts'
import type {Drawn, Told, View} from '../try/view.ts'

const page = document.querySelector<HTMLElement>('#Try')!
const part = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)!
const whole = part<HTMLTextAreaElement>('text')
const choice = part<HTMLSelectElement>('from')
const told = part('told')

let view: View | undefined
let opened: Opened | undefined
/** What the making of the instrument brings up. */
let ofMaking: Told[] = []
let soon: ReturnType<typeof setTimeout> | undefined

const {ask, renew} = startAsking(page.dataset.worker!, hear, () => parts.lacks('plan'))
const given = () => view && opened && {text: view.text, ...opened}
const making = startMaking(page.dataset.making!, given, hearMaking, () => parts.lacks('making'))
const parts = watchParts(page, (again) => {
  if (again === 'making') making.ask('making')
  else renew(standing())
})

function hear(answer: Answers): void {
  if ('unfetched' in answer) parts.lacks('checks')
  else if ('failed' in answer) fail(answer.failed)
  else if ('drawn' in answer) draw(answer.drawn)
  else show(answer)
}

function fail(message: string): void {
  told.textContent = `This program fails at this text, which is its own fault: ${message}`
}

/** Half a value cannot be read: until it is typed, all else stays as it was. */
const isHalfTyped = ({unread}: Drawn): boolean => {
  const path = fieldTyped(document.activeElement)?.path
  return path !== undefined && unread.includes(path)
}

function draw(drawn: Drawn): void {
  part('sheet').hidden = false
  if (!isHalfTyped(drawn)) showDrawing(part('drawing'), drawn)
  page.dataset.drawn = String(Number(page.dataset.drawn ?? 0) + 1)
}

function show({view: now, unset, isChecked, keys}: Shows): void {
  view = now
  if (!isHalfTyped(now)) {
    tellBreaks(part('drawing'), now)
    showSound(page, now)
    showAnswer(page, now)
    patch(part('tables'), now.tables)
    patchText(part('counts'), now.counts)
  }
  showTold(page, view, ofMaking)
  if (keys) offerKeys(part('key'), keys)
  const left =
    unset.length > 0 ? `Not to be set by itself; write it in the text below: ${unset.join(', ')}.` : ''
  patchText(told, left)
  if (document.activeElement !== whole && whole.value !== now.text) whole.value = now.text
  page.dataset.shown = String(Number(page.dataset.shown ?? 0) + 1)
  page.toggleAttribute('data-checked', isChecked)
  parts.has('plan')
  if (isChecked) parts.has('checks')
  clearTimeout(soon)
  soon = setTimeout(afterwards, 250)
}

/** What may come a moment later: the address, what the making takes, what is kept for where there is no network. */
function afterwards(): void {
  if (view) history.replaceState(null, '', `${location.pathname}#${view.link}`)
  making.ask('making')
  keepOffline(page)
}

function hearMaking(answer: Made): void {
  parts.has('making')
  if ('failed' in answer) fail(answer.failed)
  else if ('plan' in answer) saveFile(fileName(view?.title ?? '', 'plan.json'), answer.plan)
  else if ('journal' in answer) writing?.(answer.journal)
  else {
    // Of an older text it is told until the newer one comes.
    ofMaking = answer.making.problems
    patch(part('cuts'), answer.making.cuts)
    part('making').hidden = answer.making.cuts === ''
    if (view) showTold(page, view, ofMaking)
    page.dataset.made = String(Number(page.dataset.made ?? 0) + 1)
  }
}

/** The build that was asked for last: an older answer opens nothing. */
let asked = 0

async function open(slug: string, changes: readonly (readonly [string, string])[]): Promise<void> {
  asked += 1
  const own = asked
  try {
    const build = await fetchBuild(page.dataset.root!, slug)
    if (asked !== own) return
    opened = build
    ofMaking = []
    // Where somebody writes, nothing is written over; that was the build before.
    whole.blur()
    ask({ask: 'open', text: build.start, slug: build.slug, around: build.around, changes})
  } catch {
    if (asked !== own) return
    // Not where each answer writes, which would take it away; and what is still open keeps its name.
    part('link').textContent =
      'This build cannot be fetched. Without a network only what was opened before can be tried.'
    if (opened) choose(choice, opened.slug)
  }
}

/** Tell another worker how all stands. */
function standing(): Parameters<typeof renew>[0] {
  if (!opened || !view) return []
  const {start: text, slug, around} = opened
  const {changes} = readLink(view.link)
  return [
    {ask: 'open', text, slug, around, changes},
    // What is otherwise than its values say was written by hand.
    {ask: 'write', text: view.text},
  ]
}

const openAsked = () => {
  const changes = askedFor(choice, part('link'))
  void open(choice.value, changes)
}

choice.addEventListener('change', () => {
  part('link').textContent = ''
  void open(choice.value, [])
})
whole.addEventListener('input', () => ask({ask: 'write', text: whole.value}))
takeDropped(whole, part('link'))
part('again').addEventListener('click', () => ask({ask: 'again'}))
part('short').addEventListener('click', () => part('answer').scrollIntoView())
page.addEventListener('input', ({target}) => {
  const typed = fieldTyped(target)
  if (typed) ask({ask: 'set', ...typed})
})
page.addEventListener('focusout', ({target}) => {
  const typed = fieldTyped(target)
  if (typed && (target as Element).ariaInvalid === 'true') ask({ask: 'set', ...typed})
})
page.addEventListener('click', ({target}) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-mend]') : null
  const problem = view && [...view.problems, ...ofMaking][Number(button?.dataset.mend)]
  if (!button || !view || !problem) return
  ask({ask: 'mend', text: view.text, problem, way: Number(button.dataset.way)})
  part('answer').focus()
})
part('key').addEventListener('change', ({target}) => {
  const select = target as HTMLSelectElement
  if (select.value) ask({ask: 'field', path: select.value})
  select.value = ''
})
watchHandles(part('drawing'), (name, mm) => ask({ask: 'move', name, mm}))
offerToTake(page, () => view)
offerSound(page, () => view)
part('save-plan').addEventListener('click', () => making.ask('plan'))
/** Where the text of a new build is waited for. */
let writing: ((text: string) => void) | undefined
offerToWrite(page, {
  current: () => view,
  newText: (name) =>
    new Promise((resolve) => {
      writing = resolve
      making.ask('journal', name)
    }),
})
openAsked()
addEventListener('hashchange', openAsked)
