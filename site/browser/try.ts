// The page that tries a change: it shows what its worker answers, and asks it for what is typed, tapped and dragged.
import {readLink} from '../try/link.ts'
import {showDrawing, watchHandles} from '../try/page-drawing.ts'
import {fieldTyped, showFields} from '../try/page-fields.ts'
import {offerSound, showSound} from '../try/page-sound.ts'
import {fileName, offerToTake, saveFile} from '../try/page-take.ts'
import type {View} from '../try/view.ts'
import type {Answers, Asks} from './try-worker.ts'

const page = document.querySelector<HTMLElement>('#Try')!
const part = <E extends HTMLElement>(name: string) => page.querySelector<E>(`[data-part=${name}]`)!
const whole = part<HTMLTextAreaElement>('text')
const choice = part<HTMLSelectElement>('from')
const told = part('told')

const worker = new Worker(page.dataset.worker!, {type: 'module'})
let waiting: Asks[] = []
let isBusy = false
let view: View | undefined
let linkSoon: ReturnType<typeof setTimeout> | undefined

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
  isBusy = false
  if ('failed' in data)
    told.textContent = `This program fails at this text, which is its own fault: ${data.failed}`
  else if ('plan' in data) saveFile(fileName(view?.title ?? '', 'plan.json'), data.plan)
  else show(data.view, data.unset)
  next()
})
worker.addEventListener('error', () => {
  told.textContent = 'This browser cannot run what computes the plan; a newer one can.'
})

function show(now: View, unset: readonly string[]): void {
  view = now
  part('sheet').hidden = false
  showDrawing(part('drawing'), now)
  showFields(part('fields'), part('problems'), now)
  showSound(page, now)
  part('says').textContent = now.says.length > 0 ? `${now.says.join('; ')}.` : ''
  part('changed').textContent = now.isStart ? 'Nothing is changed yet.' : ''
  part('tables').innerHTML = now.tables
  told.textContent =
    unset.length > 0 ? `Not to be set by itself; write it in the text below: ${unset.join(', ')}.` : ''
  if (document.activeElement !== whole) whole.value = now.text
  part<HTMLButtonElement>('again').disabled = now.isStart
  page.dataset.shown = String(Number(page.dataset.shown ?? 0) + 1)
  if (page.dataset.shown === '1') keepOffline()
  clearTimeout(linkSoon)
  linkSoon = setTimeout(() => history.replaceState(null, '', `${location.pathname}#${now.link}`), 400)
}

async function open(slug: string, changes: readonly (readonly [string, string])[]): Promise<void> {
  const root = page.dataset.root!
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
    ask({ask: 'open', text, slug: slug || 'new-build', around: rest, changes})
  } catch {
    told.textContent =
      'This build cannot be fetched. Without a network only what was opened before can be tried.'
  }
}

function openAsked(): void {
  const asked = readLink(location.hash)
  const given = asked.from || (new URLSearchParams(location.search).get('from') ?? '')
  const isThere = [...choice.options].some(({value}) => value === given)
  choice.value = isThere ? given : ''
  void open(choice.value, isThere || !given ? asked.changes : [])
  const left = given && !isThere ? 'The build that this link starts from is not in this journal.' : ''
  const more = asked.left > 0 ? `${asked.left} of the link’s changes cannot be read, and are left out.` : ''
  part('link').textContent = [left, more].filter(Boolean).join(' ')
}

/** Have the page kept with all that it was made of: a browser that keeps nothing needs the network, and nothing else. */
function keepOffline(): void {
  const {offline} = page.dataset
  if (!offline || !('serviceWorker' in navigator)) return
  navigator.serviceWorker
    .register(offline)
    .then(() => navigator.serviceWorker.ready)
    .then(({active}) => {
      const loaded = performance.getEntriesByType('resource').map(({name}) => name)
      const own = [...loaded, page.dataset.worker!, location.pathname]
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
page.addEventListener('input', ({target}) => {
  const typed = fieldTyped(target)
  if (typed) ask({ask: 'set', ...typed})
})
page.addEventListener('click', ({target}) => {
  const button = target instanceof Element ? target.closest<HTMLElement>('[data-mend]') : null
  if (!button) return
  ask({ask: 'mend', at: Number(button.dataset.mend), way: Number(button.dataset.way)})
  part('says').focus()
})
watchHandles(part('drawing'), (name, mm) => ask({ask: 'move', name, mm}))
offerToTake(page, () => view)
offerSound(page, () => view)
part('save-plan').addEventListener('click', () => ask({ask: 'plan'}))
openAsked()
addEventListener('hashchange', openAsked)
