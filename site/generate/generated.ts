import {keyReference} from '../../plugins/build-file/key-reference.ts'
import {planValuesTable} from './plan-values.ts'

/** A file that is written from the code, as a whole or in marked zones. */
export interface Generated {
  file: string
  write: (before: string) => string
}

/** Every generated file, from the project's root. */
export const generated: readonly Generated[] = [
  {file: 'README.md', write: (before) => inZone(before, 'keys', keyReference())},
  {file: 'plugins/tables/plan-values.ts', write: () => planValuesTable()},
]

function inZone(text: string, name: string, content: string): string {
  const [start, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`]
  const from = text.indexOf(start) + start.length
  return `${text.slice(0, from)}\n\n${content}\n\n${text.slice(text.indexOf(end))}`
}
