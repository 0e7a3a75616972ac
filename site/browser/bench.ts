// On a bench sheet: one step a screen, where that is asked for, and what is ticked here as a text for the build file.
const sheet = document.querySelector<HTMLElement>('.bench')!
const steps = [...sheet.querySelectorAll<HTMLElement>('.bench-steps > li')]
const bar = sheet.querySelector<HTMLElement>('.step-bar')!
const [open, close, back, next] = ['open', 'close', 'back', 'next'].map(
  (name) => sheet.querySelector<HTMLButtonElement>(`.step-${name}`)!,
) as [HTMLButtonElement, HTMLButtonElement, HTMLButtonElement, HTMLButtonElement]
const told = bar.querySelector('output')!
const place = `step ${location.pathname}`

/** The box of a whole step is the first in it. */
const boxOf = (step: HTMLElement) => step.querySelector<HTMLInputElement>('input[type=checkbox]')!

let here = -1

/** Show one step alone; −1 shows all. */
function show(at: number): void {
  here = Math.max(-1, Math.min(at, steps.length - 1))
  const isOne = here >= 0
  sheet.classList.toggle('one-step', isOne)
  for (const [i, step] of steps.entries()) step.classList.toggle('here', i === here)
  bar.hidden = !isOne
  open.hidden = isOne
  if (!isOne) return
  told.textContent = `${here + 1} of ${steps.length}`
  back.disabled = here === 0
  next.disabled = here === steps.length - 1
  scrollTo(0, 0)
}

/** Where it was left, or the first step that is not ticked. */
const firstOpen = () =>
  Math.max(
    0,
    steps.findIndex((step) => !boxOf(step).checked),
  )

function keep(): void {
  try {
    if (here < 0) localStorage.removeItem(place)
    else localStorage.setItem(place, steps[here]!.id)
  } catch {
    // A browser that keeps nothing opens the whole sheet again.
  }
}

function left(): number {
  try {
    const id = localStorage.getItem(place)
    return steps.findIndex((step) => step.id === id)
  } catch {
    return -1
  }
}

const to = (at: number) => () => {
  show(at)
  keep()
}
open.addEventListener('click', () => {
  to(firstOpen())()
  next.focus()
})
close.addEventListener('click', () => {
  const step = steps[here]
  to(-1)()
  step?.scrollIntoView()
  open.focus({preventScroll: true})
})
back.addEventListener('click', () => to(here - 1)())
next.addEventListener('click', () => to(here + 1)())

const text = sheet.querySelector<HTMLTextAreaElement>('.ticked-here textarea')!
const fold = sheet.querySelector<HTMLElement>('.ticked-here')!

/** What is ticked in this browser and not in the file, as a day of the journal. */
function tell(): void {
  const names = steps.flatMap((step) => {
    const box = boxOf(step)
    return box.checked && !box.defaultChecked ? [`:step[${step.dataset.step}]`] : []
  })
  const now = new Date()
  const day = [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) =>
    String(part).padStart(2, '0'),
  )
  fold.hidden = names.length === 0
  text.value = `## ${day.join('-')}\n\n${names.join(', ')}\n`
  text.rows = 3 + Math.ceil(names.join(', ').length / 32)
}
addEventListener('change', tell)
sheet.querySelector('.ticked-here button')!.addEventListener('click', () => {
  text.select()
  void navigator.clipboard?.writeText(text.value)
})

// Ticks of an earlier visit are set by the page's own script, which comes before this one.
tell()
const last = left()
if (last >= 0) show(last)
