// The portfolio's controls: they narrow, sort and search the cards, and keep the choice in the page's address.
import {plain} from '../search-words.ts'

const list = document.querySelector<HTMLUListElement>('.cards')
const controls = document.querySelector<HTMLElement>('.controls')
const cards = [...document.querySelectorAll<HTMLLIElement>('.card')]
const fields = [...(controls?.querySelectorAll<HTMLInputElement | HTMLSelectElement>('[name]') ?? [])]
const hanging = new Map(
  [...document.querySelectorAll<HTMLElement>('.hanging [data-card]')].map((item) => [
    item.dataset.card,
    item,
  ]),
)
let words: Promise<Record<string, string>> | undefined

/** Fetch the words of all builds, once. */
function allWords(): Promise<Record<string, string>> {
  words ??= fetch('search.json').then((answer) => answer.json())
  return words
}

function fits(card: HTMLElement, name: string, wanted: string): boolean {
  if (name === 'scale') {
    const [from, to] = wanted.split(' ').map(Number)
    const scale = Number(card.dataset.scale ?? Number.NaN)
    return scale >= from! && scale < to!
  }
  return (card.dataset[name] ?? '').split('\n').includes(wanted)
}

async function apply(): Promise<void> {
  const asked = fields.filter(({value}) => value !== '')
  const search = plain(asked.find(({name}) => name === 'words')?.value ?? '').match(/\S+/g) ?? []
  const found = search.length > 0 ? await allWords() : {}
  const narrowed = asked.filter(({name}) => name !== 'words' && name !== 'sort')
  let count = 0
  for (const card of cards) {
    const text = found[card.id.slice('card-'.length)] ?? ''
    const isShown =
      narrowed.every(({name, value}) => fits(card, name, value)) &&
      search.every((word) => ` ${text}`.includes(` ${word}`))
    card.hidden = !isShown
    const item = hanging.get(card.id)
    if (item) item.hidden = !isShown
    if (isShown) count++
  }
  sort(asked.find(({name}) => name === 'sort')?.value)
  report(count, asked.length > 0)
  const query = new URLSearchParams(asked.map(({name, value}) => [name, value])).toString()
  history.replaceState(null, '', query ? `?${query}` : location.pathname)
}

function sort(by: string | undefined): void {
  const order = [...cards]
  if (by === 'scale') order.sort((a, b) => scaleOf(a) - scaleOf(b))
  if (by === 'title') order.sort((a, b) => (a.dataset.title ?? '').localeCompare(b.dataset.title ?? ''))
  for (const card of order) {
    list?.append(card)
    const item = hanging.get(card.id)
    item?.parentElement?.append(item)
  }
}

const scaleOf = (card: HTMLElement) => Number(card.dataset.scale ?? Number.POSITIVE_INFINITY)

function report(count: number, isNarrowed: boolean): void {
  const status = controls?.querySelector('[role=status]')
  if (status) status.textContent = isNarrowed ? `${count} of ${cards.length} shown` : ''
  const button = controls?.querySelector('button')
  if (button) button.hidden = !isNarrowed
}

function restore(): void {
  const asked = new URLSearchParams(location.search)
  for (const field of fields) field.value = asked.get(field.name) ?? ''
  const narrow = controls?.querySelector<HTMLDetailsElement>('.narrow')
  if (narrow) narrow.open = [...asked.keys()].some((name) => name !== 'words' && name !== 'sort')
}

controls?.addEventListener('input', () => void apply())
controls?.querySelector('button')?.addEventListener('click', () => {
  for (const field of fields) field.value = ''
  void apply()
})
restore()
void apply()
