/** Show markup in an element, where it is otherwise than what was shown there. */
export function patch(element: Element, markup: string): void {
  if (shown.get(element) === markup) return
  shown.set(element, markup)
  element.innerHTML = markup
}

const shown = new WeakMap<Element, string>()

/** Write a text where another stands. */
export function patchText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text
}
