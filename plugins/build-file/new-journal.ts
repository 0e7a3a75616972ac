import {journalSchema} from './schema.ts'

/** What each key of `journal.yaml` may hold, to be filled in. */
const examples: Readonly<Record<keyof typeof journalSchema.fields, string>> = {
  title: 'The loft by the quay',
  maker: 'the loft by the quay',
  currency: 'EUR',
  units: 'in',
  ruler: '1/32',
  saw: '{kerf: 1/8, trim: 1/2, plane: 1/16}',
  day: '3 h',
  site: 'https://journal.example/',
}

/** Write the settings of a new journal: every key with what it means, none of them set. */
export function newJournal(): string {
  const keys = Object.entries(journalSchema.fields).map(([key, {says}]) => {
    const line = `# ${key}: ${examples[key as keyof typeof examples]}`
    return `${line.padEnd(44)} # ${says}`
  })
  return `# ${journalSchema.says} Take off the first # of those that you want.\n${keys.join('\n')}\n`
}
