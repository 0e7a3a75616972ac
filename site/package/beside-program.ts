import {mkdir, writeFile} from 'node:fs/promises'
import {join} from 'node:path'
import {versionFile} from '../kit/journal-cache.ts'
import {assetList, type KeptAssets} from '../publish/assets.ts'
import {buildAssets} from '../publish/build-assets.ts'

/** Write into the folder of a finished program what it would else make at every start: its version, and the site's assets. */
export async function writeBesideProgram(program: string, version: string): Promise<void> {
  const {addresses, files} = await buildAssets()
  const kept: KeptAssets = {addresses, files: []}
  await mkdir(join(program, 'assets'), {recursive: true})
  for (const {address, key, bytes} of files) {
    const name = address.split('/').at(-1)!
    await writeFile(join(program, 'assets', name), await bytes())
    kept.files.push({address, key, name})
  }
  await writeFile(join(program, assetList), JSON.stringify(kept))
  await writeFile(join(program, versionFile), version)
}
