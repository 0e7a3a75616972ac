// On every page: boxes stay ticked between visits, a link opens the fold that it leads into, what is folded is printed
// too, and what scrolls sideways can be reached by the keyboard.
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

const folded = () => [...document.querySelectorAll<HTMLDetailsElement>('main details:not([open])')]
let opened: HTMLDetailsElement[] = []
addEventListener('beforeprint', () => {
  opened = folded()
  for (const fold of opened) fold.open = true
})
addEventListener('afterprint', () => {
  for (const fold of opened) fold.open = false
})

/** What an address names; as it is written, where it was cut in the middle of a sign. */
function named(hash: string): string {
  try {
    return decodeURIComponent(hash)
  } catch {
    return hash
  }
}

/** A link into a fold, or to its name, opens it: where a browser does not by itself. */
function unfold(): void {
  const target = document.getElementById(named(location.hash.slice(1)))
  const isName = target?.parentElement?.localName === 'summary' || target?.localName === 'details'
  let fold = target?.closest('details')
  if (!target || !fold || (fold.open && isName)) return
  for (; fold; fold = fold.parentElement?.closest('details')) fold.open = true
  target.scrollIntoView()
}
addEventListener('hashchange', unfold)
unfold()

/** Only what scrolls takes the focus, and says what it is. */
function reach(box: HTMLElement): void {
  const scrolls = box.scrollWidth > box.clientWidth
  box.toggleAttribute('tabindex', scrolls)
  if (!scrolls) return
  box.tabIndex = 0
  box.role = 'group'
  box.ariaLabel = box.querySelector('caption')?.textContent ?? 'Table'
}
const sizes = new ResizeObserver((seen) => {
  for (const {target} of seen) reach(target as HTMLElement)
})
for (const box of document.querySelectorAll('main .scrolling:not([tabindex])')) sizes.observe(box)

// The drawing's names are one stop of the keyboard: arrow keys lead from name to name.
const names = [...document.querySelectorAll<SVGAElement>('.drawing-whole a')]
for (const [at, name] of names.entries()) {
  if (at > 0) name.setAttribute('tabindex', '-1')
  name.addEventListener('keydown', (event) => {
    const step = {ArrowDown: 1, ArrowRight: 1, ArrowUp: -1, ArrowLeft: -1}[event.key]
    const next = step && names[at + step]
    if (!next) return
    event.preventDefault()
    for (const one of names) one.setAttribute('tabindex', one === next ? '0' : '-1')
    next.focus()
  })
}

// Pointed at, a name on the drawing and its row are washed together.
for (const name of names) {
  const row = document.querySelector(name.getAttribute('href')!)
  if (!row) continue
  for (const one of [name, row])
    for (const event of ['pointerenter', 'pointerleave', 'focusin', 'focusout'])
      one.addEventListener(event, () => {
        const isMeant = event === 'pointerenter' || event === 'focusin'
        for (const each of [name, row]) each.classList.toggle('meant', isMeant)
      })
}
