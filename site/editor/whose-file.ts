import {basename, dirname} from 'node:path'
import {settingsFiles} from '../journal/settings.ts'

/** A file of a journal, by where it lies: a build with its slug, or one of the settings. */
export interface JournalFile {
  name: string
  slug: string
  /** The folder that has the journal's settings. */
  folder: string
}

/** Say which file of a journal lies at a path; undefined for every other text that an editor opens. */
export function journalFile(path: string): JournalFile | undefined {
  const [name, folder] = [basename(path), dirname(path)]
  if (basename(folder) === 'builds')
    return name.endsWith('.md') || settingsFiles.includes(name)
      ? {name, slug: name.replace(/\.md$/, '').toLowerCase(), folder}
      : undefined
  const above = dirname(folder)
  if (name === 'index.md' && basename(above) === 'builds')
    return {name, slug: basename(folder).toLowerCase(), folder: above}
  return undefined
}
