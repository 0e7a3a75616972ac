// On every page: the list of contents stands open where there is room beside the page, boxes stay ticked between
// visits, and what is folded is printed too.
const contents = document.querySelector<HTMLDetailsElement>('details.contents')
if (contents) contents.open = matchMedia('(min-width: 80rem)').matches

const boxes = [...document.querySelectorAll<HTMLInputElement>('input[type=checkbox]:not([disabled])')]
const place = `ticked ${location.pathname}`

/** A box is known by its own key, or else by what stands beside it: a changed plan does not tick another step. */
const nameOf = (box: HTMLInputElement) =>
  box.value === 'on' ? (box.labels?.[0]?.textContent?.trim() ?? '') : box.value

function recall(): void {
  const ticked: unknown = JSON.parse(localStorage.getItem(place) ?? '[]')
  for (const box of boxes) if (Array.isArray(ticked) && ticked.includes(nameOf(box))) box.checked = true
}

function remember(): void {
  localStorage.setItem(place, JSON.stringify(boxes.filter(({checked}) => checked).map(nameOf)))
}

if (boxes.length > 0) {
  try {
    recall()
    addEventListener('change', remember)
  } catch {
    // A browser that keeps nothing loses the ticks and nothing else.
  }
}

const folded = () => [...document.querySelectorAll<HTMLDetailsElement>('main details:not([open], .contents)')]
let opened: HTMLDetailsElement[] = []
addEventListener('beforeprint', () => {
  opened = folded()
  for (const fold of opened) fold.open = true
})
addEventListener('afterprint', () => {
  for (const fold of opened) fold.open = false
})
