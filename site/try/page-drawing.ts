import type {Handle, HandleName} from './handles.ts'
import {patch} from './page-patch.ts'
import type {Drawn, View} from './view.ts'

type Move = (name: HandleName, mm: number) => void

/** What is shown now: handles are found by their names. */
let shown: Drawn | undefined
/** How many things would not work, as far as is known. */
let breaks: readonly string[] = []
/** The handle that is dragged, and where it was taken. */
let held: {name: HandleName; fromPx: number; fromMm: number; pxPerMm: number} | undefined

/** Show the drawing, and a handle for each thing on it that can be moved. */
export function showDrawing(box: HTMLElement, drawn: Drawn): void {
  shown = drawn
  const [picture, layer, figure] = partsOf(box)
  patch(picture, drawn.drawing)
  figure.hidden = !held
  const {handles, scale} = drawn
  const wanted = handles.map(({name}) => name).join()
  if (layer.dataset.names !== wanted) {
    layer.dataset.names = wanted
    layer.replaceChildren(...handles.map(({name, label}) => grip(name, label)))
  }
  for (const handle of handles) {
    const element = layer.querySelector<HTMLElement>(`[data-handle=${handle.name}]`)
    if (!element || !scale) continue
    element.style.left = `${(handle.xPx / scale.widthPx) * 100}%`
    element.style.top = `${(handle.yPx / scale.heightPx) * 100}%`
    element.ariaValueMin = String(Math.round(handle.leastMm))
    element.ariaValueMax = String(Math.round(handle.mostMm))
    element.ariaValueNow = String(Math.round(handle.mm))
    element.ariaValueText = [handle.says, comesTo(drawn)].filter(Boolean).join('; ')
    if (held?.name === handle.name) tell(figure, handle, element, drawn)
  }
}

/** Say what is known a moment later: how many things would not work. */
export function tellBreaks(box: HTMLElement, view: View): void {
  const isOther = breaks.join() !== view.breaks.join()
  breaks = view.breaks
  if (isOther) showDrawing(box, view)
}

const comesTo = ({says}: Drawn): string => [...says.slice(0, 2), ...breaks].join('; ')

function tell(figure: HTMLElement, handle: Handle, at: HTMLElement, drawn: Drawn): void {
  figure.hidden = false
  figure.style.top = at.style.top
  const place = document.createElement('strong')
  place.textContent = handle.says
  figure.replaceChildren(place, comesTo(drawn))
}

const partsOf = (box: HTMLElement) =>
  [...box.children].slice(0, 3) as unknown as [HTMLElement, HTMLElement, HTMLElement]

function grip(name: HandleName, label: string): HTMLElement {
  const element = document.createElement('div')
  element.className = 'grip'
  element.dataset.handle = name
  element.role = 'slider'
  element.tabIndex = 0
  element.ariaLabel = label
  element.ariaOrientation = 'vertical'
  return element
}

/** Ask for a move where a handle is dragged or nudged: a mark of the ruler for an arrow, eight for a page. */
export function watchHandles(box: HTMLElement, move: Move): void {
  const find = (target: EventTarget | null) => {
    const element = target instanceof Element ? target.closest<HTMLElement>('[data-handle]') : null
    const handle = shown?.handles.find(({name}) => name === element?.dataset.handle)
    return element && handle && shown?.scale ? {element, handle, scale: shown.scale} : undefined
  }
  box.addEventListener('pointerdown', (event) => {
    const found = find(event.target)
    if (!found) return
    const {element, handle, scale} = found
    const pxPerMm = (box.getBoundingClientRect().width / scale.widthPx) * scale.pxPerMm
    held = {name: handle.name, fromPx: event.clientY, fromMm: handle.mm, pxPerMm}
    element.setPointerCapture(event.pointerId)
    element.focus()
    event.preventDefault()
  })
  box.addEventListener('pointermove', (event) => {
    const handle = held && shown?.handles.find(({name}) => name === held?.name)
    if (!held || !handle || !shown?.scale) return
    const mm = held.fromMm + (event.clientY - held.fromPx) / held.pxPerMm
    const stop = stopNear(mm, handle, shown.scale.rulerMm)
    if (Math.abs(stop - handle.mm) > shown.scale.rulerMm / 2) move(held.name, stop)
  })
  for (const ends of ['pointerup', 'pointercancel'] as const)
    box.addEventListener(ends, () => {
      held = undefined
      partsOf(box)[2].hidden = true
    })
  box.addEventListener('keydown', (event) => {
    const found = find(event.target)
    const marks = keys[event.key]
    if (!found || marks === undefined) return
    event.preventDefault()
    const {handle, scale} = found
    const end = marks > 0 ? handle.mostMm : handle.leastMm
    const mm = Number.isFinite(marks) ? handle.mm + marks * scale.rulerMm : end
    move(handle.name, stopNear(mm, handle, scale.rulerMm))
  })
}

/** The nut is up on the page: down and right lead away from it. */
const keys: Readonly<Record<string, number>> = {
  ArrowUp: -1,
  ArrowLeft: -1,
  ArrowDown: 1,
  ArrowRight: 1,
  PageUp: -8,
  PageDown: 8,
  Home: Number.NEGATIVE_INFINITY,
  End: Number.POSITIVE_INFINITY,
}

function stopNear(mm: number, {leastMm, mostMm}: Handle, rulerMm: number): number {
  return Math.round(Math.min(Math.max(mm, leastMm), mostMm) / rulerMm) * rulerMm
}
