import {createGenerator, type Schema} from 'ts-json-schema-generator'
import {journalKeys, keyReference} from '../../plugins/build-file/key-reference.ts'
import {ruleReference} from '../../plugins/checks/all.ts'
import {usualKinds} from '../../plugins/tables/usual-kinds.ts'

/** A file that is written from the code, as a whole or in marked zones. */
interface Generated {
  file: string
  write: (before: string) => string
}

/** What is written in the README between marks of these names. */
const readmeZones: Readonly<Record<string, () => string>> = {
  kinds: kindReference,
  'journal-keys': journalKeys,
  keys: keyReference,
  rules: ruleReference,
}

/** Every generated file, from the project's root. */
export const generated: readonly Generated[] = [
  {
    file: 'README.md',
    write: (before) =>
      Object.entries(readmeZones).reduce((text, [name, write]) => inZone(text, name, write()), before),
  },
  {file: 'plugins/tables/plan-values.ts', write: planValuesTable},
]

function kindReference(): string {
  const rows = Object.entries(usualKinds).map(
    ([name, {says, scale}]) => `| \`${name}\` | ${says} | ${scale[0]} in or ${scale[1]} mm |`,
  )
  return ['| kind | is | scale |', '| --- | --- | --- |', ...rows].join('\n')
}

function inZone(text: string, name: string, content: string): string {
  const [start, end] = [`<!-- ${name} -->`, `<!-- /${name} -->`]
  const from = text.indexOf(start) + start.length
  return `${text.slice(0, from)}\n\n${content}\n\n${text.slice(text.indexOf(end))}`
}

/** Give the JSON Schema of the plan, as computed or as printed, from its TypeScript interfaces, closed all the way down. */
export function planSchema(type: 'Plan' | 'PrintedPlan' = 'PrintedPlan'): Schema {
  return createGenerator({
    path: type === 'Plan' ? 'plugins/plan/plan.ts' : 'plugins/words/printed-plan.ts',
    type,
    skipTypeCheck: true,
    expose: 'all',
    topRef: false,
    additionalProperties: false,
  }).createSchema(type)
}

/**
 * Write the table of the plan's value names (plugins/tables/plan-values.ts) from the shape of the plan. Names keep the
 * order that they stand in; a new one comes after the one that is before it in the shape.
 */
function planValuesTable(before: string): string {
  const schema = planSchema()
  const found = leafPaths(schema, schema.definitions ?? {})
  const names = [...before.matchAll(/^ {2}'(.*)',$/gm)].flatMap(([, name = '']) =>
    found.includes(name) ? [name] : [],
  )
  for (const [at, name] of found.entries())
    if (!names.includes(name)) names.splice(names.indexOf(found[at - 1] ?? '') + 1, 0, name)
  return `/**
 * Every value of the plan that can stand in a sentence, by its path, in the plan's own order; \`*\` stands for the
 * name, label or number of one of several. Written from the shape of the plan: \`npm run generate\`.
 */
export const planValues: readonly string[] = [
${names.map((name) => `  '${name}',\n`).join('')}]
`
}

/** List the paths of numbers, texts and choices below a schema; a list of lists counts twice. */
function leafPaths(at: unknown, definitions: Schema['definitions'], path = ''): string[] {
  const {$ref, items, properties} = at as Schema & {properties?: object}
  if ($ref) return leafPaths(definitions?.[decodeURIComponent($ref.split('/').at(-1)!)], definitions, path)
  if (items) return leafPaths(items, definitions, `${path}.*`)
  if (!properties) return [path]
  return Object.entries(properties).flatMap(([key, below]) =>
    leafPaths(below, definitions, path ? `${path}.${key}` : key),
  )
}
