import {frame} from '../layouts/frame.ts'
import {sheet} from '../layouts/sheet.ts'
import type {Surround} from '../layouts/surround.ts'
import type {Artefact, Page} from './page.ts'
import {writeArtefacts} from './write-artefacts.ts'
import {writePages} from './write-pages.ts'

/** Write pages and files of a site into `folder` (absolute). */
export async function writeSite(
  {pages, files}: {pages: readonly Page[]; files: readonly Artefact[]},
  around: Surround,
  folder: string,
): Promise<void> {
  await writePages(pages, {frame: frame(around), sheet: sheet(around)}, folder)
  await writeArtefacts(files, folder)
}
