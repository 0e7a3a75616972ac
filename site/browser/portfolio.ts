// The portfolio's controls: they narrow, sort and search all builds, and keep the choice in the page's address. Cards
// of later pages come from those pages, once they are wanted.
import {soughtIn} from '../kit/search-words.ts'

/** A build as list.json has it. */
interface Listed {
  slug: string
  title: string
  /** The page of the portfolio that holds its card. */
  page: number
  scale?: number
  has: Readonly<Record<string, string | readonly string[] | undefined>>
}

/** As many cards as are shown at once. */
const most = 60

const list = document.querySelector<HTMLUListElement>('.cards')
const row = document.querySelector<HTMLOListElement>('.hanging ol')
const rule = row?.querySelector('.rule')
const pages = document.querySelector<HTMLElement>('.pages')
const controls = document.querySelector<HTMLElement>('.controls')
const status = controls?.querySelector('[role=status]')
const button = controls?.querySelector('button')
const fields = [...(controls?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[name]') ?? [])]

/** Cards and hanging figures by what they belong to, as far as their page has been fetched. */
const cards = new Map<string, Element>()
const hung = new Map<string, Element>()
const fetched = new Map<number, Promise<void>>([[1, Promise.resolve()]])
keep(document.documentElement)
const first = [...cards.keys()]

function keep(from: Element): void {
  for (const card of from.querySelectorAll('.card')) cards.set(card.id, card)
  for (const item of from.querySelectorAll<HTMLElement>('.hanging [data-card]'))
    hung.set(item.dataset.card!, item)
}

const kept = new Map<string, Promise<unknown>>()
function json<T>(file: string): Promise<T> {
  const asked = kept.get(file) ?? fetch(file).then((answer) => answer.json())
  kept.set(file, asked)
  return asked as Promise<T>
}

/** Take the cards of a later page over, with the woods that its figures are filled with. */
function adopt(page: number): Promise<void> {
  const asked =
    fetched.get(page) ??
    fetch(`page/${page}/`)
      .then((answer) => answer.text())
      .then((html) => {
        const there = document.adoptNode(new DOMParser().parseFromString(html, 'text/html').documentElement)
        for (const pattern of there.querySelectorAll('.rule pattern'))
          if (!document.getElementById(pattern.id)) rule?.querySelector('defs')?.append(pattern)
        keep(there)
      })
  fetched.set(page, asked)
  return asked
}

function fits({has, scale}: Listed, name: string, wanted: string): boolean {
  if (name === 'scale') {
    const [from, to] = wanted.split(' ').map(Number)
    return scale !== undefined && scale >= from! && scale < to!
  }
  const own = has[name]
  return typeof own === 'string' ? own === wanted : (own ?? []).includes(wanted)
}

const orders: Readonly<Record<string, (a: Listed, b: Listed) => number>> = {
  scale: (a, b) => (a.scale ?? Number.POSITIVE_INFINITY) - (b.scale ?? Number.POSITIVE_INFINITY),
  title: (a, b) => a.title.localeCompare(b.title),
}

/** Find what is asked for, in the order that is asked for. */
async function find(asked: readonly {name: string; value: string}[]): Promise<Listed[]> {
  const given = (name: string) => asked.find((one) => one.name === name)?.value ?? ''
  const search = soughtIn(given('words'))
  const words = search.length > 0 ? await json<Record<string, string>>('search.json') : {}
  const narrowed = asked.filter(({name}) => name !== 'words' && name !== 'sort')
  const found = (await json<Listed[]>('list.json')).filter(
    (one) =>
      narrowed.every(({name, value}) => fits(one, name, value)) &&
      search.every((word) => ` ${words[one.slug] ?? ''}`.includes(` ${word}`)),
  )
  const order = orders[given('sort')]
  return order ? [...found].sort(order) : found
}

let turn = 0
let atMost = most

async function apply(): Promise<void> {
  const mine = ++turn
  const asked = fields.filter(({value}) => value !== '').map(({name, value}) => ({name, value}))
  const query = new URLSearchParams(asked.map(({name, value}) => [name, value])).toString()
  history.replaceState(null, '', query ? `?${query}` : location.pathname)
  if (asked.length === 0) return show(first, '')
  try {
    const found = await find(asked)
    const shown = found.slice(0, atMost)
    await Promise.all([...new Set(shown.map(({page}) => page))].map(adopt))
    if (mine !== turn) return
    const all = (await json<Listed[]>('list.json')).length
    show(
      shown.map(({slug}) => `card-${slug}`),
      `${found.length} of ${all} found${found.length > shown.length ? `, the first ${shown.length} shown` : ''}`,
    )
    if (found.length > shown.length) offerMore()
  } catch {
    if (status) status.textContent = 'The list of builds cannot be fetched now.'
  }
}

function show(ids: readonly string[], says: string): void {
  const of = (known: ReadonlyMap<string, Element>) => ids.flatMap((id) => known.get(id) ?? [])
  list?.replaceChildren(...of(cards))
  row?.replaceChildren(...(rule ? [rule] : []), ...of(hung))
  if (status) status.textContent = says
  if (button) button.hidden = says === ''
  if (pages) pages.hidden = says !== ''
}

/** More than are shown at once come when they are asked for. */
function offerMore(): void {
  const more = document.createElement('button')
  more.type = 'button'
  more.textContent = 'Show more'
  more.addEventListener('click', () => {
    atMost += most
    void apply()
  })
  const item = document.createElement('li')
  item.className = 'controls'
  item.append(more)
  list?.append(item)
}

function restore(): void {
  const asked = new URLSearchParams(location.search)
  for (const field of fields) field.value = asked.get(field.name) ?? ''
  const narrow = controls?.querySelector<HTMLDetailsElement>('.narrow')
  if (narrow) narrow.open = [...asked.keys()].some((name) => name !== 'words' && name !== 'sort')
}

controls?.addEventListener('input', () => {
  atMost = most
  void apply()
})
button?.addEventListener('click', () => {
  for (const field of fields) field.value = ''
  void apply()
})
restore()
if (location.search) void apply()
