import {showFields, showProblems} from './page-fields.ts'
import {patchText, unbroken} from './page-patch.ts'
import type {Told, View} from './view.ts'

const part = <E extends HTMLElement>(page: HTMLElement, name: string) =>
  page.querySelector<E>(`[data-part=${name}]`)!

/** Say what is otherwise than at the start. */
export function showAnswer(page: HTMLElement, {says, isStart}: View): void {
  const list = part(page, 'says')
  const items = says.map((one, at) => {
    const item = list.children[at] ?? document.createElement('li')
    patchText(item, capital(unbroken(one)))
    return item
  })
  list.replaceChildren(...items)
  part(page, 'changed').hidden = !isStart
}

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`

/** Tell what would not work, in the instrument and in its making. */
export function showTold(page: HTMLElement, view: View, ofMaking: readonly Told[]): void {
  const problems = [...view.problems, ...ofMaking]
  const rest = showFields(part(page, 'fields'), view, problems)
  showProblems(part(page, 'problems'), problems, rest)
  const faults = problems.filter(({severity}) => severity === 'fault').length
  const more = faults > 0 ? `${faults === 1 ? 'one thing' : `${faults} things`} would not work` : ''
  const short = part(page, 'short')
  short.hidden = view.isStart
  const first = view.unread.length > 0 ? 'a value cannot be read' : (view.says[0] ?? 'changed')
  patchText(short, capital(unbroken([first, more].filter(Boolean).join('; '))))
  part<HTMLButtonElement>(page, 'again').disabled = view.isStart
}
