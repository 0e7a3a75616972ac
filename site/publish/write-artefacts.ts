import {mkdir, writeFile} from 'node:fs/promises'
import {dirname, join} from 'node:path'
import {fileOf} from './file-of.ts'
import type {Artefact} from './page.ts'

/** Write the files of the site that are no pages into `folder`, a few at a time. */
export async function writeArtefacts(artefacts: readonly Artefact[], folder: string): Promise<void> {
  const waiting = [...artefacts]
  const work = async () => {
    for (let artefact = waiting.pop(); artefact; artefact = waiting.pop()) {
      const file = join(folder, fileOf(artefact.address))
      await mkdir(dirname(file), {recursive: true})
      await writeFile(file, await artefact.bytes())
    }
  }
  await Promise.all([work(), work(), work(), work()])
}
