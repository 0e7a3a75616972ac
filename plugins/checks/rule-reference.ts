import {rules} from './all.ts'

/** Write every rule as a row of a Markdown table: its name, how grave it is, what it finds and what to do. */
export function ruleReference(): string {
  const cell = (text: string) => text.replaceAll('|', '\\|').replaceAll('<', '&lt;')
  const rows = rules.map(
    ({name, severity, what, mend}) => `| \`${name}\` | ${severity} | ${cell(what)} | ${cell(mend)} |`,
  )
  return ['| rule | is | finds | mend it |', '| --- | --- | --- | --- |', ...rows].join('\n')
}
