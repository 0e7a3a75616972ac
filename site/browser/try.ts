// The page that tries a change: it shows what its workers answer, and asks them for what is typed, tapped and dragged.
import {readLink} from '../try/link.ts'
import {showDrawing, watchHandles} from '../try/page-drawing.ts'
import {fieldTyped, offerKeys, showFields, showProblems} from '../try/page-fields.ts'
import {offerToWrite} from '../try/page-journal.ts'
import {offerSound, showSound} from '../try/page-sound.ts'
import {fileName, offerToTake, saveFile} from '../try/page-take.ts'
import type {Around} from '../try/session.ts'
import type {Told, View} from '../try/view.ts'
import type {AnswersMaking, AsksMaking} from './try-making.ts'
import type {Answers, Asks, Shows} from './try-worker.ts'

const page = document.querySelector<HTMLElement>('#Try')!
const part = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)!
const whole = part<HTMLTextAreaElement>('text')
const choice = part<HTMLSelectElement>('from')
const told = part('told')

const worker = new Worker(page.dataset.worker!, {type: 'module'})
let waiting: Asks[] = []
let isBusy = false
let view: View | undefined
/** The build that is open, as it started. */
let opened: {start: string; slug: string; around: Around} | undefined
let soon: ReturnType<typeof setTimeout> | undefined
/** What the making of the instrument brings up. */
let ofMaking: Told[] = []

/** Ask one thing at a time: of what waits, the last of its kind alone. */
function ask(asks: Asks): void {
  const key = (one: Asks) => ('path' in one ? one.path : 'name' in one ? one.name : one.ask)
  waiting = [...waiting.filter((one) => key(one) !== key(asks)), asks]
  next()
}

function next(): void {
  const asks = isBusy ? undefined : waiting.shift()
  if (!asks) return
  isBusy = true
  worker.postMessage(asks)
}

worker.addEventListener('message', ({data}: MessageEvent<Answers>) => {
  if (!data.isMore) isBusy = false
  if ('failed' in data) fail(data.failed)
  else show(data)
  next()
})
worker.addEventListener('error', () => {
  told.textContent = 'This browser cannot run what computes the plan; a newer one can.'
})

function fail(message: string): void {
  told.textContent = `This program fails at this text, which is its own fault: ${message}`
}

function show({view: now, unset, isChecked, keys}: Shows): void {
  view = now
  part('sheet').hidden = false
  if (!isHalfTyped(now)) {
    showDrawing(part('drawing'), now)
    showSound(page, now)
    showAnswer(now)
    part('tables').innerHTML = now.tables
    part('counts').textContent = now.counts
  }
  showTold()
  if (keys) offerKeys(part('key'), keys)
  told.textContent =
    unset.length > 0 ? `Not to be set by itself; write it in the text below: ${unset.join(', ')}.` : ''
  if (document.activeElement !== whole) whole.value = now.text
  page.dataset.shown = String(Number(page.dataset.shown ?? 0) + 1)
  page.toggleAttribute('data-checked', isChecked)
  clearTimeout(soon)
  soon = setTimeout(afterwards, 250)
}

/** Half a value cannot be read: until it is typed, all else stays as it was. */
const isHalfTyped = ({problems}: View): boolean => {
  const path = fieldTyped(document.activeElement)?.path
  return problems.some((one) => one.severity === 'error' && one.path === path)
}

/** Say what is otherwise than at the start. */
function showAnswer({says, isStart}: View): void {
  part('says').replaceChildren(
    ...says.map((one) => {
      const item = document.createElement('li')
      item.textContent = capital(one)
      return item
    }),
  )
  part('changed').hidden = !isStart
  part<HTMLButtonElement>('again').disabled = isStart
}

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`

/** Tell what would not work, in the instrument and in its making. */
function showTold(): void {
  if (!view) return
  const problems = [...view.problems, ...ofMaking]
  const rest = showFields(part('fields'), view, problems)
  showProblems(part('problems'), problems, rest)
  const grave = problems.filter(({severity}) => severity === 'error' || severity === 'fault').length
  const more = grave > 0 ? `${grave === 1 ? 'one thing' : `${grave} things`} would not work` : ''
  const [first] = view.says
  part('short').hidden = view.isStart
  const short = [first, more].filter(Boolean).join('; ') || 'changed'
  part('short').textContent = capital(short)
}

/** What may come a moment later: the address, what the making takes, what is kept for where there is no network. */
function afterwards(): void {
  if (view) history.replaceState(null, '', `${location.pathname}#${view.link}`)
  askMaking('making')
  keepOffline()
}

let making: Worker | undefined
let isMaking = false
let nextMaking: Parameters<typeof askMaking> | undefined

/** Have the second worker look at the text, once it is done with the last one. */
function askMaking(what: AsksMaking['ask'], name = ''): void {
  if (!view || !opened) return
  if (isMaking) {
    // What somebody waits for is not left out for what comes by itself.
    if (what !== 'making' || !nextMaking) nextMaking = [what, name]
    return
  }
  making ??= startMaking()
  isMaking = true
  making.postMessage({ask: what, text: view.text, name, ...opened} satisfies AsksMaking)
}

function startMaking(): Worker {
  const second = new Worker(page.dataset.making!, {type: 'module'})
  second.addEventListener('message', ({data}: MessageEvent<AnswersMaking>) => {
    isMaking = false
    if ('failed' in data) fail(data.failed)
    else if ('plan' in data) saveFile(fileName(view?.title ?? '', 'plan.json'), data.plan)
    else if ('journal' in data) writing?.(data.journal)
    else {
      // Of an older text it is told until the newer one comes.
      ofMaking = data.making.problems
      part('cuts').innerHTML = data.making.cuts
      part('making').hidden = data.making.cuts === ''
      showTold()
      page.dataset.made = String(Number(page.dataset.made ?? 0) + 1)
    }
    const asked = nextMaking
    nextMaking = undefined
    if (asked) askMaking(...asked)
  })
  return second
}

/** The build that was asked for last: an older answer opens nothing. */
let asked = ''

async function open(slug: string, changes: readonly (readonly [string, string])[]): Promise<void> {
  const root = page.dataset.root!
  asked = slug
  try {
    const get = async (file: string) => {
      const answer = await fetch(`${root}${file}`)
      if (!answer.ok) throw new Error(String(answer.status))
      return answer
    }
    const around = slug ? `builds/${slug}/around.json` : 'try/blank.json'
    const [text, rest] = await Promise.all([
      get(slug ? `builds/${slug}/build.md` : 'try/blank.md').then((answer) => answer.text()),
      get(around).then((answer) => answer.json()),
    ])
    if (asked !== slug) return
    opened = {start: text, slug: slug || 'new-build', around: rest}
    ofMaking = []
    ask({ask: 'open', text, slug: opened.slug, around: rest, changes})
  } catch {
    if (asked !== slug) return
    // Not where each answer writes, which would take it away; and what is still open keeps its name.
    part('link').textContent =
      'This build cannot be fetched. Without a network only what was opened before can be tried.'
    if (opened)
      choice.value = [...choice.options].some(({value}) => value === opened?.slug) ? opened.slug : ''
  }
}

function openAsked(): void {
  const link = readLink(location.hash)
  const given = link.from || (new URLSearchParams(location.search).get('from') ?? '')
  const isThere = [...choice.options].some(({value}) => value === given)
  choice.value = isThere ? given : ''
  void open(choice.value, isThere || !given ? link.changes : [])
  const left = given && !isThere ? 'The build that this link starts from is not in this journal.' : ''
  const more = link.left > 0 ? `${link.left} of the link’s changes cannot be read, and are left out.` : ''
  part('link').textContent = [left, more].filter(Boolean).join(' ')
}

let isKept = false

/** Have the page kept with all that it was made of: a browser that keeps nothing needs the network, and nothing else. */
function keepOffline(): void {
  const {offline, files = ''} = page.dataset
  if (isKept || !offline || !('serviceWorker' in navigator)) return
  isKept = true
  navigator.serviceWorker
    .register(offline)
    .then(() => navigator.serviceWorker.ready)
    .then(({active}) => {
      const loaded = performance.getEntriesByType('resource').map(({name}) => name)
      const own = [...loaded, ...files.split(' '), location.pathname]
      const all = own.map((name) => new URL(name, location.href).href)
      active?.postMessage([...new Set(all)].filter((url) => url.startsWith(location.origin)))
    })
    .catch(() => {})
}

choice.addEventListener('change', () => {
  part('link').textContent = ''
  void open(choice.value, [])
})
whole.addEventListener('input', () => ask({ask: 'write', text: whole.value}))
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
part('save-plan').addEventListener('click', () => askMaking('plan'))
/** Where the text of a new build is waited for. */
let writing: ((text: string) => void) | undefined
offerToWrite(page, {
  current: () => view,
  newText: (name) =>
    new Promise((resolve) => {
      writing = resolve
      askMaking('journal', name)
    }),
})
openAsked()
addEventListener('hashchange', openAsked)
