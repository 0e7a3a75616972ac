import type {View} from './view.ts'

type Told = View['problems'][number]

/** Show the fields with what is wrong beside each; the one that is being typed in keeps what was typed. */
export function showFields(box: HTMLElement, others: HTMLElement, view: View): void {
  const paths = view.fields.map(({path}) => path).join()
  if (box.dataset.paths !== paths) {
    box.dataset.paths = paths
    layFields(box, view.fields)
  }
  const beside = new Map<string, [Told, number][]>()
  const rest: [Told, number][] = []
  for (const [at, problem] of view.problems.entries()) {
    const field = view.fields.find(({path}) => path === problem.path)
    // What is only remarked is told where something was changed.
    if (problem.severity === 'remark' && !field?.isChanged) continue
    if (field) beside.set(field.path, [...(beside.get(field.path) ?? []), [problem, at]])
    else rest.push([problem, at])
  }
  for (const {path, value, usual, isChanged} of view.fields) {
    const input = inputOf(path)
    if (!input) continue
    if (document.activeElement !== input) input.value = value
    input.placeholder = usual
    const found = beside.get(path) ?? []
    const isWrong = found.some(([{severity}]) => severity !== 'remark')
    input.setAttribute('aria-invalid', String(isWrong))
    input.closest('.field')?.toggleAttribute('data-changed', isChanged)
    const list = document.getElementById(`${input.id}-found`)
    list?.replaceChildren(...found.map(toldItem))
  }
  others.replaceChildren(...rest.map(toldItem))
  others.hidden = rest.length === 0
}

/** Give the path and text of a field that was typed in; undefined where something else was. */
export function fieldTyped(target: EventTarget | null): {path: string; text: string} | undefined {
  if (!(target instanceof HTMLInputElement) || target.dataset.path === undefined) return undefined
  return {path: target.dataset.path, text: target.value}
}

const idOf = (path: string) => `field-${path.replaceAll('.', '-')}`
const inputOf = (path: string) => document.getElementById(idOf(path)) as HTMLInputElement | null

function layFields(box: HTMLElement, fields: View['fields']): void {
  const groups = [...new Set(fields.map(({group}) => group))]
  box.replaceChildren(
    ...groups.map((group) => {
      const set = element('fieldset')
      set.append(element('legend', group))
      for (const {path, label} of fields.filter((one) => one.group === group)) set.append(field(path, label))
      return set
    }),
  )
}

function field(path: string, label: string): HTMLElement {
  const row = element('div')
  row.className = 'field'
  const input = document.createElement('input')
  Object.assign(input, {id: idOf(path), type: 'text', autocomplete: 'off', spellcheck: false})
  input.dataset.path = path
  input.inputMode = 'text'
  input.setAttribute('aria-describedby', `${input.id}-found`)
  const name = document.createElement('label')
  name.htmlFor = input.id
  name.textContent = label
  const found = element('ul')
  found.id = `${input.id}-found`
  row.append(name, input, found)
  return row
}

const grave: Readonly<Record<string, string>> = {
  error: 'Cannot be read',
  fault: 'Would not work',
  warning: 'Look again',
  remark: 'Note',
}

function toldItem([{severity, message, ways}, at]: [Told, number]): HTMLElement {
  const item = element('li')
  if (severity === 'error' || severity === 'fault') item.className = severity
  item.append(element('strong', `${grave[severity] ?? ''}: `), message, ' ')
  for (const [way, text] of ways.entries()) {
    const button = document.createElement('button')
    button.type = 'button'
    button.dataset.mend = String(at)
    button.dataset.way = String(way)
    button.textContent = `Take ${text.length > 40 ? `${text.slice(0, 40)}…` : text}`
    item.append(button)
  }
  return item
}

function element(name: string, text = ''): HTMLElement {
  const made = document.createElement(name)
  if (text) made.textContent = text
  return made
}
