import {rm} from 'node:fs/promises'
import {join} from 'node:path'
import {fileOf} from '../kit/page.ts'
import type {Standing} from '../publish/standing.ts'

/** The build that an address belongs to. */
export const slugOf = (address: string): string | undefined => /^\/builds\/([^/]+)/.exec(address)?.[1]

/** Take away what stands at these addresses; answers those where something stood. */
export async function takeAway({folder, files}: Standing, addresses: readonly string[]): Promise<string[]> {
  const gone = addresses.filter((address) => files[address])
  await Promise.all(gone.map((address) => rm(join(folder, fileOf(address)), {force: true})))
  for (const address of gone) delete files[address]
  return gone
}
