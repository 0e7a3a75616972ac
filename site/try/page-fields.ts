import {patchText, unbroken} from './page-patch.ts'
import type {Told, View} from './view.ts'

/** A problem, and where it stands among all of them. */
type Numbered = [problem: Told, at: number]

/**
 * Show the fields with what is wrong beside each; the one that is being typed in keeps what was typed. Gives what no
 * field is about.
 */
export function showFields(box: HTMLElement, view: View, problems: readonly Told[]): Numbered[] {
  layFields(box, view.fields)
  const beside = new Map<string, Numbered[]>()
  const rest: Numbered[] = []
  for (const [at, problem] of problems.entries()) {
    const field = view.fields.find(({path}) => path === problem.path)
    // What is only remarked is told where something was changed.
    if (problem.severity === 'remark' && field?.was === undefined) continue
    if (field) beside.set(field.path, [...(beside.get(field.path) ?? []), [problem, at]])
    else rest.push([problem, at])
  }
  for (const {path, value, usual, was} of view.fields) {
    const input = inputOf(path)
    if (!input) continue
    if (document.activeElement !== input && input.value !== value) input.value = value
    if (input.placeholder !== usual) input.placeholder = usual
    const found = beside.get(path) ?? []
    const isWrong = found.some(([{severity}]) => severity !== 'remark')
    input.setAttribute('aria-invalid', String(isWrong))
    const row = input.closest<HTMLElement>('.field')!
    row.toggleAttribute('data-changed', was !== undefined)
    row.toggleAttribute('data-told', found.length > 0)
    patchText(
      document.getElementById(`${input.id}-was`)!,
      was === undefined ? '' : `was ${was === '' ? 'left out' : was}`,
    )
    const list = document.getElementById(`${input.id}-found`)!
    if (found.length > 0 || list.firstChild) list.replaceChildren(...found.map(toldItem))
  }
  return rest
}

/** Tell what would not work: what no field is about in full, the rest by the field that it stands at. */
export function showProblems(list: HTMLElement, problems: readonly Told[], rest: readonly Numbered[]): void {
  const grave = [...problems.entries()].filter(
    ([at, {severity}]) =>
      (severity === 'error' || severity === 'fault') && !rest.some(([, one]) => one === at),
  )
  list.replaceChildren(...[...grave.map(([at, one]): Numbered => [one, at]), ...rest].map(toldItem))
  list.hidden = list.childElementCount === 0
}

/** Offer a field for every value that a build can have. */
export function offerKeys(select: HTMLElement, keys: readonly string[]): void {
  const groups = grouped(keys, (key) => key.split('.')[0]!)
  const first = new Option('choose', '')
  select.replaceChildren(
    first,
    ...[...groups].map(([name, paths]) => {
      const group = document.createElement('optgroup')
      group.label = name
      group.append(...paths.map((path) => new Option(path, path)))
      return group
    }),
  )
}

/** Give the path and text of a field that was typed in; undefined where something else was. */
export function fieldTyped(target: EventTarget | null): {path: string; text: string} | undefined {
  if (!(target instanceof HTMLInputElement) || target.dataset.path === undefined) return undefined
  return {path: target.dataset.path, text: target.value}
}

function grouped<T>(all: readonly T[], by: (one: T) => string): Map<string, T[]> {
  const groups = new Map<string, T[]>()
  for (const one of all) groups.set(by(one), [...(groups.get(by(one)) ?? []), one])
  return groups
}

const idOf = (path: string) => `field-${path.replaceAll('.', '-')}`
const inputOf = (path: string) => document.getElementById(idOf(path)) as HTMLInputElement | null

/** Lay out the fields that are wanted, group by group; those that are there stay as they are. */
function layFields(box: HTMLElement, fields: View['fields']): void {
  const groups = grouped(fields, ({group}) => group)
  for (const set of box.querySelectorAll<HTMLElement>('fieldset'))
    if (!groups.has(set.dataset.group!)) set.remove()
  for (const [group, own] of groups) {
    const paths = own.map(({path}) => path).join()
    const there = box.querySelector<HTMLElement>(`[data-group="${group}"]`)
    if (there?.dataset.paths === paths) continue
    const set = there ?? element('fieldset')
    Object.assign(set.dataset, {group, paths})
    const had = document.activeElement instanceof HTMLElement ? document.activeElement.id : ''
    set.replaceChildren(element('legend', group), ...own.map(({path, label}) => field(path, label)))
    if (!there) box.append(set)
    if (had.startsWith('field-') && document.activeElement?.id !== had) document.getElementById(had)?.focus()
  }
}

function field(path: string, label: string): HTMLElement {
  const row = element('div')
  row.className = 'field'
  const existing = inputOf(path)
  const input = existing ?? document.createElement('input')
  Object.assign(input, {id: idOf(path), type: 'text', autocomplete: 'off', spellcheck: false})
  input.dataset.path = path
  input.inputMode = 'text'
  input.setAttribute('aria-describedby', `${input.id}-was ${input.id}-found`)
  const name = document.createElement('label')
  name.htmlFor = input.id
  name.textContent = label
  const was = element('small')
  was.id = `${input.id}-was`
  const found = element('ul')
  found.id = `${input.id}-found`
  row.append(name, input, was, found)
  return row
}

const grave: Readonly<Record<string, string>> = {
  error: 'Cannot be read',
  fault: 'Would not work',
  warning: 'Look again',
  remark: 'Note',
}

function toldItem([{severity, message, expected = []}, at]: Numbered): HTMLElement {
  const item = element('li')
  if (severity === 'error' || severity === 'fault') item.className = severity
  item.append(element('strong', `${grave[severity] ?? ''}: `), unbroken(message))
  const ways = element('p')
  for (const [way, text] of expected.slice(0, 3).entries()) {
    const button = document.createElement('button')
    button.type = 'button'
    button.dataset.mend = String(at)
    button.dataset.way = String(way)
    button.textContent = `Take ${text.length > 40 ? `${text.slice(0, 40)}…` : text || 'it out'}`
    ways.append(button)
  }
  if (ways.childElementCount > 0) item.append(ways)
  return item
}

function element(name: string, text = ''): HTMLElement {
  const made = document.createElement(name)
  if (text) made.textContent = text
  return made
}
