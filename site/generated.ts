import type {z} from 'zod'
import {keyReference} from '../plugins/build-file/key-reference.ts'
import {planShape} from '../plugins/plan/shape/plan.ts'

/** A file that is written from the code, as a whole or in marked zones. */
interface Generated {
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

/** Write the table of the plan's value names (plugins/tables/plan-values.ts) from the shape of the plan. */
function planValuesTable(): string {
  const names = leafPaths(planShape).map((path) => `  '${path}',\n`)
  return `/**
 * Every value of the plan that can stand in a sentence, by its path, in the plan's own order; \`*\` stands for the
 * name, label or number of one of several. Written from the shape of the plan: \`npm run generate\`.
 */
const planValues: readonly string[] = [
${names.join('')}]
`
}

type Definition = {
  type: string
  shape?: Record<string, z.ZodType>
  element?: z.ZodType
  innerType?: z.ZodType
}

/** List the paths of numbers, texts and choices below a shape; a list of lists counts twice. */
function leafPaths(shape: z.ZodType, path = ''): string[] {
  const definition = shape.def as Definition
  if (definition.innerType) return leafPaths(definition.innerType, path)
  if (definition.element) return leafPaths(definition.element, `${path}.*`)
  if (!definition.shape) return [path]
  return Object.entries(definition.shape).flatMap(([key, below]) =>
    leafPaths(below, path ? `${path}.${key}` : key),
  )
}
