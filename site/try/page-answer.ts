import {showFields, showProblems} from './page-fields.ts'
import {patchText} from './page-patch.ts'
import type {Told, View} from './view.ts'

const part = <E extends HTMLElement>(page: HTMLElement, name: string) =>
  page.querySelector<E>(`[data-part=${name}]`)!

/** Say what is otherwise than at the start. */
export function showAnswer(page: HTMLElement, {says, isStart}: View): void {
  const list = part(page, 'says')
  const items = says.map((one, at) => {
    const item = list.children[at] ?? document.createElement('li')
    patchText(item, capital(one))
    return item
  })
  list.replaceChildren(...items)
  part(page, 'changed').hidden = !isStart
  part<HTMLButtonElement>(page, 'again').disabled = isStart
}

const capital = (words: string) => `${words.charAt(0).toUpperCase()}${words.slice(1)}`

/** Tell what would not work, in the instrument and in its making. */
export function showTold(page: HTMLElement, view: View, ofMaking: readonly Told[]): void {
  const problems = [...view.problems, ...ofMaking]
  const rest = showFields(part(page, 'fields'), view, problems)
  showProblems(part(page, 'problems'), problems, rest)
  const grave = problems.filter(({severity}) => severity === 'error' || severity === 'fault').length
  const more = grave > 0 ? `${grave === 1 ? 'one thing' : `${grave} things`} would not work` : ''
  const [first] = view.says
  part(page, 'short').hidden = view.isStart
  const short = [first, more].filter(Boolean).join('; ') || 'changed'
  patchText(part(page, 'short'), capital(short))
}
