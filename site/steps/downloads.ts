import type {Build} from '../../plugins/build-file/build.ts'
import type {JournalSettings} from '../../plugins/build-file/schema.ts'
import {startFrom} from '../../plugins/build-file/start-from.ts'
import {templateDxf, templatePdf, templateSvg} from '../../plugins/drawings/templates/files.ts'
import type {Plan} from '../../plugins/plan/plan.ts'
import type {DownloadName} from '../journal/own-names.ts'

/** The files that a build gives away, by their names beside its page; bytes are written in base 64. */
export type Downloads = Record<string, {text: string} | {base64: string}>

export interface DownloadParts {
  build: Build
  plan: Plan
  text: string
  journal: JournalSettings
}

/** Write what can be taken away from a build: a file to start the next one from, and full-size templates. */
export async function downloads({build, plan, text, journal}: DownloadParts): Promise<Downloads> {
  const files: Record<DownloadName, Downloads[string] | undefined> = {
    'start.md': await written(() => startFrom(text, build.slug, {journal})),
    'template-letter.pdf': await written(() => templatePdf(plan, build, 'letter')),
    'template-a4.pdf': await written(() => templatePdf(plan, build, 'a4')),
    'template.svg': await written(() => templateSvg(plan, build)),
    'template.dxf': await written(() => templateDxf(plan, build)),
  }
  return Object.fromEntries(Object.entries(files).flatMap(([name, file]) => (file ? [[name, file]] : [])))
}

type File = string | Uint8Array | undefined

/** A file that cannot be written is not given away; its build's page stands. */
async function written(write: () => File | Promise<File>): Promise<Downloads[string] | undefined> {
  const file = await Promise.resolve()
    .then(write)
    .catch(() => undefined)
  if (file === undefined) return undefined
  return typeof file === 'string' ? {text: file} : {base64: Buffer.from(file).toString('base64')}
}
