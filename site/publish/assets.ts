import {readFile} from 'node:fs/promises'
import {join} from 'node:path'
import {programFolder} from '../kit/program-folder.ts'
import type {Assets} from './build-assets.ts'

/** Assets as they lie beside a finished program, in its folder `assets/`. */
export interface KeptAssets {
  addresses: Assets['addresses']
  files: {address: string; key: string; name: string}[]
}

export const assetList = 'assets/list.json'

/** Take the assets that were bundled with this program; one that runs as it is written bundles them now. */
export async function siteAssets(): Promise<Assets> {
  const list = await readFile(join(programFolder, assetList), 'utf8').catch(() => undefined)
  if (list === undefined) return (await import('./build-assets.ts')).buildAssets()
  const {addresses, files} = JSON.parse(list) as KeptAssets
  const read = (name: string) => () => readFile(join(programFolder, 'assets', name))
  return {addresses, files: files.map(({address, key, name}) => ({address, key, bytes: read(name)}))}
}
