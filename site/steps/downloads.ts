import type {Build} from '../../plugins/build-file/schema/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema/schema.ts'
import {startFrom} from '../../plugins/build-file/start-from.ts'
import {templateDxf, templatePdf, templateSvg} from '../../plugins/drawings/templates/sheets.ts'
import {mendedPaths} from '../../plugins/plan/as-built/setting-up.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import {type DownloadName, downloadNames} from '../kit/own-names.ts'

/** The files that a build gives away, by their names beside its page; bytes are written in base 64. */
export interface Downloads {
  files: Readonly<Record<string, {text: string} | {base64: string}>>
  /** Those that this program failed to write, which is its own fault: by name, and why. */
  failed: readonly {name: DownloadName; why: string}[]
}

export interface DownloadParts {
  build: Build
  plan: Plan
  text: string
  journal: JournalSettings
}

/**
 * Write what can be taken away from a build: a file to start the next one from, and full-size templates. One that this
 * program fails to write is left out and told.
 */
export async function downloads({build, plan, text, journal}: DownloadParts): Promise<Downloads> {
  const writers: Readonly<Record<DownloadName, () => File | Promise<File>>> = {
    'start.md': () => startFrom(text, build.slug, {journal, mended: mendedPaths(plan.settingUp)}),
    'template-letter.pdf': () => templatePdf(plan, build, 'letter'),
    'template-a4.pdf': () => templatePdf(plan, build, 'a4'),
    'template.svg': () => templateSvg(plan, build),
    'template.dxf': () => templateDxf(plan, build),
  }
  const files: Record<string, Downloads['files'][string]> = {}
  const failed: Downloads['failed'][number][] = []
  for (const name of downloadNames)
    try {
      const file = await writers[name]()
      if (file !== undefined)
        files[name] = typeof file === 'string' ? {text: file} : {base64: Buffer.from(file).toString('base64')}
    } catch (error) {
      failed.push({name, why: (error as Error).message})
    }
  return {files, failed}
}

type File = string | Uint8Array | undefined
