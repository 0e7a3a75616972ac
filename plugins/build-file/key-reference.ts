import {assumptionRows, followingRows} from './assumptions.ts'
import {exampleOf, type Kind} from './schema/kinds.ts'
import {buildSchema, journalSchema} from './schema/schema.ts'

interface KeyRow {
  path: string
  says: string
  takes: string
  assumed: string
}

/** List every key of a build file with what it means, what it takes, and what is assumed where it is left out. */
function keyRows(kind: Kind = buildSchema as unknown as Kind, path = ''): KeyRow[] {
  if (kind.is === 'list') return keyRows(kind.item, `${path}.*`)
  if (kind.is !== 'record') return []
  return Object.entries(kind.fields).flatMap(([key, field]) => {
    const own = path ? `${path}.${key}` : key
    const assumed = assumedAt(own)
    return [
      {path: own, says: field.says, takes: exampleOf(field).replace(/,$/, ''), assumed},
      ...keyRows(field, own),
    ]
  })
}

/** Say what a key is taken to be where it is left out: one way after the other where there are several. */
const assumedAt = (path: string): string =>
  [...assumptionRows, ...followingRows]
    .filter((row) => ('listed' in row && row.listed ? row.listed : row.path) === path)
    .map(({says}) => says)
    .join('; else ')

const cell = (text: string) => text.replaceAll('|', '\\|')

/** Write the keys of `journal.yaml` as a Markdown table. */
export function journalKeys(): string {
  const rows = keyRows(journalSchema as unknown as Kind).map(
    ({path, says, takes}) => `| \`${path}\` | ${cell(says)} | ${cell(takes)} |`,
  )
  return ['| key | means | takes |', '| --- | --- | --- |', ...rows].join('\n')
}

/** Write the key reference as a Markdown table. */
export function keyReference(): string {
  const rows = keyRows().map(
    ({path, says, takes, assumed}) => `| \`${path}\` | ${cell(says)} | ${cell(takes)} | ${cell(assumed)} |`,
  )
  return ['| key | means | takes | assumed where left out |', '| --- | --- | --- | --- |', ...rows].join('\n')
}
