/** Show markup in an element, where it is otherwise than what was shown there. */
export function patch(element: Element, markup: string): void {
  if (shown.get(element) === markup) return
  shown.set(element, markup)
  element.innerHTML = markup
}

const shown = new WeakMap<Element, string>()

/** Keep a figure's whole number and its fraction in one line. */
export const unbroken = (words: string): string => words.replace(/(\d) (?=\d+\/\d)/g, '$1\u00a0')

/** Write a text where another stands. */
export function patchText(element: Element, text: string): void {
  if (element.textContent !== text) element.textContent = text
}
